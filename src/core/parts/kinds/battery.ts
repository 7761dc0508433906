import * as z from 'zod';
import { ampsText, compactNumber } from '#core/units';
import { definePart } from '../define.ts';
import { amount, choice, flag, numberChoice, optionalAmount, optionalShare, optionalTemperature, thread } from '../fields.ts';
import { block, circle, rect, type Primitive } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, raised } from '../sketch.ts';
import { batterySymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

/**
 * Figures for one block of nominally 12 V: open-circuit voltage in use, nearly empty and into a dead short, resistance
 * in use, resistance into a dead short times capacity, and the share of the capacity used in a day. Common practice,
 * no source; a data sheet's figure goes before.
 */
const CHEMISTRY = {
	'lithium-iron-phosphate': {
		printedV: 12.8,
		emfV: 13.2,
		lowEmfV: 12,
		faultEmfV: 13.6,
		operatingOhm: () => 0.005,
		faultOhmAh: 0.25,
		usable: 0.8
	},
	'lead-acid': {
		printedV: 12,
		emfV: 12.6,
		lowEmfV: 11.8,
		faultEmfV: 13.2,
		operatingOhm: (ah: number) => 0.675 / ah,
		faultOhmAh: 0.45,
		usable: 0.5
	}
} as const;

const params = z.strictObject({
	chemistry: choice('Chemistry', 'lithium-iron-phosphate', {
		'lithium-iron-phosphate': 'lithium iron phosphate',
		'lead-acid': 'lead-acid (AGM, gel, flooded)'
	}),
	nominalV: numberChoice('Nominal voltage', 'V', 12, [6, 12, 24, 48]),
	capacityAh: amount('Capacity', 'Ah', 100, { max: 5000, daily: true }),
	continuousA: optionalAmount('Continuous discharge limit', 'A', { max: 5000, whenEmpty: 'no limit known' }),
	chargeA: optionalAmount('Charge limit', 'A', { max: 5000, whenEmpty: 'no limit known' }),
	emfV: optionalAmount('Open-circuit voltage in use', 'V', { max: 80, whenEmpty: 'from the chemistry' }),
	lowEmfV: optionalAmount('Open-circuit voltage nearly empty', 'V', { max: 80, whenEmpty: 'from the chemistry' }),
	usableShare: optionalShare('Share of capacity used', { whenEmpty: 'from the chemistry: 0.8 lithium, 0.5 lead-acid', daily: true }),
	keptForEngine: flag('Kept to start an engine', false, { hint: 'left out of the energy balance' }),
	resistanceMilliohm: optionalAmount('Resistance in use', 'mΩ', { max: 10_000, whenEmpty: 'from chemistry, voltage and capacity' }),
	faultEmfV: optionalAmount('Open-circuit voltage into a short', 'V', { max: 80, whenEmpty: 'from the chemistry, fully charged' }),
	faultResistanceMilliohm: optionalAmount('Resistance into a short', 'mΩ', {
		max: 10_000,
		whenEmpty: 'from chemistry, voltage and capacity',
		hint: 'cells and links only; battery electronics do not count'
	}),
	switchesOff: choice('Its electronics can switch it off', 'auto', { auto: 'as usual: lithium yes, lead-acid no', yes: 'yes', no: 'no' }),
	warnsFirst: choice('Warns before it switches off', 'not-known', { 'not-known': 'not known', yes: 'yes', no: 'no' }),
	coldestC: optionalTemperature('Coldest it gets', { hint: 'where it stands, while it may be charged' }),
	minChargeC: optionalTemperature('Charged no colder than', { whenEmpty: 'from the chemistry: 0 °C lithium, no limit lead-acid' }),
	coldCutOff: choice('Charging in the cold', 'not-known', {
		'not-known': 'nothing known that stops it',
		stops: 'its electronics stop it',
		heated: 'it is heated first'
	}),
	built: optionalAmount('Built in', 'year', { max: 2200, hint: '2024.5 for the middle of 2024' }),
	enclosed: flag('In an enclosure vented to the outside', false),
	stud: thread('Post thread', 'M8'),
	...siteFields()
});

type Params = z.output<typeof params>;

const blocksOf12V = ({ nominalV }: Params): number => nominalV / 12;

/** Footprint of common cases, grown with the stored energy. */
function size(battery: Params): { widthMm: number; depthMm: number } {
	const energy = blocksOf12V(battery) * battery.capacityAh;
	const bulk = battery.chemistry === 'lead-acid' ? 1.12 : 1;
	const widthMm = Math.round(Math.min(620, Math.max(150, 43 * energy ** 0.42 * bulk)));
	return { widthMm, depthMm: Math.round(Math.min(300, widthMm * 0.53)) };
}

/** Height of the row of cell caps; null where there is none. */
function capsY(battery: Params): number | null {
	const { depthMm } = size(battery);
	return battery.chemistry === 'lead-acid' && depthMm > 110 ? -depthMm / 2 + 62 : null;
}

/** Cell caps on lead-acid, carrying straps on lithium. */
function lid(battery: Params): Primitive[] {
	const { widthMm, depthMm } = size(battery);
	const y = capsY(battery);
	if (y !== null) {
		const cells = battery.nominalV / 2;
		const pitch = (widthMm - 110) / cells;
		return [
			raised(-widthMm / 2 + 42, y - 12, widthMm - 84, 24, 4),
			...Array.from({ length: cells }, (_, cell) =>
				circle((cell - (cells - 1) / 2) * pitch, y, Math.min(8, pitch * 0.4), { fill: 'case', stroke: 'case-edge', width: 0.5 })
			)
		];
	}
	const straps = Math.min(70, depthMm * 0.4);
	return [-1, 1].map((side) =>
		block(side * (widthMm / 2 - 14), depthMm * 0.12, 8, straps, { fill: 'case-raised', stroke: 'case-edge', width: 0.4, r: 4 })
	);
}

export const battery = definePart({
	kind: 'battery',
	name: 'Battery',
	help: 'Stores the energy. Everything on its posts can deliver a very large current into a fault, so its conductors need a fuse close by.',
	group: 'sources',
	letter: 'G',
	params,
	terminals(battery) {
		const { widthMm, depthMm } = size(battery);
		const y = -depthMm / 2 + 26;
		const x = widthMm / 2 - 32;
		return [
			stud('pos', '+', { x: -x, y }, 'north', { thread: battery.stud, role: 'positive', otherSides: ['west'] }),
			stud('neg', '−', { x, y }, 'north', { thread: battery.stud, role: 'negative', otherSides: ['east'] })
		];
	},
	links(battery) {
		const blocks = blocksOf12V(battery);
		const figures = CHEMISTRY[battery.chemistry];
		const { capacityAh } = battery;
		return [
			{
				kind: 'battery',
				id: 'battery',
				positive: 'pos',
				negative: 'neg',
				emfV: battery.emfV ?? figures.emfV * blocks,
				resistanceOhm: battery.resistanceMilliohm !== null ? battery.resistanceMilliohm / 1000 : figures.operatingOhm(capacityAh) * blocks,
				faultEmfV: battery.faultEmfV ?? figures.faultEmfV * blocks,
				faultResistanceOhm:
					battery.faultResistanceMilliohm !== null ? battery.faultResistanceMilliohm / 1000 : (figures.faultOhmAh / capacityAh) * blocks,
				capacityAh,
				continuousA: battery.continuousA,
				lowEmfV: battery.lowEmfV ?? figures.lowEmfV * blocks,
				ratedV: figures.printedV * blocks,
				usableShare: battery.usableShare ?? figures.usable,
				keptForEngine: battery.keptForEngine
			}
		];
	},
	outline: (battery) => {
		const { widthMm, depthMm } = size(battery);
		const postX = widthMm / 2 - 32;
		const postY = -depthMm / 2 + 26;
		return [
			body(centredBox(widthMm, depthMm), 6),
			// The lid, a little smaller than the case.
			rect(-widthMm / 2 + 5, -depthMm / 2 + 5, widthMm - 10, depthMm - 10, { stroke: 'case-edge', width: 0.35, r: 4, opacity: 0.7 }),
			...lid(battery),
			...[-postX, postX].map((x) => block(x, postY, 34, 32, { fill: 'case-raised', stroke: 'case-edge', width: 0.4, r: 4 })),
			...batterySymbol(0, postY, Math.min(26, widthMm * 0.1))
		];
	},
	nameplate(battery) {
		const { widthMm, depthMm } = size(battery);
		const top = capsY(battery) === null ? -depthMm / 2 + 46 : capsY(battery)! + 12;
		return { minX: -widthMm / 2 + 30, maxX: widthMm / 2 - 30, minY: top, maxY: depthMm / 2 - 12 };
	},
	box(battery) {
		const { widthMm, depthMm } = size(battery);
		return centredBox(widthMm, depthMm);
	},
	summary(battery) {
		const { chemistry, capacityAh, continuousA, chargeA } = battery;
		const size = `${compactNumber(CHEMISTRY[chemistry].printedV * blocksOf12V(battery))} V ${compactNumber(capacityAh)} Ah`;
		return [
			size,
			...(continuousA === null ? [] : [`discharge ${ampsText(continuousA)}`]),
			...(chargeA === null ? [] : [`charge ${ampsText(chargeA)}`])
		].join(', ');
	}
});
