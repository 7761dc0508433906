/** What is kept from one check to the next must never show in a result. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { AWG_SIZES, parseDiagram, type Conductor, type Diagram, type Part } from '#core/diagram';
import { EXAMPLES } from '#core/examples';
import { createMemory } from '#core/memory';
import { describe as descriptionOf } from '#core/parts';
import { largeDiagram } from '../../support/large-diagram.ts';
import { randomDiagram } from '../../support/random-diagram.ts';

/** Numbers that choose among what a diagram holds when its turn comes. */
type Choice = readonly [a: number, b: number, c: number];

const pick = <T>(list: readonly T[], number: number): T => list[number % list.length]!;
const some = (record: object, number: number): string => pick([...Object.keys(record), 'gone'], number);

const withConductor = (d: Diagram, a: number, change: Partial<Conductor>): Diagram => {
	const id = some(d.conductors, a);
	return id === 'gone' ? d : { ...d, conductors: { ...d.conductors, [id]: { ...d.conductors[id]!, ...change } } };
};
const withPart = (d: Diagram, a: number, change: (part: Part) => Partial<Part>): Diagram => {
	const id = some(d.parts, a);
	return id === 'gone' ? d : { ...d, parts: { ...d.parts, [id]: { ...d.parts[id]!, ...change(d.parts[id]!) } } };
};
const without = <Value>(record: Readonly<Record<string, Value>>, key: string): Record<string, Value> =>
	Object.fromEntries(Object.entries(record).filter(([other]) => other !== key));
const someTerminal = (d: Diagram, a: number, b: number): Conductor['from'] => {
	const part = some(d.parts, a);
	const terminals = part === 'gone' ? [] : descriptionOf(d.parts[part]!).terminals.map(({ id }) => id);
	return { part, terminal: pick([...terminals, 'nowhere'], b) };
};

/** As edits do, each shares with what it began with all that it leaves alone. */
const EDITS: Readonly<Record<string, (d: Diagram, ...choice: Choice) => Diagram>> = {
	length: (d, a, b) => withConductor(d, a, { lengthM: b % 7 === 0 ? null : (b % 40) / 4 + 0.1 }),
	gauge: (d, a, b) => withConductor(d, a, { gauge: { system: 'awg', size: pick(AWG_SIZES, b) } }),
	use: (d, a, b) => withConductor(d, a, { use: pick(['ordinary', 'cranking', 'spare'] as const, b) }),
	surroundings: (d, a, b) =>
		withConductor(d, a, { environment: b % 2 ? 'outside' : 'engine-space', bundleCount: 1 + (b % 30), sheathed: b % 3 > 0 }),
	'label of a conductor': (d, a, b) => withConductor(d, a, { label: pick(['', 'W1', 'w1', 'L'], b) }),
	colour: (d, a, b) => withConductor(d, a, { colour: pick(['black', 'red', 'yellow', 'auto'] as const, b) }),
	end: (d, a, b, c) => withConductor(d, a, { [c % 2 ? 'from' : 'to']: someTerminal(d, b, c) }),
	'another conductor': (d, a, b, c) => {
		const like = d.conductors[some(d.conductors, a)];
		return like ? { ...d, conductors: { ...d.conductors, [`N${a}`]: { ...like, to: c % 3 ? like.to : someTerminal(d, b, c) } } } : d;
	},
	'a conductor less': (d, a) => ({ ...d, conductors: without(d.conductors, some(d.conductors, a)) }),
	'another order': (d) => ({ ...d, conductors: Object.fromEntries(Object.entries(d.conductors).reverse()) }),
	place: (d, a, b, c) => withPart(d, a, () => ({ at: { x: b, y: c }, rotation: pick([0, 90, 180, 270] as const, b) })),
	'label of a part': (d, a, b) => withPart(d, a, () => ({ label: pick(['', 'F1', 'f1', 'Pump'], b) })),
	rating: (d, a, b) =>
		withPart(d, a, ({ params }) => ({ params: { ...params, [pick(['fuseA', 'draw', 'capacityAh', 'maxA'], b)]: 5 * (1 + (b % 60)) } })),
	'a part less': (d, a) => ({ ...d, parts: without(d.parts, some(d.parts, a)) }),
	'a block taken off': (d, a) => ({ ...d, mounts: without(d.mounts, some(d.mounts, a)) }),
	stack: (d, a) => {
		const { from } = d.conductors[some(d.conductors, a)] ?? { from: someTerminal(d, a, a) };
		return { ...d, stacks: { ...d.stacks, [`${from.part}.${from.terminal}`]: [{ kind: 'washer' }] } };
	},
	level: (d, a, b, c) => {
		const id = some(d.cases, a);
		return id === 'gone' ? d : { ...d, cases: { ...d.cases, [id]: { ...d.cases[id]!, levels: { [some(d.parts, b)]: c % 3 } } } };
	},
	'name of a case': (d, a, b) => {
		const id = some(d.cases, a);
		return id === 'gone' ? d : { ...d, cases: { ...d.cases, [id]: { ...d.cases[id]!, label: `Case ${b}`, order: b } } };
	},
	'a case less': (d, a) => ({ ...d, cases: without(d.cases, some(d.cases, a)) }),
	profile: (d, a) => ({ ...d, profile: pick(['common-practice', 'us-small-craft', 'abyc-e11', 'rv-nec-552', 'moon-law'], a) }),
	'a number of the profile': (d, a) => ({
		...d,
		customProfile: a % 3 ? { base: 'common-practice', numbers: { deviceFactor: 1 + (a % 4) } } : null
	}),
	system: (d, a, b) => ({
		...d,
		system: { ...d.system, nominalV: pick([12, 24, 48] as const, a) },
		ambient: { ...d.ambient, outsideC: 10 + (b % 40) }
	}),
	waiver: (d, a, b) => {
		const finding = pick([...checkDiagram(structuredClone(d)).findings, null], a);
		if (!finding) return { ...d, waivers: {} };
		const subjects = finding.subjects.map(({ kind, id }) => `${kind}:${id}`);
		const numbers = Object.fromEntries(Object.entries(finding.numbers).map(([name, value]) => [name, value * (b % 2 ? 1 : 2)]));
		const fingerprint = { severity: finding.severity, subjects, numbers };
		return { ...d, waivers: { ...d.waivers, [finding.key]: { reason: 'because', by: 'N. N.', date: '2024-05-01', fingerprint } } };
	},
	'a copy': (d) => structuredClone(d)
};

const edits = fc.array(
	fc.record({ kind: fc.constantFrom(...Object.keys(EDITS), 'undo'), choice: fc.tuple(fc.nat(999), fc.nat(999), fc.nat(999)) }),
	{
		minLength: 2,
		maxLength: 8
	}
);

/** Each state is checked with what is remembered of those before it, and as a copy of which nothing is known. */
function expectNothingShows(start: Diagram, steps: readonly { kind: string; choice: Choice }[]): void {
	const memory = createMemory();
	const past = [start];
	checkDiagram(start, memory);
	for (const { kind, choice } of steps) {
		const now = past.at(-1)!;
		const next = kind === 'undo' ? (past.at(-2) ?? now) : EDITS[kind]!(now, ...choice);
		past.push(next);
		const result = checkDiagram(next, memory);
		const expected = checkDiagram(structuredClone(next));
		expect(result.findings, kind).toEqual(expected.findings);
		expect(result, kind).toEqual(expected);
		expect(Object.keys(result.conductors), kind).toEqual(Object.keys(expected.conductors));
	}
}

const exampleDiagrams = EXAMPLES.map(({ file }) => {
	const parsed = parseDiagram(readFileSync(new URL(`../../../static/examples/${file}`, import.meta.url), 'utf8'));
	if (!parsed.ok) throw new Error(file);
	return parsed.diagram;
});

describe('a check with a memory gives what one without gives', () => {
	test('after any edits of the example systems', () => {
		fc.assert(
			fc.property(fc.constantFrom(...exampleDiagrams), edits, (diagram, steps) => {
				expectNothingShows(diagram, steps);
			}),
			{ numRuns: 15 }
		);
	}, 120_000);

	test('after any edits of a system of many sections and loops', () => {
		fc.assert(
			fc.property(fc.nat(50), edits, (seed, steps) => {
				expectNothingShows(largeDiagram(60, seed), steps);
			}),
			{ numRuns: 10 }
		);
	}, 120_000);

	test('after any edits of diagrams that make no sense', () => {
		fc.assert(
			fc.property(randomDiagram, edits, (diagram, steps) => {
				expectNothingShows(diagram, steps);
			}),
			{ numRuns: 40 }
		);
	}, 120_000);

	test('from one diagram to another one', () => {
		const memory = createMemory();
		for (const diagram of [...exampleDiagrams, ...exampleDiagrams]) {
			expect(checkDiagram(diagram, memory)).toEqual(checkDiagram(structuredClone(diagram)));
		}
	}, 60_000);
});

test('a moved part leaves every finding the one it was', () => {
	const memory = createMemory();
	const diagram = exampleDiagrams[0]!;
	const before = checkDiagram(diagram, memory);
	const after = checkDiagram(EDITS['place']!(diagram, 0, 500, 500), memory);
	expect(before.findings.length).toBeGreaterThan(5);
	expect(after.findings.every((finding, i) => finding === before.findings[i])).toBe(true);
});
