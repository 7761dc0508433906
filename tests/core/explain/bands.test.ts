/** Legends of lenses, shorts and meter readings open as all figures do; formulas are worked out again with mathjs. */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { explain, LENSES, lensValues, type BandIndex, type FigureId } from '#core/explain';
import { buildStudy } from '#core/rules';
import { circuit } from '../../support/circuit.ts';
import { example } from '../../support/examples/figures.ts';
import { holds, near } from '../../support/explained.ts';

const BANDS: readonly BandIndex[] = [0, 1, 2, 3, 4];

describe.each(['otters-reach-before', 'skarv-fell-after'])('%s', (name) => {
	const diagram = example(name);
	const study = buildStudy(diagram);
	const check = checkDiagram(diagram);

	test.each(LENSES)('bands of %s: as in the legend, with as many conductors as are coloured so', (lens) => {
		const view = lensValues(diagram, check, lens);
		for (const band of BANDS) {
			const own = view.legend.find((each) => each.band === band);
			const found = explain(study, { of: 'band', lens, band });
			if (!own) {
				expect(found).toBeNull();
				continue;
			}
			expect(found!.value).toBe(Object.values(view.conductors).filter((value) => value?.band === band).length);
			if (lens === 'polarity') continue;
			expect(found!.inputs.map(({ symbol }) => symbol)).toEqual([...(band > 0 ? ['from'] : []), ...(band < 4 ? ['to'] : [])]);
			for (const { symbol, value, figure } of found!.inputs) {
				expect(value).toBe(symbol === 'from' ? own.from : own.to);
				const limit = explain(study, figure!)!;
				expect(limit.value).toBe(value);
				holds(limit);
			}
			expect(found!.related.length).toBe(Math.min(24, found!.value!));
			for (const { figure } of found!.related) expect(explain(study, figure)).not.toBeNull();
		}
	});
});

test('limits are those of the standards they name', () => {
	const study = buildStudy(circuit({ b: ['battery', { nominalV: 48 }] }, [], { nominalV: 48 }));
	const limit = (lens: 'volts-lost' | 'fault-current', index: 0 | 1 | 2 | 3) => explain(study, { of: 'band-limit', lens, limit: index })!;
	// ABYC E-11: 3 % of 48 V are 1.44 V.
	expect(limit('volts-lost', 2)).toMatchObject({ value: 1440, unit: 'mV', source: 'ABYC E-11: 3 % for critical circuits' });
	// ISO 8820-3 and -5: 1000 A and 2000 A at 32 V.
	expect([0, 1, 2, 3].map((index) => limit('fault-current', index as 0).value)).toEqual([500, 1000, 2000, 5000]);
});

describe('a short that was dropped', () => {
	// 12 V behind 10 mΩ; 2 m of 6 AWG there and 1 m back.
	const study = buildStudy(
		circuit({ b: ['battery', { faultEmfV: 12, faultResistanceMilliohm: 10 }], l: ['load'] }, [
			['b.pos', 'l.pos', { lengthM: 2 }],
			['l.neg', 'b.neg']
		])
	);
	const short = (shortOhm: number): FigureId => ({ of: 'short', at: 'l.pos', to: 'l.neg', shortOhm, condition: 'greatest' });

	test('is volts over the resistance of what feeds it and of its own', () => {
		const found = explain(study, short(0.05))!;
		holds(found);
		// ASTM B258: 6 AWG 13.30 mm²; annealed copper at 20 °C 0.017241 Ω·mm²/m; four joints of 0.04 mΩ.
		expect(found.value!).toBeCloseTo(12 / (0.01 + (3 * 0.017241) / 13.3 + 4 * 0.00004 + 0.05), 2);
	});
	test('without resistance of its own is the fault current of the stud', () => {
		expect(explain(study, short(0))!.value).toBe(explain(study, { of: 'stud', key: 'l.pos', figure: 'fault-current' })!.value);
	});
	test('where nothing is, does not exist', () => {
		expect(explain(study, { of: 'short', at: 'x.y', to: 'l.neg', shortOhm: 0, condition: 'least' })).toBeNull();
	});
});

describe('a reading', () => {
	const study = buildStudy(
		circuit({ b: ['battery'], l: ['load', { draw: 20 }] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		])
	);
	const between = (readV: number | null): FigureId => ({ of: 'between', at: 'l.pos', to: 'b.neg', caseId: 'on', readV });

	test('is compared with the difference of two studs, each of which opens', () => {
		const model = explain(study, between(null))!;
		holds(model);
		const difference = explain(study, between(12))!;
		holds(difference);
		near(difference.value!, 12 - model.value!, 'reading less model');
		for (const { figure, value } of model.inputs) near(explain(study, figure!)!.value!, value, 'stud');
	});
	test('has no model in a case that is not there', () => {
		expect(explain(study, { of: 'between', at: 'l.pos', to: 'b.neg', caseId: 'none', readV: null })).toBeNull();
	});
});
