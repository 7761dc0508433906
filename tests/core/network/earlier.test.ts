import { describe, expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { buildNetwork, formOf } from '#core/network';
import { describe as descriptionOf } from '#core/parts';
import { protectionOf } from '#core/protection';
import { circuit } from '../../support/circuit.ts';

const start = (): Diagram =>
	circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 40 }], l: ['load'], m: ['load'] }, [
		['b.pos', 'f.in', { lengthM: 0.1 }],
		['f.out', 'l.pos', { lengthM: 2 }],
		['l.neg', 'b.neg', { lengthM: 3 }]
	]);

const withConductor = (diagram: Diagram, id: string, change: Partial<Diagram['conductors'][string]>): Diagram => ({
	...diagram,
	conductors: { ...diagram.conductors, [id]: { ...diagram.conductors[id]!, ...change } }
});
const withPart = (diagram: Diagram, id: string, change: Partial<Diagram['parts'][string]>): Diagram => ({
	...diagram,
	parts: { ...diagram.parts, [id]: { ...diagram.parts[id]!, ...change } }
});
/** By way of a lookup the program does not know, nothing earlier is used. */
const afresh = (diagram: Diagram) => buildNetwork(diagram, (part) => descriptionOf(part));

const KEEP: Record<string, (diagram: Diagram) => Diagram> = {
	'a length': (diagram) => withConductor(diagram, 'W2', { lengthM: 7 }),
	'a size': (diagram) => withConductor(diagram, 'W2', { gauge: { system: 'awg', size: '4' } }),
	'a place': (diagram) => withPart(diagram, 'l', { at: { x: 500, y: 100 } }),
	'a label': (diagram) => withPart(diagram, 'l', { label: 'Lamp' })
};
const CHANGE: Record<string, (diagram: Diagram) => Diagram> = {
	"a conductor's end": (diagram) => withConductor(diagram, 'W2', { to: { part: 'm', terminal: 'pos' } }),
	'a rating': (diagram) => withPart(diagram, 'f', { params: { fuseA: 10 } }),
	'a kind': (diagram) => withPart(diagram, 'm', { kind: 'link-post' }),
	'a conductor less': (diagram) => ({
		...diagram,
		conductors: Object.fromEntries(Object.entries(diagram.conductors).filter(([id]) => id !== 'W2'))
	}),
	'a part less': (diagram) => ({ ...diagram, parts: Object.fromEntries(Object.entries(diagram.parts).filter(([id]) => id !== 'm')) }),
	'a mount': (diagram) => ({ ...diagram, mounts: { f: { part: 'b', terminal: 'pos' } } }),
	'the order of conductors': (diagram) => ({
		...diagram,
		conductors: Object.fromEntries(Object.entries(diagram.conductors).reverse())
	})
};

describe('a network built after another one', () => {
	for (const [what, edit] of Object.entries(KEEP)) {
		test(`keeps its form when ${what} changes, and is the network built from nothing`, () => {
			const diagram = start();
			const before = buildNetwork(diagram);
			const after = buildNetwork(edit(diagram));
			expect(formOf(after)).toBe(formOf(before));
			expect(after).toEqual(afresh(edit(diagram)));
		});
	}

	for (const [what, edit] of Object.entries(CHANGE)) {
		test(`has a form of its own when the change is ${what}`, () => {
			const diagram = start();
			const before = buildNetwork(diagram);
			const after = buildNetwork(edit(diagram));
			expect(formOf(after)).not.toBe(formOf(before));
			expect(after).toEqual(afresh(edit(diagram)));
		});
	}

	test('returns to the first after an undo', () => {
		const diagram = start();
		buildNetwork(diagram);
		buildNetwork(withConductor(diagram, 'W2', { lengthM: 7 }));
		expect(buildNetwork(diagram)).toEqual(afresh(diagram));
	});

	test('takes another resistivity', () => {
		const diagram = start();
		buildNetwork(diagram);
		expect(buildNetwork(diagram, undefined, 0.02)).toEqual(buildNetwork(diagram, (part) => descriptionOf(part), 0.02));
	});
});

test('a copy of a network changed by hand is a form of its own: its protection is worked out anew', () => {
	const network = buildNetwork(start());
	expect(protectionOf(network, 'W2').from.currentA).toBe(40);
	const branches = network.branches.map((branch) => (branch.device ? { ...branch, device: { ...branch.device, ratingA: 5 } } : branch));
	expect(protectionOf({ ...network, branches }, 'W2').from.currentA).toBe(5);
});
