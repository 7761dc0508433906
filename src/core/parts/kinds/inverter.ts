import * as z from 'zod';
import { voltsText, wattsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, choice, hoursADay, optionalAmount, share, thread } from '../fields.ts';
import { electronicsCase, electronicsNameplate } from '../electronics.ts';
import { siteFields } from '../site.ts';
import { centredBox } from '../sketch.ts';
import { inverterSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	watts: amount('Rated output', 'W', 2000, { max: 50_000 }),
	efficiency: share('Efficiency', 0.9),
	cutOffV: optionalAmount('Switches off below', 'V', { max: 80, whenEmpty: 'not known' }),
	surgeW: optionalAmount('Surge output', 'W', {
		max: 100_000,
		whenEmpty: 'no more than rated',
		hint: 'for seconds, while what it feeds starts'
	}),
	precharge: choice('Input capacitors are charged gently', 'not-known', {
		'not-known': 'not known',
		yes: 'yes, built in or by a resistor across the switch',
		no: 'no'
	}),
	hoursPerDay: hoursADay('Hours a day', { hint: 'at its rated output: 0.5 for 2 h at a quarter of it' }),
	thread: thread('Stud thread', 'M8'),
	caseThread: thread('Case stud thread', 'M6'),
	...siteFields()
});

type Params = z.output<typeof params>;

/** Case of the usual shape, grown with the output. */
const size = ({ watts }: Params) => {
	const widthMm = Math.round(Math.min(460, Math.max(170, 24 * watts ** 0.32)));
	return { widthMm, heightMm: Math.round(Math.min(520, widthMm * 1.25)) };
};
const box = (inverter: Params) => centredBox(size(inverter).widthMm, size(inverter).heightMm);

const STRIP_MM = 44;

export const inverter = definePart({
	kind: 'inverter',
	name: 'Inverter',
	help: 'Makes mains-voltage AC from the bank. It draws constant power, so its current rises as the voltage falls. Its AC side is not checked here.',
	group: 'loads',
	letter: 'T',
	symbol: 'inverter',
	params,
	terminals(inverter) {
		const y = size(inverter).heightMm / 2 - 20;
		const x = size(inverter).widthMm / 2;
		return [
			stud('pos', '+', { x: -x * 0.5, y }, 'south', { thread: inverter.thread, role: 'positive', maxTerminals: 2 }),
			stud('neg', '−', { x: x * 0.1, y }, 'south', { thread: inverter.thread, role: 'negative', maxTerminals: 2 }),
			stud('case', 'case bond', { x: x * 0.68, y }, 'south', {
				thread: inverter.caseThread,
				role: 'chassis',
				maxTerminals: 2,
				acceptsBlock: false
			})
		];
	},
	links: (inverter) => [
		{
			kind: 'load',
			id: 'input',
			positive: 'pos',
			negative: 'neg',
			draw: { kind: 'power', watts: inverter.watts / inverter.efficiency },
			followsSource: null,
			reversible: false,
			critical: false,
			hoursPerDay: inverter.hoursPerDay,
			...(inverter.surgeW === null ? {} : { starting: { times: Math.max(1, inverter.surgeW / inverter.watts), seconds: null } })
		}
	],
	outline: (inverter) => electronicsCase({ box: box(inverter), stripMm: STRIP_MM, symbol: inverterSymbol }),
	nameplate: (inverter) => electronicsNameplate(box(inverter), STRIP_MM),
	box,
	summary: ({ watts, cutOffV }) => wattsText(watts) + (cutOffV === null ? '' : `, off below ${voltsText(cutOffV)}`)
});
