import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	addConductor,
	change,
	contentOf,
	editConductors,
	editPart,
	editSystem,
	editTitleBlock,
	moveParts,
	parseDiagram,
	reconnectConductor,
	removeItems,
	reorderStack,
	rotateParts,
	serializeDiagram,
	setBends,
	setLevel,
	setParams,
	type Command,
	type Diagram
} from '#core/diagram';
import { compareContents, consequencesOf, retestOf } from '#core/revisions';
import { circuit } from '../../support/circuit.ts';
import { ridgePostAfter, ridgePostBefore } from '../../support/examples/ridge-post.ts';

const drawn = circuit(
	{
		b: ['battery', { capacityAh: 100 }, { label: 'B1' }],
		f: ['inline-fuse', { fuseA: 100 }, { label: 'F3' }],
		d: ['positive-bus', {}, { label: 'D1' }],
		n: ['negative-bus', {}, { label: 'N1' }],
		l: ['load', { draw: 5 }, { label: 'L1' }]
	},
	[
		['b.pos', 'f.in', { label: 'W1', gauge: '6', lengthM: 0.2 }],
		['f.out', 'd.1', { label: 'W2', gauge: '6', lengthM: 1 }],
		['d.2', 'l.pos', { label: 'W3', gauge: '12', lengthM: 3 }],
		['l.neg', 'n.2', { label: 'W4', gauge: '12', lengthM: 3 }],
		['n.1', 'b.neg', { label: 'W5', gauge: '6', lengthM: 1 }]
	]
);

const firstCase = Object.keys(drawn.cases)[0]!;
const after = (...commands: Command[]): Diagram => commands.reduce((diagram, command) => change(diagram, command).diagram, drawn);
const compared = (...commands: Command[]) => compareContents(contentOf(drawn), contentOf(after(...commands)));
const texts = (...commands: Command[]): string[] => compared(...commands).map(({ name, text }) => `${name} ${text}`);

describe('in the trade’s words', () => {
	test.each<[string, Command, readonly string[]]>([
		['a fuse', setParams({ parts: ['f'], params: { fuseA: 80 } }), ['F3 100 A to 80 A']],
		['a size', editConductors({ conductors: ['W3'], set: { gauge: { system: 'awg', size: '10' } } }), ['W3 12 AWG to 10 AWG']],
		['a length', editConductors({ conductors: ['W3'], set: { lengthM: 3.5 } }), ['W3 length 3 m to 3.5 m']],
		[
			'a length that was measured at last',
			editConductors({ conductors: ['W3'], set: { lengthM: null } }),
			['W3 length 3 m to not measured']
		],
		['a label', editPart({ part: 'f', set: { label: 'F4' } }), ['F3 is called F4 now']],
		['a note', editPart({ part: 'f', set: { note: 'behind the seat' } }), ['F3 note: behind the seat']],
		['the volts of the system', editSystem({ set: { nominalV: 24 } }), ['System 12 V to 24 V']],
		['the title block', editTitleBlock({ set: { legalOwner: 'R. Iyer' } }), ['Title block legal owner empty to R. Iyer']],
		['a case', setLevel({ case: firstCase, part: 'l', level: 0.5 }), [`Case “${drawn.cases[firstCase]!.label}” L1 as the others to 0.5`]]
	])('%s', (_, command, expected) => {
		const found = texts(command);
		for (const line of expected) expect(found).toContain(line);
	});

	test('a landing that moved names both studs, and the stacks to tighten', () => {
		const changes = compared(reconnectConductor({ conductor: 'W3', end: 'from', on: { part: 'd', terminal: '3' } }));
		const [landing, ...studs] = changes;
		expect(landing!.name).toBe('W3');
		expect(landing!.text).toMatch(/^its start from D1 .+ to D1 .+$/);
		expect(studs.map(({ subject }) => subject.id).sort()).toEqual(['d.2', 'd.3']);
	});

	test('what is new and what is gone', () => {
		const gone = compared(removeItems({ parts: ['l'], conductors: [] }));
		expect(gone.find(({ subject }) => subject.id === 'l')).toMatchObject({ how: 'removed', name: 'L1', sort: 'electrical' });
		expect(gone.filter(({ how, subject }) => how === 'removed' && subject.kind === 'conductor').map(({ name }) => name)).toEqual([
			'W3',
			'W4'
		]);
		const conductor = { from: { part: 'd', terminal: '3' }, to: { part: 'l', terminal: 'pos' }, label: 'W9' };
		const added = compared(addConductor({ id: 'x', conductor }));
		expect(added.find(({ subject }) => subject.id === 'x')).toMatchObject({ how: 'added', name: 'W9' });
	});

	test('an order on a stud', () => {
		const two = change(drawn, reconnectConductor({ conductor: 'W3', end: 'from', on: { part: 'd', terminal: '1' } })).diagram;
		const lug = (conductor: string, end: 'from' | 'to') => ({ kind: 'lug', conductor, end }) as const;
		const first = change(two, reorderStack({ stud: 'd.1', stack: [lug('W2', 'to'), lug('W3', 'from')] })).diagram;
		const second = change(two, reorderStack({ stud: 'd.1', stack: [lug('W3', 'from'), lug('W2', 'to')] })).diagram;
		const [only, ...rest] = compareContents(contentOf(first), contentOf(second));
		expect(rest).toEqual([]);
		expect(only!.text).toBe('from the seat now: 12 AWG ring of W3; 6 AWG lug of W2 (was: 6 AWG lug of W2; 12 AWG ring of W3)');
	});
});

describe('moved only', () => {
	test('is kept apart from what is electrical', () => {
		const changes = compared(
			moveParts({ parts: ['b', 'l'], by: { x: 10, y: 0 } }),
			rotateParts({ parts: ['f'], quarterTurns: 1 }),
			setBends({ conductor: 'W3', bends: [{ x: 1, y: 2 }] })
		);
		expect(changes.length).toBeGreaterThanOrEqual(4);
		expect(new Set(changes.map(({ sort }) => sort))).toEqual(new Set(['moved']));
	});

	test('comes after what is electrical', () => {
		const sorts = compared(moveParts({ parts: ['b'], by: { x: 10, y: 0 } }), setParams({ parts: ['f'], params: { fuseA: 80 } })).map(
			({ sort }) => sort
		);
		expect(sorts).toEqual(['electrical', 'moved']);
	});
});

describe('of any drawing', () => {
	test('there is no difference to itself, also after a file', () => {
		for (const diagram of [drawn, ridgePostAfter()]) {
			const again = parseDiagram(serializeDiagram(diagram));
			expect(again.ok && compareContents(contentOf(diagram), contentOf(again.diagram))).toEqual([]);
		}
	});

	test('every changed field of a conductor shows, and the way back shows the same subjects', () => {
		fc.assert(
			fc.property(
				fc.record(
					{
						lengthM: fc.constantFrom(null, 1.5, 7),
						insulationC: fc.constantFrom(75 as const, 125 as const),
						sheathed: fc.constant(true),
						bundleCount: fc.constantFrom(3, 5),
						environment: fc.constant('engine-space' as const),
						colour: fc.constant('yellow' as const)
					},
					{ requiredKeys: [] }
				),
				(set) => {
					if (Object.keys(set).length === 0) return;
					const now = contentOf(after(editConductors({ conductors: ['W2'], set })));
					const there = compareContents(contentOf(drawn), now);
					expect(there).toHaveLength(Object.keys(set).length);
					expect(compareContents(now, contentOf(drawn)).map(({ subject }) => subject.id)).toEqual(there.map(({ subject }) => subject.id));
				}
			),
			{ numRuns: 40 }
		);
	});
});

describe('consequences', () => {
	test('of a repaired system: its faults are gone, and what was touched is to be tested again', () => {
		const [before, now] = [contentOf(ridgePostBefore()), contentOf(ridgePostAfter())];
		const changes = compareContents(before, now);
		const { appeared, gone, retest } = consequencesOf(before, now, changes);
		expect(gone.filter(({ severity }) => severity === 'error').length).toBeGreaterThan(3);
		expect(appeared.filter(({ severity }) => severity === 'error')).toEqual([]);
		expect(retest.conductors.length).toBeGreaterThan(0);
		expect(retest.studs.length).toBeGreaterThan(0);
	});

	test('figures that moved by more than 5 %: Ohm’s law on a thinner wire', () => {
		const now = contentOf(after(editConductors({ conductors: ['W3'], set: { gauge: { system: 'awg', size: '14' } } })));
		const { moved } = consequencesOf(contentOf(drawn), now, []);
		const drop = moved.find(({ conductor, figure }) => conductor === 'W3' && figure === 'dropV')!;
		// ASTM B258: two numbers thinner, 92^(4/39) = 1.59 times the resistance; the lugs stay.
		expect(drop.after / drop.before).toBeGreaterThan(1.5);
		expect(drop.after / drop.before).toBeLessThan(1.6);
		expect(moved.some(({ conductor, figure }) => conductor === 'W3' && figure === 'continuousA')).toBe(false);
	});
});

test('the studs of a part that was taken out are not to be tightened', () => {
	const changes = compared(removeItems({ parts: ['l'] }));
	expect(changes.filter(({ subject }) => subject.kind === 'stud' && subject.id.startsWith('l.')).map(({ how }) => how)).toEqual([
		'removed',
		'removed'
	]);
	expect(retestOf(changes).studs).toEqual(['d.2', 'n.2']);
});
