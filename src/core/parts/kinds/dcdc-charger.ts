import * as z from 'zod';
import { ampsText } from '#core/units';
import { converterFields, converterLinks, converterTerminals } from '../converters.ts';
import { definePart } from '../define.ts';
import { hoursADay } from '../fields.ts';
import { electronicsCase, electronicsNameplate } from '../electronics.ts';
import { siteFields } from '../site.ts';
import { centredBox } from '../sketch.ts';
import { dcConverterSymbol } from '../symbols.ts';

const params = z.strictObject({
	...converterFields({ maxA: 30, setV: 14.4, efficiency: 0.9 }),
	hoursPerDay: hoursADay('Hours a day', { hint: 'at its rated output' }),
	...siteFields()
});

type Params = z.output<typeof params>;

const size = ({ maxA }: Params) => ({ widthMm: Math.round(Math.min(260, 130 + maxA)), heightMm: 140 });
const box = (charger: Params) => centredBox(size(charger).widthMm, size(charger).heightMm);

const STRIP_MM = 34;

export const dcdcCharger = definePart({
	kind: 'dcdc-charger',
	name: 'DC-DC charger',
	help: 'Charges the bank from another battery or an alternator at a limited current. Its conductors have a battery at each end.',
	group: 'charging',
	letter: 'T',
	symbol: 'dc-converter',
	params,
	terminals: (charger) => converterTerminals(charger, size(charger).widthMm, size(charger).heightMm / 2 - 16),
	links: (charger) => converterLinks(charger, false, { kind: 'hours', hours: charger.hoursPerDay }),
	outline: (charger) => electronicsCase({ box: box(charger), stripMm: STRIP_MM, symbol: dcConverterSymbol }),
	nameplate: (charger) => electronicsNameplate(box(charger), STRIP_MM),
	box,
	summary: (charger) => ampsText(charger.maxA)
});
