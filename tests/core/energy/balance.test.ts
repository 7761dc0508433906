/**
 * Sums worked by hand for four systems, each load given as amps or watts and hours. The systems are invented, the
 * arithmetic is not: 409 Ah a day against 320 Ah usable, and so on. Usable shares (80 % lithium, 50 % lead-acid) are
 * common practice.
 */
import { describe, expect, test } from 'vitest';
import type { Param } from '#core/diagram';
import { energyBalance } from '#core/energy';
import { circuit } from '../../support/circuit.ts';

type Parts = Parameters<typeof circuit>[0];
type Conductors = Parameters<typeof circuit>[1];

/** Batteries, loads and sources side by side on the bank's posts; `series` blocks make a string. */
function bank(
	battery: Record<string, Param>,
	strings: number,
	series: number,
	others: Record<string, readonly [kind: string, params: Record<string, Param>]>,
	nominalV: 12 | 24 | 48
) {
	const parts: Record<string, Parts[string]> = {};
	const conductors: [string, string][] = [];
	for (let s = 1; s <= strings; s++)
		for (let b = 1; b <= series; b++) {
			parts[`b${s}${b}`] = ['battery', battery];
			if (b > 1) conductors.push([`b${s}${b - 1}.pos`, `b${s}${b}.neg`]);
			if (b === 1 && s > 1) conductors.push([`b${s}1.neg`, 'b11.neg']);
			if (b === series && s > 1) conductors.push([`b${s}${b}.pos`, `b1${series}.pos`]);
		}
	for (const [id, [kind, params]] of Object.entries(others)) {
		parts[id] = [kind, params];
		conductors.push([`b1${series}.pos`, `${id}.pos`], [`${id}.neg`, 'b11.neg']);
	}
	return circuit(parts, conductors as Conductors, { nominalV });
}

const amps = (draw: number, hoursPerDay: number) => ['load', { draw, hoursPerDay }] as const;
const watts = (draw: number, hoursPerDay: number) => ['load', { drawAs: 'power', draw, hoursPerDay }] as const;

describe('a day of', () => {
	test('the rescue trailer: 409 Ah used, 179 brought, 320 usable', () => {
		const balance = energyBalance(
			bank(
				{ capacityAh: 200 },
				2,
				1,
				{
					repeater: amps(9.5, 12), // 114
					fridge: amps(4.3, 10), // 43
					mast: amps(20, 3), // 60
					lights: amps(6, 8), // 48
					router: amps(1.5, 24), // 36
					fan: amps(3.75, 8), // 30
					// 78 Ah × 12.8 V × 0.9 = 898.56 Wh out of 2000 W.
					inverter: ['inverter', { watts: 2000, efficiency: 0.9, hoursPerDay: 0.44928 }],
					sol: ['solar-controller', { maxA: 30, arrayW: 400, sunHours: 2.7, yieldShare: 0.7 }],
					ddc: ['mains-charger', { maxA: 40, hoursPerDay: 3 }]
				},
				12
			)
		);
		expect(balance.bankV).toBe(12.8);
		expect(balance.totals.useAh).toBeCloseTo(409, 6);
		expect(balance.loads.map(({ ah }) => Math.round(ah))).toEqual([114, 43, 60, 48, 36, 30, 78]);
		expect(balance.usableAh).toBeCloseTo(320, 9);
		// 400 W × 2.7 h × 0.7 / 12.8 V = 59 Ah; 40 A × 3 h = 120 Ah.
		expect(balance.sources.map(({ ah }) => Math.round(ah))).toEqual([59, 120]);
		expect(balance.totals.netAh).toBeCloseTo(230, 0);
		expect(balance.autonomyDays).toBeCloseTo(0.8, 1);
		expect(balance.autonomyWithSourcesDays).toBeCloseTo(1.4, 1);
		expect(balance.notGiven).toEqual([]);
	});

	test('the library: 262 Ah of 150 Ah usable, 0.57 day', () => {
		const balance = energyBalance(
			bank(
				{ chemistry: 'lead-acid', capacityAh: 150 },
				2,
				2,
				{ lighting: amps(12, 7), inverter: watts(24 * 111, 1), lift: amps(80, 27 / 80), heater: amps(10, 1.6), electronics: amps(3, 8) },
				24
			)
		);
		expect(balance.bankV).toBe(24);
		expect(balance.totals.useAh).toBeCloseTo(262, 6);
		expect(balance.usableAh).toBeCloseTo(150, 9);
		expect(balance.autonomyDays).toBeCloseTo(0.57, 2);
	});

	test('the workboat: 134 Ah, 120 usable without its start battery', () => {
		const diagram = bank(
			{ chemistry: 'lead-acid', capacityAh: 120 },
			2,
			1,
			{ fridge: amps(2, 24), plotter: amps(3, 10), deck: amps(10, 2), navigation: amps(2, 4), vhf: amps(1.75, 4), capstan: amps(90, 1 / 12), bilge: amps(8.5, 1 / 8.5), misc: amps(1.25, 10) }, // prettier-ignore
			12
		);
		const start = circuit({ sb: ['battery', { chemistry: 'lead-acid', capacityAh: 90, keptForEngine: true }] });
		const balance = energyBalance({ ...diagram, parts: { ...diagram.parts, ...start.parts } });
		// 48 + 30 + 20 + 8 + 7 + 7.5 + 1 + 12.5
		expect(balance.totals.useAh).toBeCloseTo(134, 6);
		expect(balance.usableAh).toBeCloseTo(120, 9);
	});

	test('the weather station: 5.96 kWh of 8.19, 1.37 days, 4.6 kWh a day short', () => {
		const diagram = circuit(
			{
				b1: ['battery', { nominalV: 48, capacityAh: 100 }],
				b2: ['battery', { nominalV: 48, capacityAh: 100 }],
				c24: ['dcdc-converter', { maxA: 10, setV: 24, efficiency: 0.92 }],
				c12: ['dcdc-converter', { maxA: 15, setV: 12, efficiency: 0.92 }],
				sensors: ['load', { drawAs: 'power', draw: 35, hoursPerDay: 24 }],
				radio: ['load', { draw: 5, hoursPerDay: 24 }],
				heaters: ['load', { drawAs: 'power', draw: 600, hoursPerDay: 4.8 }],
				pad: ['load', { drawAs: 'power', draw: 100, hoursPerDay: 6 }],
				sol: ['solar-controller', { maxA: 60, arrayW: 2400, sunHours: 0.8, yieldShare: 0.7 }]
			},
			[
				['b1.pos', 'b2.pos'],
				['b1.neg', 'b2.neg'],
				...(['c24', 'c12'] as const).flatMap((id) => [['b1.pos', `${id}.in-pos`] as const, ['b1.neg', `${id}.in-neg`] as const]),
				['c24.out-pos', 'sensors.pos'],
				['c24.out-neg', 'sensors.neg'],
				['c12.out-pos', 'radio.pos'],
				['c12.out-neg', 'radio.neg'],
				...(['heaters', 'pad', 'sol'] as const).flatMap((id) => [['b1.pos', `${id}.pos`] as const, ['b1.neg', `${id}.neg`] as const])
			],
			{ nominalV: 48 }
		);
		const balance = energyBalance(diagram);
		// (840 + 1440) / 0.92 = 2478; 600 W × 20 % of a day = 2880; 600.
		expect(balance.loads.map(({ wh }) => Math.round(wh))).toEqual([913, 1565, 2880, 600]);
		expect(balance.totals.useWh / 1000).toBeCloseTo(5.96, 2);
		expect(balance.usableWh / 1000).toBeCloseTo(8.19, 2);
		expect(balance.autonomyDays).toBeCloseTo(1.37, 2);
		expect(balance.sources).toMatchObject([{ wh: 1344, how: '2400 W × 0.8 h × 0.7' }]);
		expect(balance.totals.netWh / 1000).toBeCloseTo(4.6, 1);
	});
});

describe('what is not given', () => {
	test('is listed and not counted', () => {
		const balance = energyBalance(
			bank({ capacityAh: 100 }, 1, 1, { lamp: ['load', {}], fan: amps(2, 5), sol: ['solar-controller', { arrayW: 100 }] }, 12)
		);
		expect(balance.totals.useAh).toBeCloseTo(10, 9);
		expect(balance.notGiven).toEqual([
			{ part: 'lamp', label: 'LAMP', what: 'hours a day' },
			{ part: 'sol', label: 'SOL', what: 'hours of full sun a day' }
		]);
	});

	test('leaves nothing to divide: no autonomy', () => {
		const { autonomyDays, autonomyWithSourcesDays, totals } = energyBalance(bank({}, 1, 1, { lamp: ['load', {}] }, 12));
		expect([autonomyDays, autonomyWithSourcesDays, totals.useWh]).toEqual([null, null, 0]);
	});

	test('is not asked of a charger between two batteries that both count, nor of a load the bank does not feed', () => {
		const diagram = circuit(
			{ b1: ['battery'], b2: ['battery'], d: ['dcdc-charger', { hoursPerDay: 5 }], l: ['load', { hoursPerDay: 3 }] },
			[
				['b1.pos', 'd.in-pos'],
				['b1.neg', 'd.in-neg'],
				['d.out-pos', 'b2.pos'],
				['d.out-neg', 'b2.neg']
			]
		);
		const balance = energyBalance(diagram);
		expect(balance.sources).toEqual([]);
		expect(balance.elsewhere).toEqual(['L']);
	});

	test('is asked of a charger from a start battery', () => {
		const diagram = circuit(
			{ b1: ['battery', { keptForEngine: true }], b2: ['battery'], d: ['dcdc-charger', { maxA: 30, hoursPerDay: 2 }] },
			[
				['b1.pos', 'd.in-pos'],
				['b1.neg', 'd.in-neg'],
				['d.out-pos', 'b2.pos'],
				['d.out-neg', 'b2.neg']
			]
		);
		expect(energyBalance(diagram).sources).toMatchObject([{ part: 'd', how: '30 A for 2 h' }]);
		expect(energyBalance(diagram).totals.bringAh).toBeCloseTo(60, 9);
	});
});

test('a compressor that rests between runs draws for its share of the hours: 24 h × 0.4 × 5 A = 48 Ah', () => {
	const fridge = ['load', { draw: 5, hoursPerDay: 24, dutyShare: 0.4 }] as const;
	const { loads, batteries, usableAh } = energyBalance(bank({ capacityAh: 100 }, 2, 1, { fridge }, 12));
	expect(loads[0]).toMatchObject({ hours: 24, dutyShare: 0.4, ah: expect.closeTo(48, 9) as number });
	// 80 % of each 100 Ah.
	expect(batteries.map(({ usableAh }) => usableAh)).toEqual([80, 80]);
	expect(usableAh).toBeCloseTo(160, 9);
});
