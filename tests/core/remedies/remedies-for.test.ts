import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { change, run, serializeDiagram, start, undo, type Diagram } from '#core/diagram';
import { MENDABLE_RULES, remediesFor, type Remedy } from '#core/remedies';
import { isOpen, RULES, type Finding } from '#core/rules';
import { circuit } from '../../support/circuit.ts';
import { example } from '../../support/examples/figures.ts';
import { randomDiagram } from '../../support/random-diagram.ts';

const errors = (findings: readonly Finding[]) =>
	findings.filter((finding) => (finding.severity === 'fatal' || finding.severity === 'error') && isOpen(finding)).length;

/** Titles of what is offered for the first finding of a rule, each applied and held to its promise. */
function offered(diagram: Diagram, rule: string): string[] {
	const finding = checkDiagram(diagram).findings.find((other) => other.rule === rule);
	if (!finding) throw new Error(`There is no finding of ${rule}.`);
	const remedies = remediesFor(diagram, finding);
	for (const remedy of remedies) holds(diagram, finding, remedy);
	return remedies.map(({ title }) => title);
}

/** The finding is gone or milder, errors are as many as the preview says, one undo takes it all back. */
function holds(diagram: Diagram, finding: Finding, remedy: Remedy): void {
	const before = checkDiagram(diagram).findings;
	expect(remedy.command.refuse(diagram)).toBeNull();
	const history = run(start(diagram), remedy.command);
	expect(history.done).toHaveLength(1);
	expect(serializeDiagram(undo(history).diagram)).toBe(serializeDiagram(diagram));

	const after = checkDiagram(history.diagram).findings;
	const preview = remedy.preview();
	expect(after.filter(({ severity }) => severity === finding.severity).map(({ key }) => key)).not.toContain(finding.key);
	expect([preview.errorsBefore, preview.errorsAfter]).toEqual([errors(before), errors(after)]);
	if (finding.severity !== 'fatal') expect(errors(after)).toBeLessThanOrEqual(errors(before));
	const known = new Set(before.map(({ key, severity }) => `${severity} ${key}`));
	const worse = after.filter((other) => other.severity !== 'note' && isOpen(other) && !known.has(`${other.severity} ${other.key}`));
	const said = preview.added.map(({ key }) => key);
	for (const { key } of worse) if (!before.some((other) => other.key === key && other.severity !== 'note')) expect(said).toContain(key);
	if (worse.some(({ key }) => said.includes(key))) expect(remedy.caution).not.toBeNull();
	if (remedy.safe) expect(remedy.preview().added.filter(({ severity }) => severity !== 'note')).toEqual([]);
}

/** Battery, fuse on its post, bus, one load and back. */
const simple = (fuseA: number, draw: number, gauge: string, rest: { lengthM?: number; label?: string; colour?: 'black' } = {}) =>
	circuit(
		{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA }], l: ['load', { draw, connection: 'studs' }] },
		[
			['f.post', 'l.pos', { gauge, ...rest }],
			['l.neg', 'b.neg', { gauge, ...(rest.lengthM !== undefined && { lengthM: rest.lengthM }) }]
		],
		{ mounts: { f: 'b.pos' } }
	);

describe('sizes', () => {
	test('the next size up that carries the current', () => {
		// 33 CFR 183.425 Table 5, 105 °C: 8 AWG 80 A, 6 AWG 120 A; 100 A is within 90 % of 120 A.
		expect(offered(simple(125, 100, '8'), 'undersized-conductor')[0]).toMatch(/^Use 6 AWG for W1/);
	});

	test('both conductors for a voltage drop', () => {
		// 20 A over 2 × 5 m: 10 AWG 0.68 V (5.7 %); 3 % of 12 V asks for no more than 1.8 mΩ/m, 6 AWG has 1.34.
		const drop = circuit(
			{
				b: ['battery', { capacityAh: 200 }],
				f: ['fuse-block', { fuseA: 30 }],
				l: ['load', { draw: 20, critical: true, connection: 'studs' }]
			},
			[
				['f.post', 'l.pos', { gauge: '10', lengthM: 5 }],
				['l.neg', 'b.neg', { gauge: '10', lengthM: 5 }]
			],
			{ mounts: { f: 'b.pos' } }
		);
		expect(offered(drop, 'voltage-drop')).toEqual(['Use 6 AWG for W1 and W2']);
	});

	test('a smaller fuse or a thicker conductor', () => {
		// 12 AWG 45 A, common practice 1.0 × amperage: 40 A of the cube ratings; 60 A asks for 10 AWG.
		const titles = offered(simple(60, 20, '12'), 'oversized-protection');
		expect(titles[0]).toBe('Fit 40 A for F');
		expect(titles).toContainEqual(expect.stringMatching(/^Use 10 AWG for W1/));
	});

	test('a larger fuse, and the conductor with it', () => {
		// 55 A on 60 A is more than 80 %; 75 A is the next cube rating; 10 AWG carries 60 A, 8 AWG 80 A.
		expect(offered(simple(60, 55, '10'), 'fuse-below-load')[0]).toMatch(/^Fit 75 A for F, and use 8 AWG for /);
	});

	test('a bus of a higher rating', () => {
		expect(offered(example('ridge-post-before'), 'bus-overloaded')).toEqual(['Use a negative bus rated 300 A for NB']);
	});
});

describe('fuses', () => {
	const bare = circuit({ b: ['battery'], l: ['load', { draw: 20, connection: 'studs' }] }, [
		['b.pos', 'l.pos', { lengthM: 3 }],
		['l.neg', 'b.neg', { lengthM: 3 }]
	]);

	test('a block on the post, or one in the run', () => {
		const titles = offered(bare, 'unprotected-conductor');
		expect(titles).toContainEqual(expect.stringMatching(/^Mount fuse block F1 with 30 A on B \+ for W1/));
		expect(titles).toContainEqual(expect.stringMatching(/^Put in-line fuse F1 .* 0\.1 m from B \+ into W1/));
	});

	test('the far fuse moved to the source', () => {
		const titles = offered(example('ridge-post-before'), 'protection-too-far');
		expect(titles[0]).toBe('Move F2 to 0.1 m from D end stud L');
	});

	test('one at the open end of a conductor fed from both', () => {
		const titles = offered(example('ridge-post-before'), 'two-source-conductor');
		expect(titles).toContainEqual(expect.stringMatching(/^Mount fuse block F6 with 50 A on D end stud R for C4\+/));
	});

	test('another type for the voltage', () => {
		expect(offered(example('skarv-fell-before'), 'fuse-voltage-rating')).toEqual(['Use Class T fuses in D']);
	});
});

describe('connections', () => {
	test('a return moved past the shunt', () => {
		expect(offered(example('ridge-post-before'), 'shunt-bypassed')).toEqual([expect.stringMatching(/^Move C6− to NB stud \d/)]);
	});

	test('a stud put in order', () => {
		expect(offered(example('ridge-post-before'), 'stack-order')).toEqual([
			'Arrange D end stud L from the seat up: 4/0 AWG lug of W4, 4 AWG lug of C2+',
			'Move C2+ to D end stud R'
		]);
	});

	test('a lug from under its fuse, a washer from between', () => {
		const diagram = simple(60, 20, '6');
		expect(
			offered({ ...diagram, stacks: { 'f.post': [{ kind: 'lug', conductor: 'W1', end: 'from' }, { kind: 'fuse' }] } }, 'lug-under-fuse')
		).toHaveLength(1);
		expect(
			offered({ ...diagram, stacks: { 'b.pos': [{ kind: 'washer' }, { kind: 'block', block: 'f' }] } }, 'washer-in-current-path')
		).toHaveLength(1);
	});

	test('reversed conductors exchanged', () => {
		const reversed = circuit(
			{ b: ['battery'], f: ['fuse-block', { fuseA: 30 }], l: ['load', { draw: 10, connection: 'studs' }] },
			[
				['f.post', 'l.neg'],
				['l.pos', 'b.neg']
			],
			{ mounts: { f: 'b.pos' } }
		);
		expect(offered(reversed, 'reversed-polarity')).toEqual(['Exchange the conductors of L']);
	});
});

describe('places', () => {
	test('one thing of a crowded stud on a free stud beside it', () => {
		const ends = ['1', '1', '1', '1', '1'].map((stud, index) => [`l${index}.neg`, `n.${stud}`] as const);
		const crowded = circuit(
			{
				b: ['battery'],
				n: ['negative-bus', { studs: 4, usableLengthMm: 60 }],
				...Object.fromEntries([0, 1, 2, 3, 4].map((index) => [`l${index}`, ['load', { draw: 2, connection: 'studs' }] as const]))
			},
			[['n.2', 'b.neg', { gauge: '6' }], ...ends]
		);
		const titles = offered(crowded, 'stud-crowded');
		expect(titles).toContainEqual(expect.stringMatching(/^Move W\d to n stud [34]$/i));
		// Two of the five go on its faces, the post itself counts as one: four are left.
		expect(titles).toContainEqual(expect.stringMatching(/^Put adapter post X\d+ on n stud 1 and W\d, W\d on it/i));
	});

	test('another order on a bar that carries too much', () => {
		// Feed at one end, two loads of 50 A: 100 A in the first segment of a bar for 60 A; with the feed between them 50 A in each.
		const bus = circuit(
			{
				b: ['battery', { capacityAh: 400 }],
				d: ['positive-bus', { studs: 3, ratedA: 60 }],
				l: ['load', { draw: 50, connection: 'studs' }],
				m: ['load', { draw: 50, connection: 'studs' }]
			},
			[
				['b.pos', 'd.1', { gauge: '2/0' }],
				['d.2', 'l.pos', { gauge: '4' }],
				['d.3', 'm.pos', { gauge: '4' }],
				['l.neg', 'b.neg', { gauge: '4' }],
				['m.neg', 'b.neg', { gauge: '4' }]
			]
		);
		expect(offered(bus, 'bus-overloaded')).toContainEqual(expect.stringMatching(/^Order the circuits on d: /i));
	});

	test('a switch where a bank has none', () => {
		const titles = offered(simple(60, 20, '6'), 'main-disconnect-missing');
		expect(titles).toEqual(['Put battery disconnect S1 (100 A) into W1']);
	});
});

describe('papers', () => {
	test('the next label', () => {
		expect(offered(example('ridge-post-before'), 'duplicate-label')).toEqual(['Label it C7+']);
		expect(offered(simple(60, 20, '6', { label: '' }), 'missing-label')).toEqual(['Label it W3']);
	});

	test('the colour of the pole', () => {
		expect(offered(simple(60, 20, '6', { colour: 'black' }), 'colour-fault')).toEqual(['Give W1 the colour of its pole']);
	});
});

test('rules that can be mended exist', () => {
	const ids = new Set(RULES.map(({ meta }) => meta.id));
	for (const rule of MENDABLE_RULES) expect(ids, rule).toContain(rule);
});

test('a finding that is not there is not mended', () => {
	expect(remediesFor(simple(60, 20, '6'), { key: 'undersized-conductor:W1' })).toEqual([]);
});

test.each(['ridge-post-before', 'pagemoor-before', 'otters-reach-before', 'skarv-fell-before'])(
	'every remedy offered for %s keeps its promise',
	(name) => {
		const diagram = example(name);
		let count = 0;
		for (const finding of checkDiagram(diagram).findings) {
			for (const remedy of remediesFor(diagram, finding)) {
				holds(diagram, finding, remedy);
				count += 1;
			}
		}
		expect(count).toBeGreaterThan(5);
	},
	60_000
);

test('a block that is not there is not moved', () => {
	const bus = circuit({ c: ['positive-bus'], e: ['battery-disconnect'] }, []);
	const at = { part: 'c', terminal: '1' };
	const damaged = { ...bus, mounts: { a: at, b: at, d: at, f: at, e: at } };
	for (const finding of checkDiagram(damaged).findings) for (const remedy of remediesFor(damaged, finding)) holds(damaged, finding, remedy);
});

test('on random diagrams, applying a remedy never makes errors it does not tell of', () => {
	fc.assert(
		fc.property(randomDiagram, (diagram) => {
			for (const finding of checkDiagram(diagram).findings.slice(0, 8)) {
				for (const remedy of remediesFor(diagram, finding)) {
					const { errorsBefore, errorsAfter } = remedy.preview();
					const after = change(diagram, remedy.command).diagram;
					expect(errors(checkDiagram(after).findings)).toBe(errorsAfter);
					if (errorsAfter > errorsBefore) expect(remedy.caution).not.toBeNull();
				}
			}
		}),
		{ numRuns: 25 }
	);
}, 60_000);
