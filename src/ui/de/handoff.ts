import type { Translation } from './translation.ts';
import type { handoffTexts } from '../handoff-texts.ts';
import { count } from './count.ts';

export const handoffDe: Translation<typeof handoffTexts> = {
	open: 'Übergeben',
	hint: 'Die Übergabemappe speichern oder drucken: Zeichnung, Listen, Schilder, Prüfungen',
	title: 'Übergeben',

	empty: 'Noch ist nichts zu übergeben.',
	emptyHint:
		'Eine Batterie auf das Blatt setzen, dann eine Sicherung, einen Verbraucher und die Leiter dazwischen. Oder erst ein Beispiel öffnen und dessen Mappe ansehen.',

	packet: {
		title: 'Übergabemappe',
		about: 'Alles, was ein Fremder zum Bauen und ein Prüfer zum Prüfen braucht, auf nummerierten Blättern. Die Mappe ist vorerst englisch.',
		paper: 'Tabellen auf',
		drawingPaper: 'Zeichnung auf',
		placing: 'Zeichnung',
		placings: { fitted: 'ganz, auf einem Blatt', tiled: 'in Kacheln, groß genug zum Lesen' },
		sections: 'Abschnitte',
		all: 'Alle',
		none: 'Keine',
		noSection: 'Mindestens einen Abschnitt wählen.',
		save: 'PDF speichern',
		print: 'Drucken …'
	},

	picture: {
		title: 'Nur die Zeichnung',
		svg: 'SVG speichern',
		svgHint: 'In jeder Größe scharf, lässt sich mit Zeichenprogrammen öffnen',
		png: 'PNG speichern',
		scale: 'Größe des PNG',
		scaleOption: (factor, widthPx, heightPx) => `${factor} × (${widthPx} × ${heightPx} Punkte)`
	},

	tables: {
		title: 'Tabellen für die Tabellenkalkulation',
		about:
			'Mit Kommas getrennte Werte in UTF-8. Texte, die eine Tabellenkalkulation für eine Formel hielte, bekommen einen Apostroph davor.',
		which: 'Tabelle',
		all: 'Alle in einer Datei',
		save: 'CSV speichern'
	},

	working: {
		tables: 'Tabellen werden berechnet …',
		pdf: 'PDF wird geschrieben …',
		print: 'Blätter werden gesetzt …',
		png: 'Bild wird gezeichnet …'
	},
	asItIs: 'Aus dem Schaltplan und seiner Prüfung, wie sie jetzt sind.',
	stop: 'Anhalten',

	saved: (name) => `${name} gespeichert.`,
	savedPdf: (name, sheets) => `${name} gespeichert, ${count(sheets, 'Blatt', 'Blätter')}.`,
	missing: (characters) =>
		`Die Schrift der Mappe hat kein Zeichen für ${characters.slice(0, 12).join(' ')}: ${characters.length === 1 ? 'es wird' : 'sie werden'} als Kästchen gedruckt. Andere Zeichen verwenden oder aus dem Browser drucken.`,
	printed: 'Der Browser wurde zum Drucken aufgefordert.',

	failed: {
		tables: (reason) => `Die Tabellen ließen sich nicht berechnen (${reason}). Am Schaltplan wurde nichts geändert.`,
		pdf: (reason) =>
			`Das PDF wurde nicht erstellt: ${reason}. Mit weniger Abschnitten, oder der Zeichnung auf einem Blatt, braucht es weniger Speicher.`,
		print: (reason) => `Der Browser hat nicht gedruckt: ${reason}. Das PDF speichern und dieses drucken.`,
		png: (reason) => `Das PNG wurde nicht erstellt. ${reason} Eine kleinere Größe wählen oder das SVG speichern.`,
		save: (reason) => `Die Datei wurde nicht gespeichert: ${reason}. Vielleicht lehnt der Browser Downloads von dieser Seite ab.`
	}
};
