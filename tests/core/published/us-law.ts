/** United States federal rules for small craft, read through the profile that stands for them. */
import { areaMm2 } from '#core/conductors';
import type { Conductor } from '#core/diagram';
import { profile, type ConductorConditions } from '#core/profiles';
import type { AwgSize } from '#core/tables';
import { metresFromInches } from '#core/units';
import { cells, type PublishedTable } from '../../support/published.ts';

const law = profile('us-small-craft');
const MILD = { outsideC: 30, engineSpaceC: 50 };

const conductor = (size: string, insulationC: number, rest: Partial<ConductorConditions> = {}): ConductorConditions => ({
	gauge: { system: 'awg', size: size as AwgSize },
	insulationC: insulationC as Conductor['insulationC'],
	environment: 'outside',
	bundleCount: 1,
	...rest
});
const factor = (conditions: ConductorConditions, nominalV: number): number => {
	const { currentA, tableA } = law.ampacity(conditions, nominalV, MILD);
	return currentA / tableA;
};

export const US_LAW: readonly PublishedTable[] = [
	{
		source: '33 CFR 183 (2015 annual edition)',
		clause: '183.425 Table 5, allowable amperage, A',
		seen: 'two-sources',
		way: 'looked up',
		values: cells(
			`
			18 10 10 15 20 20 25 25
			16 15 15 20 25 25 30 35
			14 20 20 25 30 35 40 45
			12 25 25 35 40 45 50 55
			10 40 40 50 55 60 70 70
			8 55 65 70 70 80 90 100
			6 80 95 100 100 120 125 135
			4 105 125 130 135 160 170 180
			3 120 145 150 155 180 195 210
			2 140 170 175 180 210 225 240
			1 165 195 210 210 245 265 280
			1/0 195 230 245 245 285 305 325
			2/0 225 265 285 285 330 355 370
			3/0 260 310 330 330 385 410 430
			4/0 300 360 385 385 445 475 510`,
			['60', '75', '80', '90', '105', '125', '200'],
			(size, c) => law.ampacity(conductor(size, Number(c)), 12, MILD).currentA,
			{ what: (size, c) => `${size} AWG, ${c} °C` }
		)
	},
	{
		source: '33 CFR 183 (2015 annual edition)',
		clause: '183.425 Table 5, note 1, engine spaces',
		seen: 'verified',
		way: 'looked up',
		values: cells(
			'4 0.58 0.75 0.78 0.82 0.85 0.89 1.00',
			['60', '75', '80', '90', '105', '125', '200'],
			(size, c) => factor(conductor(size, Number(c), { environment: 'engine-space' }), 12),
			{ what: (_, c) => `${c} °C`, within: () => 1e-12 }
		)
	},
	{
		source: '33 CFR 183 (2015 annual edition)',
		clause: '183.425 Table 5, note 2, by 183.435(b) from 50 V',
		seen: 'verified',
		way: 'looked up',
		values: [
			[3, 0.7],
			[4, 0.6],
			[6, 0.6],
			[7, 0.5],
			[24, 0.5],
			[25, 0.4]
		].map(([bundleCount, printed]) => ({
			what: `${bundleCount} conductors`,
			printed: printed!,
			ours: factor(conductor('10', 105, { bundleCount: bundleCount! }), 50),
			within: 1e-12
		}))
	},
	{
		source: '33 CFR 183 (2015 annual edition)',
		clause: '183.425, 183.455, 183.460',
		seen: 'verified',
		way: 'looked up',
		values: [
			{
				what: '183.455(b)(1), from the source, in',
				printed: 7,
				ours: law.overcurrent.unsheathedM.value / metresFromInches(1),
				within: 1e-12
			},
			{ what: '183.455(b)(2), sheathed, in', printed: 40, ours: law.overcurrent.sheathedM.value / metresFromInches(1), within: 1e-12 },
			{ what: '183.460(a), from a battery, in', printed: 72, ours: law.overcurrent.batteryM.value / metresFromInches(1), within: 1e-12 },
			{ what: '183.455(c)(1), device under 50 V, %', printed: 150, ours: 100 * law.overcurrent.factor(48).value, within: 0 },
			{ what: '183.455(c)(2), device from 50 V, %', printed: 100, ours: 100 * law.overcurrent.factor(50).value, within: 0 },
			{ what: '183.455(c)(2), next standard size up to, %', printed: 150, ours: 100 * law.overcurrent.nextStandardUpTo.value, within: 0 },
			{
				what: '183.425(e), 16 AWG on its own, cmil (Chapter 9 Table 8)',
				printed: 2580,
				ours: circularMils(law.smallestSeparateMm2.value),
				within: 8
			},
			{
				what: '183.425(d), 18 AWG in a sheath, cmil (Chapter 9 Table 8)',
				printed: 1620,
				ours: circularMils(law.smallestSheathedMm2.value),
				within: 5
			}
		]
	},
	{
		source: '46 CFR 169 (2015 annual edition)',
		clause: '169.672, drop at the load, %',
		seen: 'verified',
		way: 'looked up',
		values: [{ what: 'under 50 V', printed: 10, ours: law.drop.ordinaryPercent.value, within: 0 }]
	}
];

/** A circular mil is the area of a circle of 0.001 in: 4/0 AWG, 0.46 in across, has 211,600. */
function circularMils(squareMm: number): number {
	return (squareMm / areaMm2({ system: 'awg', size: '4/0' })) * 211_600;
}
