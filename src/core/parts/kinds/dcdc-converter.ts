import * as z from 'zod';
import { ampsText, voltsText } from '#core/units';
import { converterFields, converterLinks, converterTerminals } from '../converters.ts';
import { definePart } from '../define.ts';
import { electronicsCase, electronicsNameplate } from '../electronics.ts';
import { siteFields } from '../site.ts';
import { centredBox } from '../sketch.ts';
import { dcConverterSymbol } from '../symbols.ts';

const params = z.strictObject({
	...converterFields({ maxA: 20, setV: 12.5, efficiency: 0.9 }),
	...siteFields()
});

type Params = z.output<typeof params>;

const WIDTH_MM = 130;
const HEIGHT_MM = 110;
const BOX = centredBox(WIDTH_MM, HEIGHT_MM);

const STRIP_MM = 34;

export const dcdcConverter = definePart({
	kind: 'dcdc-converter',
	name: 'DC-DC converter',
	help: 'Feeds 12 V devices from a 24 V or 48 V bank. Its output is a supply of its own, limited to its rating.',
	group: 'distribution',
	letter: 'T',
	symbol: 'dc-converter',
	params,
	terminals: (converter: Params) => converterTerminals(converter, WIDTH_MM, HEIGHT_MM / 2 - 16),
	links: (converter) => converterLinks(converter, true),
	outline: () => electronicsCase({ box: BOX, stripMm: STRIP_MM, symbol: dcConverterSymbol }),
	nameplate: () => electronicsNameplate(BOX, STRIP_MM),
	box: () => BOX,
	summary: (converter) => `${voltsText(converter.setV)} ${ampsText(converter.maxA)}`
});
