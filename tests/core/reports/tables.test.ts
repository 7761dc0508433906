/**
 * The invented systems' tables against figures worked out by hand: 13.2 V and 5 mΩ a lithium battery, 12.6 V lead-acid,
 * fuse 0.08 V ÷ rating, 0.01787 Ω·mm²/m over ASTM B258 areas, lugs 0.04 mΩ from 6 AWG and 0.20 mΩ below. Common
 * practice, no source; amperages are 33 CFR 183.425 Table 5.
 */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import type { TakenReading } from '#core/diagram';
import { cutList, conductorSchedule, reportInput, sectionsOf, type SectionId, type Table } from '#core/reports';
import { example, near, nearFault } from '../../support/examples/figures.ts';
import { allText, rowOf } from '../../support/report-table.ts';

const EXAMPLES = ['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]);

const inputs = new Map(EXAMPLES.map((name) => [name, reportInput(example(name))]));
const inputOf = (name: string) => inputs.get(name)!;

function tableOf(name: string, section: SectionId, id: string): Table {
	const found = sectionsOf(inputOf(name), [section])[0]!.tables.find((table) => table.id === id);
	if (!found) throw new Error(`${section} has no table ${id}.`);
	return found;
}

describe('conductor schedule', () => {
	const table = tableOf('ridge-post-after', 'conductors', 'conductor-schedule');
	test('the radio on 6 AWG: 25 A of 120 A, 4 m, 40 A fuse, 0.136 V each way', () => {
		expect(rowOf(table, 'C3+')).toMatchObject({
			from: 'D position 3',
			to: 'RAD +',
			pole: 'positive',
			colour: 'red',
			gauge: '6 AWG',
			length: 4,
			amperage: 120,
			protectedBy: 'D position 3 40 A',
			letThrough: 40
		});
		// 25 A × (4.0 m × 1.344 mΩ/m + 2 × 0.04 mΩ) = 0.1364 V = 1.14 % of 12 V
		near(rowOf(table, 'C3+').drop as number, 0.1364, 1);
		near(rowOf(table, 'C3+').dropPercent as number, 1.137, 1);
	});
	test('the main conductor carries 255 A by both string fuses, 450 A let-through', () => {
		near(rowOf(table, 'W3').continuous as number, 255.4);
		expect(rowOf(table, 'W3').letThrough).toBe(450);
		expect(rowOf(table, 'W3').protectedBy).toBe('FB1 225 A and FB2 225 A');
	});
	test('ends say how high in the stack they lie', () => {
		expect(rowOf(table, 'C6−').to).toBe('NB stud 6, 2nd from the seat');
		expect(rowOf(table, 'C5−').to).toBe('NB stud 6, lowest from the seat');
	});
	test('the bond has its own colour', () => expect(rowOf(table, 'G1').colour).toBe('green and yellow'));
	test.each(EXAMPLES)('%s: its figures are those of the check the window shows', (name) => {
		const { diagram } = inputOf(name);
		const { conductors } = checkDiagram(diagram);
		const { rows } = conductorSchedule(inputOf(name));
		expect(rows).toHaveLength(Object.keys(diagram.conductors).length);
		const shown = rows.map(({ cells }) => [cells.amperage, cells.continuous, cells.surge, cells.drop]);
		const checked = Object.values(conductors).map((f) => [f.ampacityA, f.continuousA, f.surgeA, f.dropV]);
		expect(new Set(shown.map(String))).toEqual(new Set(checked.map(String)));
	});
});

describe('cut list', () => {
	test('a battery lead of 0.45 m: 30 mm more, lugs for M8 and M10', () => {
		expect(rowOf(cutList(inputOf('ridge-post-after')), 'W1+')).toMatchObject({
			cut: 480,
			fittingFrom: '2/0 AWG lug, M8 hole',
			fittingTo: '2/0 AWG lug, M10 hole'
		});
	});
	test('a branch of 2.5 m from a panel: 10 % and 100 mm more, ferrules in its clamps', () => {
		expect(rowOf(cutList(inputOf('ridge-post-after')), 'P7+')).toMatchObject({
			cut: 2850,
			fittingFrom: '12 AWG ferrule',
			heatShrink: 'none'
		});
	});
});

describe('fuse schedule', () => {
	const table = tableOf('ridge-post-after', 'fuses', 'fuse-schedule');
	test('the inverter’s fuse: 184.4 A of 250 A, 7.46 kA before it, 4.63 kA at the far end, 10 to 105 ms', () => {
		const row = rowOf(table, 'D position 1');
		expect(row).toMatchObject({ serves: 'INV', rating: 250, breaking: 2, volts: 32, smallest: '2/0 AWG, C1+', spares: 1 });
		near(row.load as number, 184.4);
		nearFault((row.prospective as number) * 1000, 7460);
		const [, kiloA] = /^([\d.]+) kA at INV \+$/.exec(row.farthest as string)!;
		nearFault(Number(kiloA) * 1000, 4630);
		const [, earliest, latest] = /^([\d.]+) to ([\d.]+) ms$/.exec(row.opens as string)!;
		// Times go with the square of a current that is itself within 10 %.
		near(Number(earliest), 10.5, 20);
		near(Number(latest), 105, 20);
	});
	test('the radio’s fuse: 923 A at the far end, 7 to 68 ms', () => {
		const row = rowOf(table, 'D position 3');
		nearFault(Number(/^(\d+) A/.exec(row.farthest as string)![1]), 923);
		near(Number(/to ([\d.]+) ms$/.exec(row.opens as string)![1]), 68, 20);
	});
	test('reading lamp tails behind 40 A: 123 A opens within 0.4 to 6.4 s', () => {
		const rows = tableOf('pagemoor-before', 'fuses', 'fuse-schedule').rows.map(({ cells }) => cells);
		const row =
			rows.find(({ rating, serves }) => rating === 40 && String(serves).includes('LAMP')) ??
			rows.find(({ smallest }) => String(smallest).startsWith('18 AWG'))!;
		nearFault(Number(/^([\d.]+) A/.exec(row.farthest as string)![1]), 123);
	});
	test('every fuse and breaker of the network has a row', () => {
		for (const name of EXAMPLES) {
			const { study } = inputOf(name);
			expect(tableOf(name, 'fuses', 'fuse-schedule').rows).toHaveLength(study.network.branches.filter(({ device }) => device).length);
		}
	});
});

describe('stud schedule', () => {
	test('three lugs on an M10 link post: 4.8 + 3.8 + 3.8 + 2.0 + 2.2 mm under the nut, 30 mm less that and an 8.4 mm nut left', () => {
		const row = rowOf(tableOf('ridge-post-after', 'studs', 'stud-schedule'), 'LP stud');
		expect(row).toMatchObject({ thread: 'M10', usable: 30, count: 3, torque: '14 to 20 N·m (124 to 177 lbf·in)' });
		expect(row.height).toBeCloseTo(16.6, 9);
		expect(row.left).toBeCloseTo(5, 9);
		expect(row.stack).toMatch(
			/^M10 stud, from the seat: 4\/0 AWG lug of W3; 2\/0 AWG lug of W1\+; 2\/0 AWG lug of W2\+; washer; lock washer; nut/
		);
		// Everything the batteries give passes the lowest face.
		near(row.current as number, 255.4);
	});
	test('the torque says where it comes from', () =>
		expect(tableOf('ridge-post-after', 'studs', 'stud-schedule').notes.join(' ')).toMatch(/Torque: common practice, no source/));
	test.each(EXAMPLES)('%s: sentences are those of the check', (name) => {
		const { check } = inputOf(name);
		const sentences = tableOf(name, 'studs', 'stud-schedule').rows.map(({ cells }) => cells.stack);
		expect(sentences.length).toBeGreaterThan(10);
		for (const sentence of sentences) expect(Object.values(check.stacks)).toContain(sentence);
	});
});

describe('operating cases', () => {
	test('at peak 255.4 A, 127.7 A from each battery', () => {
		const row = rowOf(tableOf('ridge-post-after', 'cases', 'case-table'), 'Peak, no charging');
		near(row.bank as number, 255.4);
		expect(row.batteries).toMatch(/^B1 12[78]\.\d A, B2 12[78]\.\d A$/);
		// 255.4 A of 445 A in 4/0 AWG; 20 A of 25 A.
		near(row.conductorPercent as number, (255.4 / 445) * 100);
		expect(row.fusePercent).toBeCloseTo(80, 6);
	});
	test('the library at peak, two strings of two: 187.8 A, the same through both blocks of a string', () => {
		const row = rowOf(tableOf('pagemoor-after', 'cases', 'case-table'), 'Lift, inverter and all else on');
		near(row.bank as number, 187.8);
	});
});

describe('energy', () => {
	test('a day of the trailer by hand: 409 Ah used, 320 Ah usable, 0.8 days from the bank alone', () => {
		const [loads, , totals] = sectionsOf(inputOf('ridge-post-after'), ['energy'])[0]!.tables;
		// 1.5 A all day
		expect(rowOf(loads!, 'ROUTER')).toMatchObject({ hours: 24 });
		expect(rowOf(loads!, 'ROUTER').ah).toBeCloseTo(36, 9);
		near(rowOf(totals!, 'Used').ah as number, 409);
		expect(rowOf(totals!, 'Usable share of the bank').ah).toBeCloseTo(320, 9);
		expect(rowOf(totals!, 'Bank alone, from full').days).toBeCloseTo(0.8, 1);
	});
	test('a load without hours is said to be missing, and not counted', () => {
		const diagram = example('ridge-post-after');
		const fridge = diagram.parts.FRIDGE!;
		const input = reportInput({
			...diagram,
			parts: { ...diagram.parts, FRIDGE: { ...fridge, params: { ...fridge.params, hoursPerDay: null } } }
		});
		const [loads, , totals] = sectionsOf(input, ['energy'])[0]!.tables;
		expect(rowOf(loads!, 'FRIDGE')).toMatchObject({ hours: 'not given', wh: null });
		expect(totals!.notes.join(' ')).toContain('hours a day of FRIDGE');
	});
});

describe('bill of materials', () => {
	const rows = tableOf('ridge-post-after', 'materials', 'bill-of-materials').rows.map(({ cells }) => cells);
	const item = (name: string) => rows.find(({ item }) => item === name)!;
	test('4/0 AWG red: 0.43 m and 0.53 m cut, 5 % for the reel, up to the next decimetre', () => {
		expect(item('Cable 4/0 AWG, red')).toMatchObject({ quantity: 1.1, unit: 'm', used: 'W3, W4' });
	});
	test('lugs by gauge and hole; fuses with spares', () => {
		expect(item('4/0 AWG lug, M10 hole').quantity).toBe(6);
		expect(item('Strip fuse SF51 250 A').quantity).toBe(2);
		expect(item('Blade fuse, regular 15 A')).toMatchObject({ quantity: 4, used: 'PAN way 7, PAN way 12, spare' });
	});
	test('as many lugs, rings and ferrules as conductors have ends', () => {
		const fittings = tableOf('ridge-post-after', 'materials', 'bill-of-materials').rows.filter(({ group }) => group?.startsWith('Lugs'));
		expect(fittings.reduce((sum, { cells }) => sum + (cells.quantity as number), 0)).toBe(66);
		const matrix = tableOf('ridge-post-after', 'materials', 'lug-matrix');
		const counted = matrix.rows.flatMap(({ cells }) => Object.values(cells)).filter((cell) => typeof cell === 'number');
		expect(counted.reduce((sum, n) => sum + n, 0)).toBe(66);
	});
});

describe('labels', () => {
	test('two for each conductor, with size and fuse', () => {
		const { rows } = tableOf('ridge-post-after', 'labels', 'conductor-labels');
		expect(rows).toHaveLength(66);
		expect(rows[0]!.cells).toEqual({
			text: 'C1+',
			detail: 'D position 1 → INV +',
			small: '2/0 AWG · D position 1 250 A',
			place: 'D position 1'
		});
	});
	test('a second source is warned of', () => {
		expect(tableOf('ridge-post-after', 'labels', 'warning-labels').rows.map(({ cells }) => cells.text)).toContain('More than one source');
	});
});

describe('findings', () => {
	test.each(EXAMPLES)('%s: every finding of the check, open ones first, and all that was not checked or was assumed', (name) => {
		const { check } = inputOf(name);
		const [findings, notChecked, assumed] = sectionsOf(inputOf(name), ['findings'])[0]!.tables;
		expect(findings!.rows.map(({ cells }) => cells.what).sort()).toEqual(check.findings.map(({ message }) => message).sort());
		expect(notChecked!.rows.map(({ cells }) => cells.text)).toEqual(check.notChecked);
		expect(assumed!.rows.map(({ cells }) => cells.text)).toEqual(check.assumptions);
	});
	test('an accepted finding says who, when and why, and stands below the open ones', () => {
		const diagram = example('ridge-post-after');
		const { findings } = checkDiagram(diagram);
		const { key, severity, subjects, numbers } = findings.find((finding) => finding.severity === 'warning')!;
		const fingerprint = { severity, subjects: subjects.map(({ kind, id }) => `${kind}:${id}`), numbers: { ...numbers } };
		const waiver = { by: 'A. Builder', date: '2026-05-01', reason: 'Enclosed in a box.', fingerprint };
		const rows = sectionsOf(reportInput({ ...diagram, waivers: { [key]: waiver } }), ['findings'])[0]!.tables[0]!.rows;
		expect(rows.at(-1)).toMatchObject({ group: 'Accepted', cells: { status: 'accepted by A. Builder, 2026-05-01: Enclosed in a box.' } });
	});
});

describe('commissioning sheet', () => {
	const table = tableOf('ridge-post-after', 'tests', 'readings');
	const reading = (what: string, at: string) =>
		table.rows.map(({ cells }) => cells).find((cells) => cells.what === what && String(cells.at).startsWith(at))!;
	test('inverter 12.05 V, radio 11.93 V, each battery 127.7 A', () => {
		near(reading('Volts at its terminals', 'INV').model as number, 12.05, 1);
		near(reading('Volts at its terminals', 'RAD').model as number, 11.93, 1);
		near(reading('Current delivered', 'B1').model as number, 127.7);
	});
	test('over the shunt 255.4 A × 0.10 mΩ = 25.5 mV, from 20 to 31 mV', () => {
		const row = reading('Over the shunt', 'SH');
		near(row.model as number, 25.54);
		near(row.least as number, 20.4);
		near(row.greatest as number, 30.6);
		expect(row.unit).toBe('mV');
	});
	test('every reading is blank', () => {
		expect(table.columns.at(-1)!.byHand).toBe(true);
		expect(table.rows.every(({ cells }) => cells.reading === null)).toBe(true);
	});
});

describe('readings kept with the drawing', () => {
	const at = (part: string, terminal: string) => ({ part, terminal });
	const [caseId] = Object.entries(example('ridge-post-after').cases).find(([, { label }]) => label === 'Peak, no charging')!;
	const kept = (more: Pick<TakenReading, 'at' | 'to'> & Partial<TakenReading>): TakenReading => ({
		case: caseId,
		order: 0,
		volts: null,
		date: null,
		by: '',
		...more
	});

	test('none are in the packet where none were planned', () =>
		expect(sectionsOf(inputOf('ridge-post-after'), ['tests'])[0]!.tables.map(({ id }) => id)).not.toContain('kept-readings'));
	test('over the shunt: 25.5 mV by the model (255.4 A × 0.10 mΩ), 30 mV read, 4.5 mV more; one planned is blank', () => {
		const diagram = {
			...example('ridge-post-after'),
			readings: {
				r1: kept({ at: at('SH', 'system'), to: at('SH', 'battery'), volts: 0.03, date: '2026-05-02', by: 'Ada' }),
				r2: kept({ at: at('B1', 'pos'), to: at('B1', 'neg'), order: 1 })
			}
		};
		const table = sectionsOf(reportInput(diagram), ['tests'])[0]!.tables.find(({ id }) => id === 'kept-readings')!;
		const [shunt, battery] = table.rows;
		expect(shunt!.group).toBe('In the case “Peak, no charging”');
		near(shunt!.cells.model as number, 0.0255);
		expect(shunt!.cells.difference).toBeCloseTo(30 - 1000 * (shunt!.cells.model as number), 9);
		expect(shunt!.cells.taken).toBe('Ada, 2026-05-02');
		expect(battery!.cells).toMatchObject({ reading: null, difference: null, taken: '' });
		expect(battery!.cells.model).toBeGreaterThan(11);
	});
});

describe.each(EXAMPLES)('all tables of %s', (name) => {
	const sections = sectionsOf(inputOf(name));
	test('have a cell for every column, and say nothing undefined', () => {
		for (const table of sections.flatMap(({ tables }) => tables)) {
			const ids = table.columns.map(({ id }) => id);
			expect(new Set(ids).size).toBe(ids.length);
			for (const { cells } of table.rows) expect(Object.keys(cells).sort()).toEqual([...ids].sort());
			expect(allText(table)).not.toMatch(/undefined|NaN|\[object|null V/);
		}
	});
	test('survive being sent from a worker', () => expect(structuredClone(sections)).toEqual(sections));
	test('never claim what nobody can', () => {
		for (const table of sections.flatMap(({ tables }) => tables))
			expect(allText(table)).not.toMatch(/compliant|certified|approved(?! by)/i);
	});
});

test('an empty diagram has tables that say so', () => {
	const diagram = { ...example('ridge-post-after'), parts: {}, conductors: {}, mounts: {}, stacks: {}, cases: {}, waivers: {} };
	const sections = sectionsOf(reportInput(diagram));
	for (const table of sections.flatMap(({ tables }) => tables)) {
		if (table.rows.length === 0) expect(table.whenEmpty, table.id).not.toBe('');
	}
});
