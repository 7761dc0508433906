import { terminalRef, type Content, type Diagram, type StudKey } from '#core/diagram';
import { stacksOf } from '#core/studs';
import { asDiagram } from './as-diagram.ts';
import { ids, type DrawingChange, type Pair } from './change.ts';
import { studText } from './names.ts';

/** Studs on which something sits in another order, or other things: each has to be tightened and tested again. */
export function studChanges({ before, after }: Pair): readonly DrawingChange[] {
	const [old, now] = [layersOf(before), layersOf(after)];
	return ids(old, now).flatMap((key): readonly DrawingChange[] => {
		const [was, is] = [old[key]?.text ?? '', now[key]?.text ?? ''];
		if (was === is) return [];
		const subject = { kind: 'stud', id: key } as const;
		const name = studText(is === '' ? before : after, key);
		// Nobody tightens what is not there any more.
		if (!Object.hasOwn(after.parts, terminalRef(key).part))
			return [{ sort: 'electrical', how: 'removed', subject, name, text: 'removed with its part' }];
		if (is === '') return [{ sort: 'electrical', how: 'changed', subject, name, text: 'is bare now' }];
		const text = `from the seat now: ${is}${was === '' ? '' : ` (was: ${was})`}`;
		return [{ sort: 'electrical', how: 'changed', subject, name, text }];
	});
}

/** Assumed washers and nuts are left out: nobody drew them. */
function layersOf(content: Content): Record<StudKey, { readonly text: string }> {
	const diagram: Diagram = asDiagram(content);
	return Object.fromEntries(
		stacksOf(diagram).map(({ key, layers, hardwareAssumed }) => {
			const drawn = layers.filter(({ item }) => !hardwareAssumed || item.kind === 'lug' || item.kind === 'block' || item.kind === 'fuse');
			return [key, { text: drawn.map(({ label }) => label).join('; ') }];
		})
	);
}
