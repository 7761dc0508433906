/** Options for a full bus as plain data, with what each does to the diagram. */
import { change, type Change, type Diagram, type ItemKey } from '#core/diagram';
import { changedItems } from '#core/drawing';
import { fullBusOptions, type FullBusOptions, type FullBusRequest, type PlacementOption } from '#core/placement';

export interface PlacementOffer extends Omit<PlacementOption, 'command' | 'sketched' | 'diagram'> {
	/** Null where it is not to be done. */
	readonly patches: Change['patches'] | null;
	/** Also of those that are refused, to be looked at. */
	readonly looksLike: Change['patches'] | null;
	readonly touches: readonly ItemKey[];
}

export interface FullBusOffer extends Omit<FullBusOptions, 'options'> {
	readonly options: readonly PlacementOffer[];
}

export function fullBusOffer(diagram: Diagram, request: FullBusRequest, progress: (done: number, of: number) => void): FullBusOffer {
	const { options, ...rest } = fullBusOptions(diagram, request, progress);
	return { ...rest, options: options.map((option) => offer(diagram, option)) };
}

function offer(before: Diagram, { command, sketched, diagram, ...option }: PlacementOption): PlacementOffer {
	const looksLike = sketched && change(before, sketched).patches;
	return { ...option, looksLike, patches: command && looksLike, touches: diagram ? changedItems(before, diagram) : [] };
}
