import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studKey, type Diagram, type StackItem } from '#core/diagram';
import { buildNetwork } from '#core/network';
import { describe as describePart } from '#core/parts';
import { fullOrder, landings } from '#core/studs';
import { circuit } from '../../support/circuit.ts';
import { randomDiagram } from '../../support/random-diagram.ts';

const words = (items: readonly StackItem[]) =>
	items.map((item) => (item.kind === 'lug' ? `${item.conductor} ${item.end}` : item.kind === 'block' ? `block ${item.block}` : item.kind));

/** Three conductors and a fuse block on the positive post of a battery; a fourth leaves the block's own post. */
const post = (stack?: readonly string[], own?: readonly string[]): Diagram =>
	circuit(
		{ b: ['battery'], d: ['positive-bus'], f: ['fuse-block'] },
		[
			['b.pos', 'd.1'],
			['d.2', 'b.pos'],
			['b.pos', 'd.3'],
			['f.post', 'd.4']
		],
		{ mounts: { f: 'b.pos' }, stacks: { ...(stack && { 'b.pos': stack }), ...(own && { 'f.post': own }) } }
	);

describe('the order on a stud', () => {
	test('is that of the conductors, then the blocks, where nothing is drawn', () => {
		expect(words(fullOrder(post(), 'b.pos'))).toEqual(['W1 from', 'W2 to', 'W3 from', 'block f']);
	});

	test('is as drawn, hardware included', () => {
		const drawn = ['block f', 'W3', 'washer', 'W1', 'W2', 'lock-washer', 'nut'];
		expect(words(fullOrder(post(drawn), 'b.pos'))).toEqual(['block f', 'W3 from', 'washer', 'W1 from', 'W2 to', 'lock-washer', 'nut']);
	});

	test('takes later arrivals under the washers and nut that close the stack', () => {
		expect(words(fullOrder(post(['W2', 'washer', 'nut']), 'b.pos'))).toEqual(['W2 to', 'W1 from', 'W3 from', 'block f', 'washer', 'nut']);
	});

	test('leaves out what is no longer there, and what is drawn twice', () => {
		const diagram = post(['W2', 'W1', 'W2']);
		const { W1: _, ...conductors } = diagram.conductors;
		expect(words(fullOrder({ ...diagram, conductors, mounts: {} }, 'b.pos'))).toEqual(['W2 to', 'W3 from']);
	});

	test('puts the own fuse of a block first unless it was drawn elsewhere', () => {
		expect(words(fullOrder(post(), 'f.post'))).toEqual(['fuse', 'W4 from']);
		expect(words(fullOrder(post(undefined, ['W4']), 'f.post'))).toEqual(['fuse', 'W4 from']);
		expect(words(fullOrder(post(undefined, ['W4', 'fuse']), 'f.post'))).toEqual(['W4 from', 'fuse']);
	});

	test('has no fuse where none is fitted', () => {
		const empty = circuit({ f: ['fuse-block', { fuseA: null }], d: ['positive-bus'] }, [['f.post', 'd.1']], {
			stacks: { 'f.post': ['fuse', 'W1'] }
		});
		expect(words(fullOrder(empty, 'f.post'))).toEqual(['W1 from']);
	});

	test('knows both ends of a conductor that returns to its stud', () => {
		const loop = circuit({ b: ['battery'] }, [['b.pos', 'b.pos']]);
		expect(words(fullOrder(loop, 'b.pos'))).toEqual(['W1 from', 'W1 to']);
	});
});

test('landings name every stud with something on it', () => {
	expect([...landings(post()).keys()].sort()).toEqual(['b.pos', 'd.1', 'd.2', 'd.3', 'd.4', 'f.post']);
});

test('the network lands a lug under the fuse on the live side of it exactly where the stack has it so', () => {
	fc.assert(
		fc.property(randomDiagram, (diagram) => {
			const network = buildNetwork(diagram, describePart);
			for (const [id, conductor] of Object.entries(diagram.conductors)) {
				const nodes = network.nodeOfEnd.get(id);
				for (const end of ['from', 'to'] as const) {
					const key = studKey(conductor[end]);
					const stud = network.nodeOf.get(key);
					if (!nodes || stud === undefined) continue;
					const order = fullOrder(diagram, key);
					const under = order.slice(
						0,
						Math.max(
							0,
							order.findIndex(({ kind }) => kind === 'fuse')
						)
					);
					const isUnder = under.some((item) => item.kind === 'lug' && item.conductor === id && item.end === end);
					if (!isUnder) expect(nodes[end]).toBe(stud);
					else expect(nodes[end]).toBe(network.nodeOf.get(`${conductor[end].part}.plate`));
				}
			}
		}),
		{ numRuns: 200 }
	);
});
