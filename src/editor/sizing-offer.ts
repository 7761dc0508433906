/** Sizes for everything as plain data. */
import { change, type Change, type Diagram } from '#core/diagram';
import { sizeEverything, type Difference, type Sizing } from '#core/remedies';

export interface SizingOffer extends Omit<Sizing, 'command' | 'preview'> {
	/** Null where everything has its size already. */
	readonly patches: Change['patches'] | null;
	readonly difference: Difference;
}

export function sizingOffer(diagram: Diagram): SizingOffer {
	const { command, preview, ...sizing } = sizeEverything(diagram);
	const { diagram: _after, ...difference } = preview();
	return { ...sizing, difference, patches: command && change(diagram, command).patches };
}
