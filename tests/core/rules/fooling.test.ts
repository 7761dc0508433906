/** Diagrams an expert draws to slip something past the checker: each is found, and by one rule for one cause. */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import type { Diagram } from '#core/diagram';
import { circuit } from '../../support/circuit.ts';

/** Rules that report an error or a fatal fault, with where it is marked. */
const grave = (diagram: Diagram): string[] =>
	checkDiagram(diagram)
		.findings.filter(({ severity }) => severity === 'error' || severity === 'fatal')
		.map(({ rule, subjects }) => `${rule} at ${subjects[0]!.id}`);

const all = (diagram: Diagram): string[] => checkDiagram(diagram).findings.map(({ rule }) => rule);

const thick = { gauge: '2/0', lengthM: 0.1 };
const load = { draw: 10 };
const classT = { family: 'class-t', fuseA: 30 };

describe('the fuse is there, but', () => {
	test('at the load’s end', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', classT], l: ['load', load] }, [
			['b.pos', 'f.in', { lengthM: 3 }],
			['f.out', 'l.pos', { lengthM: 0.1 }],
			['l.neg', 'b.neg', { lengthM: 3 }]
		]);
		expect(grave(diagram)).toEqual(['protection-too-far at W1']);
	});

	test('a switch goes round it', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', classT], q: ['battery-disconnect'], l: ['load', load] }, [
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'l.pos', { lengthM: 3 }],
			['b.pos', 'q.in', { lengthM: 0.1 }],
			['q.out', 'l.pos', { lengthM: 3 }],
			['l.neg', 'b.neg', { lengthM: 3 }]
		]);
		// The way round it is what has no fuse.
		expect(grave(diagram)).toContain('unprotected-conductor at W4');
	});

	test('the lug lies under it', () => {
		const diagram = circuit(
			{ b: ['battery'], f: ['fuse-block', { fuseA: 30 }], l: ['load', load] },
			[
				['f.post', 'l.pos', { lengthM: 3 }],
				['l.neg', 'b.neg', { lengthM: 3 }]
			],
			{ mounts: { f: 'b.pos' }, stacks: { 'f.post': ['W1', 'fuse'] } }
		);
		expect(grave(diagram)).toContain('lug-under-fuse at f.post');
	});

	test('each of two conductors side by side has one of its own, and together they are too large for what follows', () => {
		const diagram = circuit(
			{
				b: ['battery'],
				f: ['inline-fuse', { family: 'class-t', fuseA: 60 }],
				g: ['inline-fuse', { family: 'class-t', fuseA: 60 }],
				p: ['link-post'],
				l: ['load', load]
			},
			[
				['b.pos', 'f.in', { lengthM: 0.1 }],
				['b.pos', 'g.in', { lengthM: 0.1 }],
				['f.out', 'p.stud', { lengthM: 1 }],
				['g.out', 'p.stud', { lengthM: 1 }],
				['p.stud', 'l.pos', { gauge: '8', lengthM: 3 }],
				['l.neg', 'b.neg', { gauge: '2', lengthM: 3 }]
			]
		);
		expect(grave(diagram)).toContain('oversized-protection at W5');
		expect(all(diagram)).toContain('ring');
	});

	test('the conductor is marked as cranking', () => {
		const diagram = circuit({ b: ['battery'], l: ['load', load] }, [
			['b.pos', 'l.pos', { lengthM: 3, use: 'cranking' }],
			['l.neg', 'b.neg', { lengthM: 3, use: 'cranking' }]
		]);
		expect(grave(diagram)).toContain('cranking-mark at W1');
	});

	test('the conductor is marked as spare and feeds a load', () => {
		const diagram = circuit({ b: ['battery'], l: ['load', load] }, [
			['b.pos', 'l.pos', { lengthM: 3, use: 'spare' }],
			['l.neg', 'b.neg', { lengthM: 3 }]
		]);
		expect(grave(diagram)).toContain('unprotected-conductor at W1');
	});

	test('only the negative has it', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', classT], l: ['load', load] }, [
			['b.pos', 'l.pos', { lengthM: 3 }],
			['l.neg', 'f.in', { lengthM: 3 }],
			['f.out', 'b.neg', { lengthM: 0.1 }]
		]);
		expect(grave(diagram).some((found) => found.startsWith('unprotected-conductor') || found.startsWith('fuse-in-negative'))).toBe(true);
	});
});

describe('a second source', () => {
	test('a battery behind a charger that does not block feeds its array', () => {
		const diagram = circuit(
			{ b: ['battery'], s: ['solar-controller', { blocksReverse: false }], p: ['link-post'], f: ['inline-fuse', { ...classT, fuseA: 80 }] },
			[
				['s.pos', 'f.in', { gauge: '6', lengthM: 2 }],
				['f.out', 'b.pos', { gauge: '6', lengthM: 0.1 }],
				['s.neg', 'b.neg', { gauge: '6', lengthM: 2 }],
				['p.stud', 's.pv-pos', { gauge: '16', lengthM: 6 }]
			]
		);
		expect(grave(diagram)).toContain('oversized-protection at W4');
	});

	test('one that blocks does not', () => {
		const diagram = circuit({ b: ['battery'], s: ['solar-controller'], p: ['link-post'], f: ['inline-fuse', { ...classT, fuseA: 80 }] }, [
			['s.pos', 'f.in', { gauge: '6', lengthM: 2 }],
			['f.out', 'b.pos', { gauge: '6', lengthM: 0.1 }],
			['s.neg', 'b.neg', { gauge: '6', lengthM: 2 }],
			['p.stud', 's.pv-pos', { gauge: '16', lengthM: 6 }]
		]);
		expect(grave(diagram)).toEqual([]);
	});

	test('two batteries with one fuse between them', () => {
		const diagram = circuit({ a: ['battery'], b: ['battery'], f: ['inline-fuse', { ...classT, fuseA: 100 }] }, [
			['a.pos', 'f.in', { gauge: '6', lengthM: 0.1 }],
			['f.out', 'b.pos', { gauge: '6', lengthM: 4 }],
			['a.neg', 'b.neg', { gauge: '2/0', lengthM: 4 }]
		]);
		expect(grave(diagram)).toContain('two-source-conductor at W2');
	});

	test('a charger that limits itself below the conductor needs no fuse at its end', () => {
		const diagram = circuit({ b: ['battery'], c: ['mains-charger', { maxA: 30 }], f: ['inline-fuse', { ...classT, fuseA: 60 }] }, [
			['b.pos', 'f.in', { gauge: '6', lengthM: 0.1 }],
			['f.out', 'c.pos', { gauge: '6', lengthM: 4 }],
			['c.neg', 'b.neg', { gauge: '6', lengthM: 4 }]
		]);
		expect(grave(diagram)).toEqual([]);
	});

	test('an alternator larger than its conductor, with the fuse at the battery', () => {
		const diagram = circuit(
			{ b: ['battery', { chemistry: 'lead-acid' }], g: ['alternator', { maxA: 180 }], f: ['inline-fuse', { ...classT, fuseA: 110 }] },
			[
				['g.pos', 'f.in', { gauge: '6', lengthM: 2 }],
				['f.out', 'b.pos', { gauge: '6', lengthM: 0.1 }],
				['g.neg', 'b.neg', { gauge: '2/0', lengthM: 2 }]
			]
		);
		expect(grave(diagram).some((found) => found.endsWith(' at W1'))).toBe(true);
	});
});

describe('the way home', () => {
	test('two thin negatives in parallel are not one thick one', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', { ...classT, fuseA: 100 }], l: ['load', { draw: 60 }] }, [
			['b.pos', 'f.in', { gauge: '4', lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge: '4', lengthM: 2 }],
			['l.neg', 'b.neg', { gauge: '12', lengthM: 2 }],
			['l.neg', 'b.neg', { gauge: '12', lengthM: 2 }]
		]);
		expect(grave(diagram).some((found) => /at W[34]$/.test(found))).toBe(true);
	});

	test('the negative is switched and the positive is not', () => {
		const diagram = circuit(
			{ b: ['battery'], f: ['inline-fuse', classT], q: ['battery-disconnect'], l: ['load', load], h: ['chassis-point'] },
			[
				['b.pos', 'f.in', { lengthM: 0.1 }],
				['f.out', 'l.pos'],
				['l.neg', 'q.in'],
				['q.out', 'b.neg'],
				['b.neg', 'h.stud', thick]
			],
			{ negative: 'bonded' }
		);
		expect(grave(diagram)).toEqual(['switch-in-negative at q']);
	});

	test('a load returns by the hull', () => {
		const diagram = circuit(
			{ b: ['battery'], f: ['inline-fuse', classT], l: ['load', load], h: ['chassis-point'], k: ['chassis-point'] },
			[
				['b.pos', 'f.in', { lengthM: 0.1 }],
				['f.out', 'l.pos'],
				['l.neg', 'k.stud'],
				['b.neg', 'h.stud', thick]
			],
			{ negative: 'bonded', craft: 'boat' }
		);
		expect(grave(diagram)).toEqual(['chassis-used-as-return at l']);
	});

	test('a hull said to be insulated and bonded all the same', () => {
		const diagram = circuit({ b: ['battery'], h: ['chassis-point'] }, [['b.neg', 'h.stud', thick]], { negative: 'insulated' });
		expect(grave(diagram)).toEqual(['insulated-return at W1']);
	});

	test('the inverter’s chassis bond is thin', () => {
		const diagram = circuit({ b: ['battery'], i: ['inverter'], n: ['negative-bus'] }, [
			['b.pos', 'i.pos', thick],
			['i.neg', 'n.1', thick],
			['n.2', 'b.neg', thick],
			['i.case', 'n.3', { gauge: '14', lengthM: 1 }]
		]);
		expect(all(diagram)).toContain('case-bond');
	});
});

describe('what hangs together', () => {
	test('a bus jumpered to itself is told', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', classT], p: ['positive-bus'], l: ['load', load] }, [
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'p.1'],
			['p.2', 'p.4'],
			['p.3', 'l.pos'],
			['l.neg', 'b.neg']
		]);
		expect(all(diagram)).toContain('ring');
		expect(grave(diagram)).toEqual([]);
	});

	test('two loads of 12 V in series on 24 V', () => {
		const diagram = circuit(
			{
				b: ['battery', { nominalV: 24 }],
				f: ['inline-fuse', classT],
				l: ['load', { draw: 5, madeForV: 12 }],
				m: ['load', { draw: 5, madeForV: 12 }]
			},
			[
				['b.pos', 'f.in', { lengthM: 0.1 }],
				['f.out', 'l.pos'],
				['l.neg', 'm.pos'],
				['m.neg', 'b.neg']
			],
			{ nominalV: 24 }
		);
		expect(grave(diagram).length).toBeGreaterThan(0);
	});

	test('a piece that nothing feeds is told as such, and not as unprotected', () => {
		const diagram = circuit({ b: ['battery'], l: ['load'], p: ['positive-bus'], n: ['negative-bus'] }, [
			['p.1', 'l.pos'],
			['n.1', 'l.neg']
		]);
		expect(all(diagram)).toContain('not-fed');
		expect(grave(diagram)).not.toContain('unprotected-conductor at W1');
	});

	test('a fuse of another type in a cube block is judged as what it is', () => {
		const block = (family: string) =>
			circuit(
				{ b: ['battery', { nominalV: 48, capacityAh: 200 }], f: ['fuse-block', { family, fuseA: 100 }], l: ['load', load] },
				[
					['f.post', 'l.pos', { gauge: '4' }],
					['l.neg', 'b.neg', { gauge: '4' }]
				],
				{ mounts: { f: 'b.pos' }, nominalV: 48 }
			);
		expect(all(block('class-t'))).not.toContain('interrupt-capacity');
		expect(grave(block('strip-sf51'))).toContain('fuse-voltage-rating at f');
		expect(grave(block('cube'))).toContain('interrupt-capacity at f');
	});
});

describe('what is judged is made to look small:', () => {
	const circuitOf = (cases: NonNullable<NonNullable<Parameters<typeof circuit>[2]>['cases']>) =>
		circuit(
			{ b: ['battery'], f: ['inline-fuse', classT], l: ['load', { draw: 60 }] },
			[
				['b.pos', 'f.in', thick],
				['f.out', 'l.pos', { gauge: '10', lengthM: 2 }],
				['l.neg', 'b.neg', { gauge: '10', lengthM: 2 }]
			],
			{ cases }
		);

	test('every case is called a surge', () => {
		expect(all(circuitOf({ s: { duration: 'surge' } }))).toContain('load-in-no-case');
	});
	test('the load is off in every case', () => {
		expect(all(circuitOf({ off: { loads: 0 } }))).toContain('load-in-no-case');
	});
	test('the load is on at a tenth only', () => {
		expect(all(circuitOf({ on: { loads: 0.1 } }))).toContain('load-in-no-case');
	});
	test('the battery is said to give next to nothing into a short', () => {
		const diagram = circuit(
			{ b: ['battery', { capacityAh: 200, faultResistanceMilliohm: 1000 }], f: ['inline-fuse', { fuseA: 30 }], l: ['load', load] },
			[
				['b.pos', 'f.in', thick],
				['f.out', 'l.pos'],
				['l.neg', 'b.neg']
			]
		);
		expect(all(diagram)).toContain('short-circuit-current-unknown');
	});
});

describe('the wrong way round:', () => {
	test('a 32 V fuse in the negative of 48 V, where it seems to stand no voltage', () => {
		const diagram = circuit(
			{ b: ['battery', { nominalV: 48 }], g: ['inline-fuse', classT], f: ['inline-fuse', { fuseA: 30 }], l: ['load', load] },
			[
				['b.pos', 'g.in', thick],
				['g.out', 'l.pos', { gauge: '10' }],
				['l.neg', 'f.in', { gauge: '10' }],
				['f.out', 'b.neg', thick]
			],
			{ nominalV: 48 }
		);
		expect(grave(diagram)).toContain('fuse-voltage-rating at f');
	});
	test('a converter fed by its own output', () => {
		const diagram = circuit({ b: ['battery'], k: ['dcdc-converter', { setV: 12, maxA: 10 }], l: ['load', load] }, [
			['k.out-pos', 'k.in-pos', { gauge: '10' }],
			['k.out-neg', 'k.in-neg', { gauge: '10' }],
			['k.out-pos', 'l.pos', { gauge: '10' }],
			['l.neg', 'k.out-neg', { gauge: '10' }]
		]);
		expect(grave(diagram)).toContain('converter-feeds-itself at k');
	});
	test('a bus fed at one of its fuse positions: what hangs on the bar itself is behind that fuse', () => {
		const diagram = circuit(
			{
				b: ['battery'],
				f: ['inline-fuse', { family: 'class-t', fuseA: 100 }],
				d: ['fused-bus', { fuseA: [100, 30, null, null] }],
				l: ['load', load]
			},
			[
				['b.pos', 'f.in', thick],
				['f.out', 'd.1', { gauge: '2' }],
				['d.L', 'l.pos', { gauge: '10' }],
				['l.neg', 'b.neg', { gauge: '2' }]
			]
		);
		expect(grave(diagram)).toContain('oversized-protection at W3');
	});
	test('a conductor from bar to position round the fuse between them', () => {
		const diagram = circuit(
			{
				b: ['battery'],
				f: ['inline-fuse', { family: 'class-t', fuseA: 200 }],
				d: ['fused-bus', { fuseA: [30, null, null, null] }],
				l: ['load', load]
			},
			[
				['b.pos', 'f.in', thick],
				['f.out', 'd.L', thick],
				['d.L', 'd.1', { gauge: '10', lengthM: 0.1 }],
				['d.1', 'l.pos', { gauge: '10' }],
				['l.neg', 'b.neg', thick]
			]
		);
		expect(grave(diagram)).toContain('oversized-protection at W4');
	});
	test('only one of two pieces in a row is sheathed, and the longer allowance is claimed for both', () => {
		const diagram = circuit(
			{
				b: ['battery'],
				m: ['inline-fuse', { family: 'class-t', fuseA: 200 }],
				d: ['positive-bus'],
				e: ['link-post'],
				f: ['inline-fuse', classT],
				l: ['load', load]
			},
			[
				['b.pos', 'm.in', thick],
				['m.out', 'd.1', thick],
				['d.2', 'e.stud', { gauge: '10', lengthM: 0.5, sheathed: true }],
				['e.stud', 'f.in', { gauge: '10', lengthM: 0.3 }],
				['f.out', 'l.pos', { gauge: '10' }],
				['l.neg', 'b.neg', thick]
			]
		);
		expect(grave(diagram)).toContain('protection-too-far at W4');
	});
	test('a jumper from the system side of the shunt back to the battery', () => {
		const diagram = circuit({ b: ['battery'], s: ['shunt'], n: ['negative-bus'], f: ['inline-fuse', classT], l: ['load', load] }, [
			['b.pos', 'f.in', thick],
			['f.out', 'l.pos', { gauge: '10' }],
			['l.neg', 'n.1', { gauge: '10' }],
			['b.neg', 's.battery', thick],
			['s.system', 'n.2', thick],
			['n.3', 'b.neg', { gauge: '10' }]
		]);
		expect(grave(diagram)).toContain('shunt-bypassed at s');
	});
});
