import { describe, expect, test } from 'vitest';
import { resistanceOhm } from '#core/conductors';
import { ASSUMED_LENGTH_M, buildNetwork } from '#core/network';
import { circuit } from '../../support/circuit.ts';

const ring = () =>
	circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 40 }], l: ['load'] }, [
		['b.pos', 'f.in', { lengthM: 0.1 }],
		['f.out', 'l.pos', { lengthM: null }],
		['l.neg', 'b.neg', { gauge: '10', lengthM: 3 }]
	]);

describe('a battery, a fuse and a load', () => {
	test('become one battery, one load and a branch for each conductor and link', () => {
		const net = buildNetwork(ring());
		expect(net.nodeCount).toBe(6);
		expect(net.batteries).toHaveLength(1);
		expect(net.loads).toHaveLength(1);
		expect(net.branches.map(({ kind }) => kind)).toEqual(['protective', 'conductor', 'conductor', 'conductor']);
		expect(net.unresolved).toEqual([]);
		expect(net.branches[net.branchOfLink.get('f.fuse')!]!.device).toMatchObject({ kind: 'fuse', ratingA: 40 });
	});

	test("a conductor's branch runs between the nodes of its studs, with the resistance of its copper and joints", () => {
		const diagram = ring();
		const net = buildNetwork(diagram);
		const branch = net.branches[net.branchOfConductor.get('W3')!]!;
		expect([branch.a, branch.b]).toEqual([net.nodeOf.get('l.neg'), net.nodeOf.get('b.neg')]);
		expect(net.nodeOfEnd.get('W3')).toEqual({ from: branch.a, to: branch.b });
		expect(branch.resistanceOhm).toBe(resistanceOhm(diagram.conductors['W3']!, 3));
	});

	test('a conductor without a length is computed with the assumed one', () => {
		const diagram = ring();
		const net = buildNetwork(diagram);
		const { resistanceOhm: ohm } = net.branches[net.branchOfConductor.get('W2')!]!;
		expect(ohm).toBe(resistanceOhm(diagram.conductors['W2']!, ASSUMED_LENGTH_M));
	});

	test('poles follow the metal through fuses, not through loads', () => {
		const net = buildNetwork(ring());
		const pole = (stud: string) => net.poles[net.nodeOf.get(stud)!];
		expect(['b.pos', 'f.in', 'f.out', 'l.pos'].map(pole)).toEqual(Array(4).fill('positive'));
		expect(['b.neg', 'l.neg'].map(pole)).toEqual(['negative', 'negative']);
	});

	test('every branch is listed at both its nodes', () => {
		const net = buildNetwork(ring());
		for (const { index, a, b } of net.branches) {
			expect(net.branchesAt[a]).toContain(index);
			expect(net.branchesAt[b]).toContain(index);
		}
	});
});

describe('poles', () => {
	const poleOf = (diagram: Parameters<typeof buildNetwork>[0], stud: string) => {
		const net = buildNetwork(diagram);
		return net.poles[net.nodeOf.get(stud)!];
	};

	test('the midpoint of a series string is positive', () => {
		const string = circuit({ top: ['battery'], low: ['battery'] }, [['low.pos', 'top.neg']]);
		expect([poleOf(string, 'top.neg'), poleOf(string, 'low.neg'), poleOf(string, 'top.pos')]).toEqual(['positive', 'negative', 'positive']);
	});

	test('metal across both poles of a battery is shorted, open switches counting as closed', () => {
		const diagram = circuit({ b: ['battery'], s: ['battery-disconnect'] }, [
			['b.pos', 's.in'],
			['s.out', 'b.neg']
		]);
		expect(poleOf(diagram, 's.out')).toBe('shorted');
	});

	test('the output of a converter gives poles to its rail; what hangs on nothing floats', () => {
		const diagram = circuit({ c: ['dcdc-converter'], l: ['load'], x: ['positive-bus'] }, [['c.out-pos', 'l.pos']]);
		expect([poleOf(diagram, 'l.pos'), poleOf(diagram, 'l.neg'), poleOf(diagram, 'x.1')]).toEqual(['positive', 'floating', 'floating']);
	});
});

describe('fuse blocks', () => {
	const mounted = (stack?: readonly string[]) =>
		circuit(
			{ b: ['battery'], f: ['fuse-block', { fuseA: 100 }], l: ['load'] },
			[
				['f.post', 'l.pos'],
				['l.neg', 'b.neg']
			],
			{ mounts: { f: 'b.pos' }, stacks: stack ? { 'f.post': stack } : {} }
		);

	test("a mounted block's plate is one metal with its host stud", () => {
		const net = buildNetwork(mounted());
		expect(net.nodeOf.get('f.plate')).toBe(net.nodeOf.get('b.pos'));
		expect(net.nodeOf.get('f.post')).not.toBe(net.nodeOf.get('b.pos'));
	});

	test('a lug above the fuse, or not yet placed in the stack, is behind the fuse', () => {
		for (const stack of [undefined, ['fuse', 'W1', 'washer', 'nut'], ['fuse', 'nut']]) {
			const net = buildNetwork(mounted(stack));
			expect(net.nodeOfEnd.get('W1')!.from).toBe(net.nodeOf.get('f.post'));
		}
	});

	test('a lug below the fuse by-passes it', () => {
		const net = buildNetwork(mounted(['W1', 'fuse', 'nut']));
		expect(net.nodeOfEnd.get('W1')!.from).toBe(net.nodeOf.get('b.pos'));
		expect(net.branches[net.branchOfConductor.get('W1')!]!.a).toBe(net.nodeOf.get('b.pos'));
	});

	test('on a twin block only the lug of that post by-passes', () => {
		const net = buildNetwork(
			circuit(
				{ b: ['battery'], t: ['twin-fuse-block'], l: ['load'], m: ['load'] },
				[
					['t.a', 'l.pos'],
					['t.b', 'm.pos']
				],
				{ mounts: { t: 'b.pos' }, stacks: { 't.a': ['fuse', 'W1'], 't.b': ['W2', 'fuse'] } }
			)
		);
		expect(net.nodeOfEnd.get('W1')!.from).toBe(net.nodeOf.get('t.a'));
		expect(net.nodeOfEnd.get('W2')!.from).toBe(net.nodeOf.get('b.pos'));
	});
});

describe('references that lead nowhere', () => {
	/** As a file may have them after a part was changed; the circuit builder itself refuses such slips. */
	const broken = (change: (draft: ReturnType<typeof circuit>) => void) => {
		const diagram = structuredClone(
			circuit({ b: ['battery'], u: ['no-such-kind'], l: ['load'], f: ['fuse-block'], g: ['fuse-block'] }, [
				['b.pos', 'gone.pos'],
				['b.pos', 'u.pos'],
				['b.pos', 'l.pos'],
				['l.neg', 'b.neg']
			])
		);
		change(diagram);
		return buildNetwork(diagram);
	};

	test('leave their conductor out and are listed with the reason', () => {
		const net = broken(({ conductors }) => {
			conductors['W3']!.from = { part: 'b', terminal: 'handle' };
		});
		expect(net.unresolved).toEqual([
			{ kind: 'conductor', id: 'W1', ref: { part: 'gone', terminal: 'pos' }, reason: 'no-such-part' },
			{ kind: 'conductor', id: 'W2', ref: { part: 'u', terminal: 'pos' }, reason: 'unknown-kind' },
			{ kind: 'conductor', id: 'W3', ref: { part: 'b', terminal: 'handle' }, reason: 'no-such-terminal' }
		]);
		expect([...net.branchOfConductor.keys()]).toEqual(['W4']);
	});

	test('leave their mount out', () => {
		const { unresolved } = broken((diagram) => {
			diagram.conductors = {};
			diagram.mounts = {
				f: { part: 'gone', terminal: 'pos' },
				b: { part: 'g', terminal: 'post' },
				gone: { part: 'b', terminal: 'pos' },
				g: { part: 'b', terminal: 'handle' }
			};
		});
		expect(unresolved.map(({ id, reason }) => [id, reason])).toEqual([
			['f', 'no-such-part'],
			['b', 'no-plate'],
			['gone', 'no-such-part'],
			['g', 'no-such-terminal']
		]);
	});

	test('names of object properties are not parts', () => {
		const net = broken(({ conductors }) => {
			conductors['W3']!.to = { part: 'constructor', terminal: 'pos' };
		});
		expect(net.unresolved.map(({ reason }) => reason)).toContain('no-such-part');
	});
});

test('a converter names its two sides by number', () => {
	const net = buildNetwork(circuit({ l: ['load'], m: ['mains-charger'], c: ['dcdc-charger'] }));
	expect(net.sources.map(({ part, fedBy }) => [part, fedBy])).toEqual([
		['m', null],
		['c', 1]
	]);
	expect(net.loads.map(({ part, followsSource }) => [part, followsSource])).toEqual([
		['l', null],
		['c', 1]
	]);
});

test('switches and breakers can be opened by a case, fuses cannot', () => {
	const net = buildNetwork(circuit({ s: ['battery-disconnect'], k: ['circuit-breaker'], f: ['inline-fuse'] }));
	expect(net.branches.map(({ switchedBy }) => switchedBy)).toEqual(['s', 'k', null]);
});

test('an empty diagram is an empty network', () => {
	expect(buildNetwork(circuit({}))).toMatchObject({ nodeCount: 0, branches: [], unresolved: [] });
});
