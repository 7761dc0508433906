import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, flag, hoursADay, thread } from '../fields.ts';
import { electronicsCase, electronicsNameplate } from '../electronics.ts';
import { siteFields } from '../site.ts';
import { centredBox } from '../sketch.ts';
import { rectifierSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	maxA: amount('Rated output', 'A', 30, { max: 2000 }),
	setV: amount('Charging voltage', 'V', 14.4, { max: 100 }),
	hoursPerDay: hoursADay('Hours a day', { hint: 'at its rated output' }),
	blocksReverse: flag('Blocks reverse current', true, { hint: 'the battery cannot feed a fault inside it' }),
	thread: thread('Stud thread', 'M6'),
	caseThread: thread('Case stud thread', 'M6'),
	...siteFields()
});

type Params = z.output<typeof params>;

const size = ({ maxA }: Params) => ({ widthMm: Math.round(Math.min(280, 140 + maxA)), heightMm: Math.round(Math.min(360, 190 + maxA)) });
const box = (charger: Params) => centredBox(size(charger).widthMm, size(charger).heightMm);

const STRIP_MM = 38;

export const mainsCharger = definePart({
	kind: 'mains-charger',
	name: 'Mains charger',
	help: 'Charges the bank from shore power or a generator at a limited current. Its AC side is not checked here.',
	group: 'charging',
	letter: 'T',
	symbol: 'rectifier',
	params,
	terminals(charger) {
		const { widthMm, heightMm } = size(charger);
		const y = heightMm / 2 - 18;
		const output = { thread: charger.thread, maxTerminals: 2, ratedA: charger.maxA };
		return [
			stud('pos', '+', { x: -widthMm * 0.3, y }, 'south', { ...output, role: 'positive' }),
			stud('neg', '−', { x: 0, y }, 'south', { ...output, role: 'negative' }),
			stud('case', 'case bond', { x: widthMm * 0.34, y }, 'south', {
				thread: charger.caseThread,
				role: 'chassis',
				maxTerminals: 2,
				acceptsBlock: false
			})
		];
	},
	links: (charger) => [
		{
			kind: 'source',
			id: 'output',
			positive: 'pos',
			negative: 'neg',
			maxA: charger.maxA,
			setV: charger.setV,
			fedBy: null,
			efficiency: 1,
			blocksReverse: charger.blocksReverse,
			alwaysOn: false,
			daily: { kind: 'hours', hours: charger.hoursPerDay }
		}
	],
	outline: (charger) => electronicsCase({ box: box(charger), stripMm: STRIP_MM, symbol: rectifierSymbol }),
	nameplate: (charger) => electronicsNameplate(box(charger), STRIP_MM),
	box,
	summary: (charger) => ampsText(charger.maxA)
});
