import type { Translation } from './translation.ts';
import type { guideTexts } from '../guide/texts.ts';

export const guideDe: Translation<typeof guideTexts> = {
	title: 'Geführte Einstiege',
	about:
		'Jeder führt durch die echte Zeichnung: er sagt, was zu tun ist und warum, zeigt auf die Stelle und geht von selbst weiter, sobald es getan ist. Jederzeit zu verlassen; es geht dort weiter.',
	begin: 'Beginnen',
	resume: 'Weitermachen',
	again: 'Von vorn',
	minutes: (n) => `etwa ${n} Minuten`,
	region: (start) => `Geführter Einstieg: ${start}`,
	step: (n, of) => `Schritt ${n} von ${of}`,
	skip: 'Überspringen',
	next: 'Weiter',
	back: 'Zurück',
	leave: 'Verlassen',
	finish: 'Fertig',
	wellDone: 'Erledigt.',
	openExample: 'Beispiel öffnen',
	starts: {
		circuit: {
			title: 'Erster Stromkreis: Batterie, Sicherung, Lampe',
			about: 'Drei Teile und drei Leiter auf einem leeren Blatt, und was die Prüfung dazu sagt.',
			minutes: 4
		},
		bus: {
			title: 'Die volle Schiene: noch ein Stromkreis',
			about: 'Eine Schiene, auf der jeder Platz belegt ist, und die Wege, trotzdem einen Stromkreis anzuschließen.',
			minutes: 3
		},
		handover: {
			title: 'Übergeben: Prüfung und Mappe',
			about: 'Von dem, was die Prüfung fand, zu den Blättern, nach denen ein Fremder bauen kann.',
			minutes: 3
		}
	},
	steps: {
		circuit: {
			battery: {
				what: 'Eine Batterie auf das Blatt setzen: aus „Teile“ hierher ziehen, oder anklicken und dann ihren Platz.',
				why: 'Geprüft wird von der Quelle aus: was sie in einen Kurzschluss treibt, und was sie aufhält.'
			},
			fuse: {
				what: 'Eine Leitungssicherung neben das Plus der Batterie setzen.',
				why: 'Eine Sicherung schützt nur, was hinter ihr liegt. Nahe der Batterie bleibt wenig ungeschützt.'
			},
			light: {
				what: 'Einen Verbraucher weiter weg setzen: hier eine Lampe. Ihre Aufnahme steht in den Einzelheiten.',
				why: 'Ihr Strom bestimmt, wie dick die Leiter und wie groß die Sicherung sein müssen.'
			},
			feed: {
				what: 'Einen Leiter vom Plus der Batterie zur Sicherung zeichnen: von Bolzen zu Bolzen ziehen. Mit der Tastatur: C auf einem Bolzen in der Gliederung, dann C auf dem anderen.',
				why: 'Jeder Leiter wird einzeln gezeichnet, weil jeder einzeln falsch sein kann.'
			},
			on: {
				what: 'Einen Leiter vom anderen Ende der Sicherung zum Plus der Lampe zeichnen.',
				why: 'Ab hier behütet die Sicherung den Leiter.'
			},
			back: {
				what: 'Den Rückweg zeichnen, vom Minus der Lampe zum Minus der Batterie.',
				why: 'Der Rückleiter führt denselben Strom und verliert ebenfalls Spannung. Das Chassis ist kein Rückleiter.'
			},
			lengths: {
				what: 'Jeden Leiter auswählen und in den Einzelheiten seine Länge eintragen, einfacher Weg.',
				why: 'Spannungsfall und Kurzschlussstrom folgen aus der Länge. Solange sie fehlt, wird eine angenommen und das gesagt.'
			},
			finding: {
				what: 'Einen der Befunde öffnen.',
				why: 'Er sagt, was falsch ist und was zu tun ist; geöffnet auch, warum es zählt, nach welcher Quelle, und aus welchen Werten er kommt.'
			}
		},
		bus: {
			open: {
				what: 'Einen Schaltplan mit abgesicherter Verteilerschiene öffnen. Das Beispiel hat eine.',
				why: 'Was gerade offen ist, bleibt unter „Schaltpläne“ aufbewahrt.'
			},
			select: { what: 'Die Schiene auf der Zeichnung auswählen.', why: 'Die Einzelheiten zeigen dann ihre Plätze und was jeder führt.' },
			ask: {
				what: 'In den Einzelheiten „Platz für Stromkreise suchen …“ drücken, oder die Taste L.',
				why: 'Ein Platz auf einer Schiene ist mehr als ein freier Bolzen: Bemessungsstrom, Reihenfolge, Abdeckung und Sicherung reden mit.'
			},
			fill: {
				what: 'Strom und Länge des neuen Stromkreises eintragen: zum Beispiel 8 A und 3 m.',
				why: 'Danach werden seine Sicherung und sein Leiter gewählt.'
			},
			take: {
				what: '„Jeden Weg versuchen“ drücken, die Angebote vergleichen und eines mit „So machen“ nehmen.',
				why: 'Jeder Weg wurde auf einer Kopie gezeichnet und mit allen Regeln geprüft, auch die verworfenen, mit dem Grund.'
			},
			undo: {
				what: 'Ansehen, was gezeichnet wurde. Gefällt es nicht: ein Schritt Rückgängig nimmt alles zurück.',
				why: 'Was das Programm erledigt, ist immer ein Schritt.'
			}
		},
		handover: {
			read: { what: 'Den ersten Befund öffnen.', why: 'Sie stehen nach Gefahr geordnet. Was oben steht, sollte zuerst weg.' },
			mend: {
				what: 'Einen der Wege zur Abhilfe nehmen, ihn von Hand beheben oder mit Begründung annehmen.',
				why: 'Was mit offenem Befund übergeben wird, sagt das auf dem ersten Blatt.'
			},
			block: {
				what: 'Ohne Auswahl in den Einzelheiten im Schriftfeld „Titel“ und „Gezeichnet von“ ausfüllen.',
				why: 'Sie stehen auf jedem Blatt. Nach einem Blatt ohne Namen kann niemand fragen.'
			},
			packet: {
				what: '„Übergeben“ drücken.',
				why: 'Zeichnung, Listen, Schilder und Prüfungen kommen aus demselben Schaltplan und können sich nicht widersprechen.'
			},
			save: {
				what: 'Abschnitte wählen und das PDF speichern oder drucken. Dann das Fenster schließen.',
				why: 'Neben jedem Wert des Modells ist ein leeres Feld: es wird vor Ort ausgefüllt.'
			}
		}
	}
};
