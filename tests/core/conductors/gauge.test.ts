import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	areaMm2,
	awgWithin,
	cableDiameterMm,
	compareGauges,
	gaugesOf,
	gaugeText,
	jointOhm,
	lugOf,
	nextGaugeUp,
	resistanceBreakdown,
	resistanceOhm,
	thinnestGauge
} from '#core/conductors';
import { AWG_SIZES, type Gauge } from '#core/diagram';

const awg = (size: (typeof AWG_SIZES)[number]): Gauge => ({ system: 'awg', size });
const iec = (size: Extract<Gauge, { system: 'iec' }>['size']): Gauge => ({ system: 'iec', size });

test('sizes are written as the trade writes them', () => {
	expect([awg('4/0'), awg('18'), iec('35'), iec('0.75')].map(gaugeText)).toEqual(['4/0 AWG', '18 AWG', '35 mm²', '0.75 mm²']);
});

test('sizes run from thin to thick and compare across systems', () => {
	for (const system of ['awg', 'iec'] as const) {
		const areas = gaugesOf(system).map(areaMm2);
		expect(areas).toEqual([...areas].sort((a, b) => a - b));
	}
	expect(compareGauges(iec('35'), awg('2'))).toBeGreaterThan(0);
	expect(compareGauges(iec('35'), awg('1'))).toBeLessThan(0);
});

test('the next size up', () => {
	expect(nextGaugeUp(awg('1'))).toEqual(awg('1/0'));
	expect(nextGaugeUp(iec('1.5'))).toEqual(iec('2.5'));
	expect(nextGaugeUp(awg('4/0'))).toBeNull();
	expect(nextGaugeUp(iec('120'))).toBeNull();
	expect(thinnestGauge(awg('10'), (g) => areaMm2(g) >= 20)).toEqual(awg('4'));
	expect(thinnestGauge(awg('10'), () => true)).toEqual(awg('10'));
	expect(thinnestGauge(awg('10'), () => false)).toBeNull();
});

test('a metric size counts as the thickest AWG with no more copper', () => {
	const pairs = {
		'1': '18',
		'1.5': '16',
		'2.5': '14',
		'4': '12',
		'6': '10',
		'10': '8',
		'16': '6',
		'25': '4',
		'35': '2',
		'120': '4/0'
	} as const;
	for (const [metric, size] of Object.entries(pairs)) expect(awgWithin(iec(metric as keyof typeof pairs)), metric).toBe(size);
	expect(awgWithin(iec('0.75'))).toBeNull();
	expect(awgWithin(awg('3'))).toBe('3');
});

describe('resistance', () => {
	// Common practice, no source: 0.04 mΩ a joint from 6 AWG and 16 mm² up, 0.20 mΩ below.
	test('joints are light below 6 AWG and 16 mm²', () => {
		expect([awg('8'), iec('10')].map(jointOhm)).toEqual([0.2e-3, 0.2e-3]);
		expect([awg('6'), iec('16'), awg('4/0')].map(jointOhm)).toEqual([0.04e-3, 0.04e-3, 0.04e-3]);
	});

	// ABYC E-11's formula rearranged: R = 10.75 Ω·cmil/ft × L / CM; 2/0 AWG has 133,077 cmil.
	test('0.45 m of 2/0 AWG: copper by the small-craft formula, and two joints', () => {
		const { copperOhm, jointOhm: joint, totalOhm } = resistanceBreakdown(awg('2/0'), 0.45);
		expect(copperOhm).toBeCloseTo((10.75 * (0.45 / 0.3048)) / 133077, 7);
		expect(totalOhm).toBeCloseTo(copperOhm + 2 * joint, 12);
		expect(resistanceOhm({ gauge: awg('2/0') }, 0.45)).toBe(totalOhm);
	});

	test('more copper or less length never adds resistance', () => {
		// Within one system: 35 mm², by the limit of its class, has more resistance than the 33.6 mm² of 2 AWG.
		const pair = fc
			.constantFrom('awg' as const, 'iec' as const)
			.chain((system) => fc.tuple(fc.constantFrom(...gaugesOf(system)), fc.constantFrom(...gaugesOf(system))));
		const length = fc.double({ min: 0.01, max: 100, noNaN: true });
		fc.assert(
			fc.property(pair, length, length, ([a, b], l, more) => {
				const [thin, thick] = compareGauges(a, b) <= 0 ? [a, b] : [b, a];
				expect(resistanceOhm({ gauge: thick }, l)).toBeLessThanOrEqual(resistanceOhm({ gauge: thin }, l + more));
			})
		);
	});
});

describe('lugs and cables', () => {
	test('grow with the copper, across both systems', () => {
		const all = [...gaugesOf('awg'), ...gaugesOf('iec')].sort(compareGauges);
		for (const figure of [
			cableDiameterMm,
			(g: Gauge) => lugOf(g).padWidthMm,
			(g: Gauge) => lugOf(g).thicknessMm,
			(g: Gauge) => lugOf(g).lengthMm
		]) {
			const values = all.map(figure);
			values.slice(1).forEach((value, i) => expect(value, gaugeText(all[i + 1]!)).toBeGreaterThanOrEqual(values[i]! - 1e-9));
		}
	});

	test('the cable is thicker than its copper', () => {
		for (const gauge of [...gaugesOf('awg'), ...gaugesOf('iec')]) {
			expect(cableDiameterMm(gauge), gaugeText(gauge)).toBeGreaterThan(2 * Math.sqrt(areaMm2(gauge) / Math.PI));
		}
	});

	test('a metric lug lies between those of its neighbours', () => {
		expect(lugOf(iec('35')).padWidthMm).toBeGreaterThanOrEqual(lugOf(awg('2')).padWidthMm);
		expect(lugOf(iec('35')).thicknessMm).toBeLessThan(lugOf(awg('1')).thicknessMm);
		expect(cableDiameterMm(iec('120'))).toBeGreaterThan(cableDiameterMm(awg('4/0')));
	});
});
