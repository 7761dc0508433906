/** Sentences of the choice of language and units. */
import { catalogue } from './catalogue.ts';

export const languageTexts = catalogue('language', {
	title: 'Language and units',
	language: 'Language',
	languageHint: 'Kept in this browser. It changes no diagram.',
	asDevice: (language: string) => `As this device (${language})`,
	notLoaded: (reason: string) => `The texts could not be loaded (${reason}). Check the connection and choose again.`,
	/** Said where the language is not English. */
	partly: '',
	units: 'Units',
	unitsHint:
		'Figures are shown so, here and in what is handed over. A field takes any unit, with a comma or a point: 3,5 m, 11 ft 6 in, 5/16 in, 77 °F. The diagram itself keeps SI units.',
	gauge: 'Sizes of conductors',
	gaugeHint: 'New conductors are proposed in it. A conductor stays what it was bought as; its size in the other system stands in brackets.',
	gauges: { awg: 'AWG', iec: 'mm²' },
	long: 'Lengths of conductors',
	longs: { m: 'Metres', ft: 'Feet and inches' },
	short: 'Small lengths',
	shorts: { mm: 'Millimetres', in: 'Inches' },
	temperature: 'Temperatures',
	temperatures: { '°C': 'Degrees Celsius', '°F': 'Degrees Fahrenheit' },
	decimal: 'Decimal mark',
	decimals: { '.': 'Point: 3.5', ',': 'Comma: 3,5' },
	usual: 'As is usual where this device is'
});
