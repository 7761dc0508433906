import type { Translation } from './translation.ts';
import type { insightTexts } from '../insight-texts.ts';
import { count } from './count.ts';

export const insightDe: Translation<typeof insightTexts> = {
	mend: {
		group: 'Wege zur Abhilfe',
		mend: 'Beheben',
		mendAnyway: 'Trotzdem so beheben',
		looking: 'Abhilfe wird gesucht …',
		failed: (reason) => `Eine Abhilfe ließ sich nicht ermitteln (${reason}).`,
		counts: ({ errorsBefore, errorsAfter, warningsBefore, warningsAfter }) =>
			`Fehler ${errorsBefore} → ${errorsAfter}, Warnungen ${warningsBefore} → ${warningsAfter}`,
		changes: 'Was sich ändern würde',
		cleared: 'Weg oder milder',
		added: 'Neu oder schlimmer',
		changed: 'Gleich, mit anderen Werten'
	},

	accept: {
		open: 'Annehmen …',
		again: 'Noch einmal annehmen …',
		hint: 'Er bleibt mit der Begründung in der Liste der angenommenen Befunde und öffnet sich wieder, wenn seine Werte um mehr als 5 % wandern.',
		reason: 'Begründung',
		by: 'Name',
		date: 'Datum',
		accept: 'Annehmen',
		cancel: 'Nicht annehmen',
		noDate: 'Das Datum fehlt.',
		takeBack: 'Zurücknehmen',
		group: 'Angenommen',
		onlyAccepted: 'Nichts ist offen: was gefunden wurde, ist angenommen; von wem und warum, steht unten.',
		who: (by, date) => `${by}, ${date}`,
		lapsed: 'war angenommen, aber die Werte sind gewandert'
	},

	ladder: {
		title: 'Wo die Spannung bleibt',
		case: 'Betriebsfall',
		waiting: 'Dem Strom wird gefolgt …',
		failed: (reason) => `Der Spannungsfall ließ sich nicht ermitteln (${reason}).`,
		lost: (volts) => `${volts} Spannungsfall hin und zurück`,
		share: (percent, nominalV) => `${percent} von ${nominalV} V`,
		side: (millivolts) => `zusammen ${millivolts}`,
		ends: (fromV, from, loadV, load) => `${fromV} an ${from}, ${loadV} an ${load}`,
		list: 'Jedes Element von der Quelle zum Verbraucher und zurück',
		there: (from) => `Von ${from}`,
		back: (to) => `Zurück zu ${to}`,
		kinds: {
			conductor: 'Leiter',
			joint: 'Verbindungsstelle',
			fuse: 'Sicherung',
			breaker: 'Automat',
			switch: 'Schalter',
			shunt: 'Messwiderstand',
			bar: 'Schiene'
		},
		beside: (name, amps, at) => `${name} kommt bei ${at} mit ${amps} dazu`
	},

	explain: {
		waiting: 'Wird nachgeschlagen …',
		none: 'Diesen Wert gibt es hier nicht.',
		failed: (reason) => `Er ließ sich nicht erklären (${reason}).`,
		inputs: 'Besteht aus',
		inCase: (name) => `in „${name}“`,
		row: (table, row) => `${table}, Zeile ${row}`,
		related: 'Siehe auch',
		sums: 'Woher die Werte kommen',
		unverified: 'noch ungeprüft',
		origins: { diagram: 'gezeichnet', assumed: 'angenommen', table: 'aus einer Tabelle', computed: 'berechnet' }
	},

	lens: {
		label: 'Einfärbung',
		none: 'Keine',
		names: {
			polarity: 'Polarität',
			loading: 'Auslastung',
			'volts-lost': 'Spannungsfall',
			protection: 'Schutz',
			'fault-current': 'Kurzschlussstrom',
			'temperature-rise': 'Temperatur'
		},
		legend: (title) => `Einfärbung: ${title}`,
		off: 'Einfärbung ausschalten',
		waiting: 'Farben erscheinen, sobald geprüft ist.',
		about: 'Was gezeigt wird',
		opens: 'Jedes Band lässt sich öffnen: wo es beginnt, warum dort, und was darin liegt.',
		silent: 'Eine dünne graue Linie: dazu sagt die Einfärbung nichts.',
		folded: 'Den Bereich schließen, um die Stufen zu sehen.',
		counted: (n) => count(n, 'Leiter', 'Leiter')
	},

	finding: {
		worstIn: (name) => `Am schlimmsten in „${name}“`
	},

	figures: {
		title: 'Werte',
		waiting: 'Werte erscheinen, sobald sie berechnet sind.',
		failed: (reason) => `Die Werte ließen sich nicht berechnen (${reason}).`,
		none: 'Dafür ist noch nichts berechnet: anschließen und einen Betriebsfall angeben.'
	},

	conductor: {
		ofAmperage: (percent) => `${percent} seiner Strombelastbarkeit`,
		hot: (volts, temperature) => `${volts} in warmem Zustand (${temperature})`,
		ofNominal: (percent, nominalV) => `${percent} von ${nominalV} V`,
		greatestDevice: 'Größtes erlaubtes Schutzgerät',
		surge: 'Größter Strom, Anläufe eingerechnet',
		byEnd: 'An jedem Ende',
		at: (stud) => `an ${stud}`,
		device: (name, amps) => `${name}, ${amps}`,
		limitsItself: (name, amps) => `${name}, begrenzt sich selbst auf ${amps}`,
		notFed: 'nichts speist es'
	},

	protection: {
		protects: 'Schützt',
		nothing: 'Noch keinen Leiter.',
		position: (name, n) => `${name}: ${n === 0 ? 'kein Leiter' : count(n, 'Leiter', 'Leiter')}`,
		halo: 'Auf der Zeichnung umrandet. Ein Leiter steht hier, wenn dieses Gerät einen Kurzschluss in ihm begrenzt.'
	}
};
