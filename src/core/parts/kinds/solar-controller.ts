import * as z from 'zod';
import { ampsText, voltsText } from '#core/units';
import { definePart, type Link } from '../define.ts';
import { amount, choice, count, flag, hoursADay, optionalAmount, optionalTemperature, share } from '../fields.ts';
import { electronicsCase, electronicsNameplate } from '../electronics.ts';
import { siteFields } from '../site.ts';
import { centredBox } from '../sketch.ts';
import { dcConverterSymbol } from '../symbols.ts';
import { clamp } from '../terminals.ts';

const params = z.strictObject({
	maxA: amount('Rated output', 'A', 30, { max: 1000 }),
	setV: amount('Charging voltage', 'V', 14.4, { max: 100 }),
	maxPvV: amount('Greatest array voltage', 'V', 100, { max: 1000 }),
	minPvV: optionalAmount('Charges from an array voltage of', 'V', { max: 1000, whenEmpty: 'taken as 5 V above the charging voltage' }),
	maxPvA: optionalAmount('Greatest short-circuit current of the array', 'A', { max: 1000 }),
	inSeries: count('Modules in series', 1, 1, 40),
	inParallel: count('Strings in parallel', 1, 1, 40),
	moduleVocV: optionalAmount('Module, open-circuit voltage', 'V', { max: 500, whenEmpty: 'not given', hint: 'at 25 °C, on its label' }),
	moduleVmpV: optionalAmount('Module, voltage at greatest power', 'V', { max: 500, whenEmpty: 'not given' }),
	moduleIscA: optionalAmount('Module, short-circuit current', 'A', { max: 100, whenEmpty: 'not given' }),
	moduleFuseA: optionalAmount('Module, largest series fuse', 'A', { max: 200, whenEmpty: 'not given' }),
	vocPercentPerC: optionalAmount('Module, voltage lost per °C', '%', {
		max: 2,
		whenEmpty: 'a table by temperature is used',
		hint: 'coefficient of the open-circuit voltage without its sign: 0.28'
	}),
	coldestC: optionalTemperature('Coldest at the array', { whenEmpty: 'not given' }),
	stringFuseA: optionalAmount('Fuse in each string', 'A', { max: 200, whenEmpty: 'none' }),
	arraySwitch: choice('Array can be switched off', 'not-known', {
		'not-known': 'not known',
		both: 'in both poles',
		one: 'in one pole',
		plug: 'portable, by its plug',
		no: 'no'
	}),
	arraySwitchV: optionalAmount('Array switch made for', 'V', { max: 1500, hint: 'of direct current' }),
	arrayW: optionalAmount('Array, peak', 'W', { max: 100_000, whenEmpty: 'not given', daily: true }),
	sunHours: hoursADay('Hours of full sun a day', { hint: 'mean of the season it is used in' }),
	yieldShare: share('Share of peak reached', 0.7, { hint: 'heat, dirt, angle and losses; common practice 0.7', daily: true }),
	blocksReverse: flag('Blocks reverse current', true, { hint: 'the battery cannot feed the array or a fault inside it' }),
	...siteFields()
});

type Params = z.output<typeof params>;

const size = ({ maxA }: Params) => ({ widthMm: Math.round(Math.min(260, 110 + maxA)), heightMm: Math.round(Math.min(260, 100 + maxA)) });
const box = (controller: Params) => centredBox(size(controller).widthMm, size(controller).heightMm);

const STRIP_MM = 24;

/** What does not block feeds the array's conductors from the battery. Its resistance is common practice, no source. */
const REVERSE_PATH: Link = { kind: 'segment', id: 'reverse', between: ['pos', 'pv-pos'], resistanceOhm: 0.01, ratedA: null };

export const solarController = definePart({
	kind: 'solar-controller',
	name: 'Solar charge controller',
	help: 'Charges the bank from a solar array at a limited current. The array side is drawn but not calculated.',
	group: 'charging',
	letter: 'T',
	symbol: 'solar',
	params,
	terminals(controller) {
		const { widthMm, heightMm } = size(controller);
		const at = (share: number) => ({ x: share * widthMm, y: heightMm / 2 - 12 });
		const print = (words: string, share: number) => ({ text: words, at: { x: share * widthMm, y: heightMm / 2 - 29 } });
		return [
			clamp('pv-pos', 'array +', at(-0.36), 'south', { role: 'positive', print: print('PV', -0.27) }),
			clamp('pv-neg', 'array −', at(-0.18), 'south', { role: 'negative' }),
			clamp('neg', 'battery −', at(0.18), 'south', { role: 'negative', print: print('BATTERY', 0.27), ratedA: controller.maxA }),
			clamp('pos', 'battery +', at(0.36), 'south', { role: 'positive', ratedA: controller.maxA })
		];
	},
	links: (controller) => [
		...(controller.blocksReverse ? [] : [REVERSE_PATH]),
		{
			kind: 'source',
			id: 'output',
			positive: 'pos',
			negative: 'neg',
			maxA: controller.maxA,
			setV: controller.setV,
			fedBy: null,
			efficiency: 1,
			blocksReverse: controller.blocksReverse,
			alwaysOn: false,
			daily: { kind: 'sun', peakW: controller.arrayW, sunHours: controller.sunHours, yieldShare: controller.yieldShare }
		}
	],
	outline: (controller) => electronicsCase({ box: box(controller), stripMm: STRIP_MM, symbol: dcConverterSymbol }),
	nameplate: (controller) => electronicsNameplate(box(controller), STRIP_MM),
	box,
	summary: (controller) => `${voltsText(controller.maxPvV)} / ${ampsText(controller.maxA)}`
});
