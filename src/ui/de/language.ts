import type { Translation } from './translation.ts';
import type { languageTexts } from '../language/texts.ts';

export const languageDe: Translation<typeof languageTexts> = {
	title: 'Sprache und Einheiten',
	language: 'Sprache',
	languageHint: 'Gilt in diesem Browser. Am Schaltplan ändert sich nichts.',
	asDevice: (language) => `Wie das Gerät (${language})`,
	notLoaded: (reason) => `Die Texte ließen sich nicht laden (${reason}). Bitte die Verbindung prüfen und noch einmal wählen.`,
	partly:
		'Oberfläche und Titel der Prüfungen sind deutsch. Die Sätze der Befunde, Vorschläge und Rechenwege und die Übergabemappe sind vorerst englisch.',
	units: 'Einheiten',
	unitsHint:
		'So erscheinen Werte hier und in der Übergabemappe. Felder nehmen jede Einheit an, mit Komma oder Punkt: 3,5 m, 11 ft 6 in, 5/16 in, 77 °F. Der Schaltplan selbst bleibt in SI-Einheiten.',
	gauge: 'Querschnitte',
	gaugeHint:
		'Neue Leiter werden so vorgeschlagen. Ein Leiter bleibt, als was er gekauft wurde; der Querschnitt im anderen System steht in Klammern.',
	gauges: { awg: 'AWG', iec: 'mm²' },
	long: 'Leiterlängen',
	longs: { m: 'Meter', ft: 'Fuß und Zoll' },
	short: 'Kleine Maße',
	shorts: { mm: 'Millimeter', in: 'Zoll' },
	temperature: 'Temperaturen',
	temperatures: { '°C': 'Grad Celsius', '°F': 'Grad Fahrenheit' },
	decimal: 'Dezimalzeichen',
	decimals: { '.': 'Punkt: 3.5', ',': 'Komma: 3,5' },
	usual: 'Wie am Ort des Geräts üblich'
};
