import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { stacksOf } from '#core/studs';
import { randomDiagram } from '../../support/random-diagram.ts';

const EDITS: readonly ((diagram: Diagram, id: string) => Diagram)[] = [
	(diagram, id) => ({ ...diagram, conductors: { ...diagram.conductors, [id]: { ...diagram.conductors[id]!, label: 'new' } } }),
	(diagram, id) => ({
		...diagram,
		conductors: { ...diagram.conductors, [id]: { ...diagram.conductors[id]!, gauge: { system: 'awg', size: '4/0' } } }
	}),
	(diagram, id) => ({ ...diagram, conductors: Object.fromEntries(Object.entries(diagram.conductors).filter(([other]) => other !== id)) }),
	(diagram) => ({
		...diagram,
		parts: Object.fromEntries(Object.entries(diagram.parts).map(([id, part]) => [id, { ...part, label: 'new' }]))
	}),
	(diagram) => ({ ...diagram, mounts: {} }),
	(diagram) => ({ ...diagram, stacks: {} })
];

test('stacks remembered from before an edit are those worked out anew', () => {
	fc.assert(
		fc.property(randomDiagram, fc.array(fc.tuple(fc.nat({ max: EDITS.length - 1 }), fc.nat()), { maxLength: 4 }), (start, edits) => {
			let diagram = start;
			stacksOf(diagram);
			for (const [edit, n] of edits) {
				const ids = Object.keys(diagram.conductors);
				if (ids.length === 0) return;
				diagram = EDITS[edit]!(diagram, ids[n % ids.length]!);
				expect(stacksOf(diagram)).toEqual(stacksOf(structuredClone(diagram)));
			}
		}),
		{ numRuns: 60 }
	);
});
