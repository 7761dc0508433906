/** States of an operating case: batteries nearly empty, loads that start. */
import { describe, expect, test } from 'vitest';
import { suggestedCases } from '#core/check';
import { addCase, change, emptyDiagram, type OperatingCase } from '#core/diagram';
import { buildStudy } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

/** Amps of a constant-power load behind a resistance: the larger root of V = E − R·P/V. */
const closedForm = (emfV: number, ohm: number, watts: number): number => watts / ((emfV + Math.sqrt(emfV ** 2 - 4 * ohm * watts)) / 2);

const wires = (load: string, cases: Record<string, Partial<OperatingCase>>, params = {}) =>
	circuit(
		{
			b: ['battery', { emfV: 12.8, lowEmfV: 11, resistanceMilliohm: 10 }],
			l: [load, params]
		},
		[
			['b.pos', 'l.pos', { lengthM: 2, gauge: '10' }],
			['l.neg', 'b.neg', { lengthM: 2, gauge: '10' }]
		],
		{ cases }
	);

describe('batteries nearly empty', () => {
	const diagram = wires('load', { rest: {}, low: { battery: 'low' } }, { drawAs: 'power', draw: 300 });
	const study = buildStudy(diagram);
	const ohm = 0.01 + study.conductors.reduce((sum, { branch }) => sum + branch.resistanceOhm, 0);

	test('make a load of constant power draw more (V = (E + √(E² − 4RP)) / 2)', () => {
		const [rest, low] = study.cases.map(({ point }) => point);
		expect(rest!.loadA[0]).toBeCloseTo(closedForm(12.8, ohm, 300), 8);
		expect(low!.loadA[0]).toBeCloseTo(closedForm(11, ohm, 300), 8);
		expect(low!.loadA[0]!).toBeGreaterThan(rest!.loadA[0]! * 1.15);
		expect(low!.residualA).toBeLessThan(1e-9);
	});

	test('the closed form is right: 600 W behind 20 mΩ at 12.8 V is 50.927519 A', () => {
		expect(closedForm(12.8, 0.02, 600)).toBeCloseTo(50.927519, 6);
	});

	test('are the worst case of the conductors then', () => {
		for (const { continuous } of study.conductors) expect(continuous.caseId).toBe('low');
	});

	test('stand at the voltage of their chemistry where none is given', () => {
		const volts = (params: Record<string, string | number>) =>
			buildStudy(circuit({ b: ['battery', params] }, [], { cases: { low: { battery: 'low' } } })).network.batteries[0]!.lowEmfV;
		expect(volts({})).toBe(12);
		expect(volts({ chemistry: 'lead-acid', nominalV: 24 })).toBeCloseTo(23.6, 9);
	});
});

describe('loads that start', () => {
	const cases = {
		on: {},
		together: { duration: 'surge' as const },
		named: { duration: 'surge' as const, starting: { x: true as const } },
		longer: { starting: { l: true as const } }
	};
	const amps = (load: string, params: Record<string, string | number>) =>
		buildStudy(wires(load, cases, params)).cases.map(({ point }) => point.loadA[0]!);

	test('draw their starting current in a surge case that names them or nobody, and only there', () => {
		const [on, together, named, longer] = amps('load', { draw: 5, startTimes: 2.4 });
		expect(on).toBeCloseTo(5, 9);
		expect(together).toBeCloseTo(12, 9);
		expect(named).toBeCloseTo(5, 9);
		expect(longer).toBeCloseTo(5, 9);
	});

	test('draw no more than rated where no start is given', () => {
		expect(amps('load', { draw: 5 })[1]).toBeCloseTo(5, 9);
	});

	test('are inverters too: their surge output over their efficiency', () => {
		const study = buildStudy(wires('inverter', cases, { watts: 300, surgeW: 600, efficiency: 0.9 }));
		const watts = study.cases.map(({ point }) => point.loadA[0]! * point.loadV[0]!);
		expect(watts[0]).toBeCloseTo(300 / 0.9, 6);
		expect(watts[1]).toBeCloseTo(600 / 0.9, 6);
	});

	test('are left out of continuous currents', () => {
		const study = buildStudy(wires('load', cases, { draw: 5, startTimes: 2.4 }));
		expect(study.conductors[0]!.continuous.currentA).toBeCloseTo(5, 9);
		expect(study.conductors[0]!.surge).toEqual({ currentA: expect.closeTo(12, 6) as number, caseId: 'together' });
	});
});

describe('suggested cases', () => {
	const parts = circuit({
		b: ['battery'],
		m: ['starter-motor'],
		i: ['inverter', { surgeW: 4000 }],
		f: ['load', { draw: 5, startTimes: 3 }],
		c: ['mains-charger']
	}).parts;

	test('of a new diagram are what its two cases leave out', () => {
		const diagram = { ...emptyDiagram(), parts };
		const suggested = suggestedCases(diagram);
		expect(suggested.map(({ id }) => id)).toEqual(['nearly-empty', 'start-i', 'crank-m']);
		expect(suggested[0]!.case).toMatchObject({ battery: 'low', levels: { m: 0 }, duration: 'continuous', order: 3 });
		expect(suggested[1]!.case).toMatchObject({ starting: { i: true }, levels: { m: 0 }, duration: 'surge', order: 4 });
		expect(suggested[2]!.case).toMatchObject({ loads: 0, levels: { m: 1 }, duration: 'surge' });
	});

	test('can all be added, and then none is left', () => {
		let diagram = { ...emptyDiagram(), parts };
		for (const { id, case: added } of suggestedCases(diagram)) {
			const command = addCase({ id, case: added });
			expect(command.refuse(diagram)).toBeNull();
			diagram = change(diagram, command).diagram;
		}
		expect(suggestedCases(diagram)).toEqual([]);
	});

	test('of an empty drawing are none', () => {
		expect(suggestedCases(emptyDiagram())).toEqual([]);
	});
});
