/**
 * An explanation cannot lie: its formula, worked out by a general-purpose library (mathjs) from the inputs it shows,
 * gives the figure of the check; and inputs that open in turn are explained by figures of the same value.
 */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { resistanceAtC } from '#core/conductors';
import type { Diagram } from '#core/diagram';
import { CONDUCTOR_FIGURES, explain, JOINT_FIGURES, type FigureId } from '#core/explain';
import { buildStudy, stackCurrents } from '#core/rules';
import { jointsIn, jointsOf } from '#core/studs';
import { circuit } from '../../support/circuit.ts';
import { example } from '../../support/examples/figures.ts';
import { holds, holdsThroughout, near } from '../../support/explained.ts';

const names = ['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]);

describe.each(names)('%s', (name) => {
	const diagram = example(name);
	const study = buildStudy(diagram);
	const check = checkDiagram(diagram);

	test('figures of every conductor are those of the check, and follow from their inputs', () => {
		for (const { id } of study.conductors) {
			const figures = check.conductors[id]!;
			const shown: Record<(typeof CONDUCTOR_FIGURES)[number], number> = {
				amperage: figures.ampacityA,
				'worst-current': figures.continuousA,
				loading: figures.continuousA === 0 ? 0 : (100 * figures.continuousA) / figures.ampacityA,
				'surge-current': figures.surgeA,
				resistance: study.conductor(id).branch.resistanceOhm,
				'volts-lost': figures.dropV,
				'drop-percent': (100 * figures.dropV) / diagram.system.nominalV,
				'let-through': figures.letThroughA,
				'let-through-from': figures.ends.from.letThroughA,
				'let-through-to': figures.ends.to.letThroughA,
				'greatest-device': figures.greatestDeviceA,
				'working-temperature': figures.workingC,
				'hot-resistance': resistanceAtC(study.conductor(id).conductor, figures.lengthM, figures.workingC),
				'hot-volts': figures.hotDropV,
				'fault-current': figures.faultA ?? 0
			};
			for (const figure of CONDUCTOR_FIGURES) {
				const found = explain(study, { of: 'conductor', id, figure })!;
				expect(found.value, `${id} ${figure}`).toBe(shown[figure]);
				holds(found);
				for (const own of found.inputs) if (own.figure) near(explain(study, own.figure)!.value!, own.value, own.name);
			}
		}
	});

	test('volts and fault current of every stud too', () => {
		for (const [caseId, volts] of Object.entries(check.studV))
			for (const [key, shown] of Object.entries(volts)) {
				const found = explain(study, { of: 'stud', key, figure: 'volts', caseId })!;
				expect(found.value).toBe(shown);
				holds(found);
			}
		for (const [key, shown] of Object.entries(check.studFaultA)) {
			const found = explain(study, { of: 'stud', key, figure: 'fault-current' })!;
			expect(found.value).toBe(shown);
			holds(found);
		}
	});

	test('joints on every stud: amps, ohms, volts and watts, in the hottest case and in each', () => {
		let opened = 0;
		for (const stack of study.stacks) {
			const { key } = stack;
			const currents = stackCurrents(study, stack);
			for (const caseId of [null, ...currents.byCase.map((values) => values.caseId)]) {
				const joints = caseId === null ? jointsOf(stack, currents) : jointsIn(stack, currents, caseId);
				for (const { above, currentA, resistanceOhm, dropV, heatW } of joints) {
					const shown = { current: currentA, resistance: resistanceOhm, volts: dropV, heat: heatW };
					for (const figure of JOINT_FIGURES) {
						const found = explain(study, { of: 'joint', key, above, figure, caseId })!;
						expect(found.value, `${key} ${above} ${figure}`).toBe(shown[figure]);
						holdsThroughout(study, found, 1);
						opened++;
					}
				}
				if (joints.length > 0) holds(explain(study, { of: 'joints', key, caseId })!);
			}
		}
		expect(opened).toBeGreaterThan(100);
	});

	test('findings show their figures, and what they are about can be opened', () => {
		for (const finding of check.findings) {
			const found = explain(study, { of: 'finding', finding })!;
			expect(found.inputs.map(({ value }) => value)).toEqual(Object.values(finding.numbers));
			expect(found).toMatchObject({ value: null, text: finding.message, source: finding.source });
			for (const { figure, name } of found.related) expect(explain(study, figure)?.name, JSON.stringify(figure)).toBe(name);
			for (const own of found.inputs) if (own.figure) near(explain(study, own.figure)!.value!, own.value, `${finding.key} ${own.name}`);
		}
	});
});

describe('what is written', () => {
	// 4 AWG at 75 °C, 125 A by 33 CFR 183.425 Table 5, × 0.75 in an engine space of 50 °C.
	const diagram = circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA: 100 }], l: ['load', { draw: 40 }] },
		[
			['b.pos', 'f.in', { gauge: '4', lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge: '4', insulationC: 75, environment: 'engine-space', lengthM: null }],
			['l.neg', 'b.neg', { gauge: '16 mm²', lengthM: 2 }]
		],
		{ profile: 'us-small-craft' }
	);
	const of = (id: string, figure: (typeof CONDUCTOR_FIGURES)[number]) => explain(diagram, { of: 'conductor', id, figure })!;

	test('amperage: table, row, factor and source', () => {
		expect(of('W2', 'amperage')).toMatchObject({
			formula: 'Z = T × k1',
			substituted: '125 A × 0.75 = 93.8 A',
			row: '4 AWG, 75 °C insulation',
			text: '93.8 A'
		});
		expect(of('W2', 'amperage').table).toContain('183.425 Table 5');
	});
	test('volts lost: resistivity, area and joints; an assumed length says so', () => {
		const found = of('W2', 'volts-lost');
		expect(found.formula).toBe('U = I × (rho × L ÷ A + 2 × Rj)');
		expect(found.inputs.find(({ symbol }) => symbol === 'L')).toMatchObject({ origin: 'assumed', value: 1 });
		expect(found.isAssumed).toBe(true);
		// 40 A × (0.01787 ÷ 21.15 mm² + 2 × 0.04 mΩ) = 37 mV
		expect(found.value!).toBeCloseTo(0.037, 4);
	});
	test('metric sizes go by the resistance IEC 60228 allows', () => {
		expect(of('W3', 'resistance').formula).toBe('R = r × rho ÷ rho20 × L + 2 × Rj');
		expect(of('W3', 'resistance').isAssumed).toBe(false);
	});
	test('let-through: the fuse, or why there is none', () => {
		expect(of('W2', 'let-through')).toMatchObject({ formula: 'L = F1', substituted: '100 A = 100 A' });
		expect(of('W1', 'let-through')).toMatchObject({ value: Infinity, text: 'unlimited' });
		expect(of('W1', 'let-through').words).toContain('Nothing limits what reaches it');
	});
	test('working temperature: 50 °C + 25 K × (40 A ÷ 93.75 A)²', () => {
		expect(of('W2', 'working-temperature').value!).toBeCloseTo(50 + 25 * (40 / 93.75) ** 2, 6);
	});
	test('the case it is about', () => {
		expect(of('W2', 'worst-current').caseName).toBe('on');
	});
	test('a figure that does not exist is null', () => {
		const asks: FigureId[] = [
			{ of: 'conductor', id: 'none', figure: 'amperage' },
			{ of: 'stud', key: 'x.pos', figure: 'fault-current' },
			{ of: 'stud', key: 'b.pos', figure: 'volts', caseId: 'none' }
		];
		for (const figure of asks) expect(explain(diagram, figure)).toBeNull();
	});
});

test('a battery nearly empty, one disconnected and an open switch: volts follow from what is on', () => {
	const base = circuit(
		{ b: ['battery'], c: ['battery'], s: ['battery-disconnect'], l: ['load', { draw: 10 }] },
		[
			['b.pos', 's.in'],
			['s.out', 'l.pos'],
			['l.neg', 'b.neg'],
			['c.pos', 'l.pos'],
			['c.neg', 'l.neg']
		],
		{ cases: { on: {}, low: { battery: 'low' }, lost: { levels: { b: 0 } }, open: { levels: { s: 0 } } } }
	) satisfies Diagram;
	const { studV } = checkDiagram(base);
	for (const [caseId, volts] of Object.entries(studV))
		for (const key of Object.keys(volts)) holds(explain(base, { of: 'stud', key, figure: 'volts', caseId })!);
	expect(
		explain(base, { of: 'stud', key: 'b.pos', figure: 'volts', caseId: 'low' })!.inputs.find(({ symbol }) => symbol === 'Eb')!.value
	).toBe(12);
});
