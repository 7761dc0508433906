import type { Translation } from './translation.ts';
import { CAUTIONS } from '#core/reports';
import { celsiusText, millimetresText } from '#core/units';
import type { texts } from '../texts.ts';
import { count } from './count.ts';

export const windowDe: Translation<typeof texts> = {
	app: 'Wireworthy',
	canvas:
		'Zeichnung. Pfeiltasten verschieben, was ausgewählt ist. Die Gliederung führt dieselben Dinge auf und lässt sich lesen und mit der Tastatur bedienen.',

	file: {
		group: 'Datei',
		name: 'Name des Schaltplans',
		untitled: 'Schaltplan ohne Namen',
		theFile: 'Die Datei',
		unsaved: 'Seit der letzten Änderung nicht gespeichert',
		new: 'Neu',
		open: 'Öffnen',
		save: 'Speichern',
		examples: 'Beispiele',
		newHint: 'Einen leeren Schaltplan beginnen',
		openHint: 'Eine Schaltplandatei von diesem Gerät öffnen',
		saveHint: 'Den Schaltplan als Datei auf diesem Gerät speichern',
		examplesHint: 'Erfundene Anlagen, mit Fehlern und behoben',
		saved: (name) => `${name} gespeichert.`,
		opened: (name) => `${name} geöffnet.`,
		unknownKinds: (n) =>
			n === 1
				? '1 Teil ist von einer Art, die diese Version nicht kennt; es bleibt erhalten, wird aber nicht geprüft.'
				: `${n} Teile sind von Arten, die diese Version nicht kennt; sie bleiben erhalten, werden aber nicht geprüft.`,
		mended: (n) => `${count(n, 'Verweis wurde', 'Verweise wurden')} berichtigt; sie stehen bei den Befunden.`,
		started: 'Leerer Schaltplan begonnen.',
		notOpened: (name) => `${name} wurde nicht geöffnet`,
		discard: 'Er enthält Änderungen, die nicht gespeichert sind.',
		discardTitle: 'Diesen Schaltplan verlassen?',
		discardSave: 'Speichern und verlassen',
		discardYes: 'Ohne Speichern verlassen',
		discardNo: 'Weiter bearbeiten'
	},

	edit: {
		group: 'Schritte',
		undo: 'Rückgängig',
		redo: 'Wiederholen',
		undoStep: (label) => `Rückgängig: ${label}`,
		redoStep: (label) => `Wiederholen: ${label}`,
		nothingToUndo: 'Nichts rückgängig zu machen',
		nothingToRedo: 'Nichts zu wiederholen',
		delete: 'Löschen',
		duplicate: 'Verdoppeln',
		rotate: 'Drehen',
		copy: 'Kopieren',
		cut: 'Ausschneiden',
		paste: 'Einfügen',
		selectAll: 'Alles auswählen',
		autoRoute: 'Neu verlegen',
		connectFrom: 'Von hier verbinden'
	},

	tools: {
		group: 'Werkzeug',
		select: 'Auswählen',
		connect: 'Verbinden',
		pan: 'Blatt verschieben',
		hint: {
			select: 'Ziehen verschiebt; über freies Papier ziehen wählt mehrere aus. Von einem Bolzen ziehen zeichnet einen Leiter.',
			pan: 'Ziehen verschiebt das Blatt.',
			connect: 'Den Bolzen anklicken, an dem der Leiter beginnt.',
			connectFrom: (stud) => `Von ${stud}: den Bolzen anklicken, an dem der Leiter endet, oder Escape drücken.`,
			place: (name) => `Anklicken, wohin das Teil gehört (${name}), oder Escape drücken.`
		},
		banner: {
			place: (name) => `Antippen, wohin das Teil kommt: ${name}`,
			connect: 'Den Bolzen antippen, an dem der Leiter beginnt',
			connectFrom: (stud) => `Von ${stud}: den Bolzen antippen, an dem er endet`,
			cancel: 'Abbrechen'
		}
	},

	view: {
		group: 'Ansicht',
		fit: 'Ganzer Schaltplan',
		zoomIn: 'Näher',
		zoomOut: 'Weiter weg',
		zoom: (factor) => `${Math.round(factor * 100)} %`,
		theme: { light: 'Hell', dark: 'Dunkel', system: 'Wie das Gerät' },
		themeButton: (name) => `Farbschema: ${name}`,
		close: 'Schließen',
		language: 'Sprache und Einheiten',
		panels: 'Bereiche',
		side: 'Einzelheiten und Befunde',
		split: 'Grenze zwischen Einzelheiten und Befunden'
	},

	empty: {
		first: 'Mit einer Batterie beginnen',
		then: 'Aus „Teile“ hierher ziehen. Dann eine Sicherung, einen Verbraucher und die Leiter hin und zurück.',
		examples: 'Oder ein Beispiel ansehen'
	},

	shelf: {
		title: 'Teile',
		search: 'Ein Teil suchen',
		hint: 'Ein Teil auf das Blatt ziehen, oder anklicken und dann seinen Platz anklicken. Enter setzt es in die Mitte.',
		placeFirst: (name) => `Enter setzt „${name}“ in die Mitte.`,
		none: (query) => `Kein Teil heißt „${query}“.`,
		groups: {
			sources: 'Batterien',
			charging: 'Laden',
			protection: 'Sicherungen und Automaten',
			distribution: 'Verteilung',
			loads: 'Verbraucher'
		}
	},

	outline: {
		title: 'Gliederung',
		tree: 'Teile, ihre Bolzen und was darauf liegt',
		empty: 'Hier ist noch nichts. Ein Teil aus „Teile“ nehmen; eine Batterie ist ein guter Anfang.',
		conductors: 'Leiter',
		toStud: (conductor, stud) => `${conductor} an ${stud}`,
		mountedOn: (stud) => `auf ${stud}`,
		connectHere: 'Hierhin verbinden',
		connecting: (stud) => `Den Bolzen wählen, an dem der Leiter von ${stud} endet.`,
		cancel: 'Nicht verbinden'
	},

	inspector: {
		title: 'Einzelheiten',
		several: (n) => `${n} Dinge ausgewählt`,
		common: 'Was mit allen geht',
		unknownKind: (kind) => `Diese Version kennt die Art „${kind}“ nicht. Das Teil bleibt, wie es ist, aber nichts daran wird geprüft.`,
		label: 'Kennzeichen',
		noLabel: 'Ohne Kennzeichen ist es in Befunden, Listen und auf der Zeichnung nicht von anderen zu unterscheiden.',
		labelled: (label) => (label.trim() === '' ? 'Das Kennzeichen ist leer.' : `Das Kennzeichen ist jetzt ${label.trim()}.`),
		labelHint:
			'Buchstabe und Zahl, wie auf dem Schild am Teil. G: Quelle, Q: Schalter, F: Schutz, T: Wandler, E: Verbraucher, M: Motor, B: Messung, X: Anschluss, W: Leiter (IEC 81346-2).',
		note: 'Notiz',
		ratings: 'Bemessungswerte',
		studs: 'Bolzen und Klemmen',
		noStuds: 'An dieses Teil lässt sich nichts anschließen.',
		sitsOn: 'Sitzt auf',
		sitsOnHint: 'Oder den Sicherungsblock auf einen Bolzen ziehen.',
		standsAlone: 'keinem Bolzen'
	},

	conductor: {
		title: (label) => (label === '' ? 'Leiter' : `Leiter ${label}`),
		ends: (from, to) => `${from} bis ${to}`,
		land: 'An andere Bolzen legen',
		from: 'Von',
		to: 'Bis',
		label: 'Beschriftung',
		labelHint: 'Wie an beiden Enden aufgedruckt',
		size: 'Querschnitt',
		system: 'Maßsystem der Querschnitte',
		awg: 'AWG',
		iec: 'mm²',
		length: 'Länge, einfacher Weg',
		lengthHint:
			'Entlang der Verlegung, nicht Luftlinie: 2,5 oder 250 cm, 8 ft, 18 in. Leer, solange nicht gemessen; dann wird eine Länge angenommen.',
		notALength: 'Das ist keine Länge: 2,5 oder 250 cm, 8 ft, 18 in schreiben.',
		notMeasured: 'nicht gemessen',
		insulation: 'Isolierung',
		insulationC: celsiusText,
		environment: 'Verläuft durch',
		byAreas: (where) => `Wie gezeichnet: ${where}`,
		environments: { outside: 'Gewöhnlichen Raum', 'engine-space': 'Maschinenraum' },
		bundle: 'Im Bündel von',
		bundleHint: 'Stromführende Leiter nebeneinander, dieser eingerechnet',
		sheathed: 'Auf ganzer Länge im Mantel oder Rohr',
		colour: 'Farbe',
		use: 'Verwendung',
		uses: { ordinary: 'Gewöhnlich', cranking: 'Anlasserzuleitung', spare: 'Isolierte Reserve' },
		figures: 'Werte',
		amperage: 'Strombelastbarkeit',
		continuous: 'Größter Dauerstrom',
		working: 'Betriebstemperatur',
		about: (celsius) => `etwa ${celsiusText(Math.round(celsius))}`,
		surge: 'Größter Strom aller Fälle',
		volts: 'Spannungsfall',
		letThrough: 'Durchlassstrom',
		protectedBy: 'Geschützt durch',
		unprotected: 'nichts',
		assumedLength: (length) => `Länge angenommen: ${length}`,
		wait: 'Werte erscheinen, sobald geprüft ist.',
		colours: {
			auto: 'Nach dem Farbschema',
			red: 'Rot',
			black: 'Schwarz',
			yellow: 'Gelb',
			green: 'Grün',
			'green-yellow': 'Grün-gelb',
			brown: 'Braun',
			blue: 'Blau',
			grey: 'Grau',
			white: 'Weiß',
			orange: 'Orange',
			violet: 'Violett',
			pink: 'Rosa',
			tan: 'Hellbraun'
		}
	},

	stud: {
		title: (name) => `Bolzen ${name}`,
		clamp: (name) => `Klemme ${name}`,
		order: 'Was darauf sitzt',
		orderHint: 'Von der Mutter bis zur Auflage, wie man es auseinandernimmt',
		top: 'Mutterseite',
		seat: 'Auflage',
		empty: 'Hier liegt noch nichts auf.',
		up: (what) => `${what} zur Mutter hin`,
		down: (what) => `${what} zur Auflage hin`,
		assumed: 'Scheibe und Mutter sind nicht gezeichnet; die üblichen werden angenommen.',
		threadLeft: 'Gewinde über der Mutter',
		tooShort: (mm) => `keines: es endet ${mm} unter der Oberkante der Mutter`,
		thread: 'Gewinde',
		rated: 'Bemessungsstrom',
		fault: 'Kurzschlussstrom',
		volts: 'Spannung',
		inCase: (name) => `in „${name}“`,
		hardware: { washer: 'Scheibe', 'lock-washer': 'Federring', nut: 'Mutter' },
		add: (what) => `${what} obenauf legen`,
		remove: (what) => `${what} entfernen`
	},

	settings: {
		title: 'Schaltplan',
		hint: 'Etwas auf dem Blatt auswählen, dann stehen seine Einzelheiten hier.',
		system: 'Anlage',
		summary: ({ nominalV, craft, negative }, profile) =>
			`${nominalV} V, ${windowDe.settings.crafts[craft]}, Minus ${windowDe.settings.negatives[negative].toLowerCase()}, ${profile}`,
		nominal: 'Nennspannung',
		craft: 'Eingebaut in',
		crafts: { vehicle: 'Fahrzeug oder Anhänger', boat: 'Boot', cabin: 'Hütte oder Station' },
		negative: 'Minuspol',
		negativeHint: 'Mit Chassis oder Rumpf verbunden oder davon isoliert',
		negatives: { bonded: 'Verbunden', insulated: 'Isoliert' },
		profile: 'Prüfen nach',
		scheme: 'Farbschema',
		schemes: (bonded) => ({
			abyc: 'Rot + / schwarz − (ABYC E-11)',
			'iec-60446': bonded ? 'Braun + / blau − (IEC 60446)' : 'Braun + / grau − (IEC 60446)',
			'iec-60445': 'Rot + / weiß − (IEC 60445:2017, ungeprüft)'
		}),
		schemeHints: {
			abyc: 'ABYC E-11 erlaubt auch gelb für Minus.',
			'iec-60446': 'Blau, wo der Minuspol verbunden ist, grau, wo er isoliert ist.',
			'iec-60445': 'Die Ausgabe 2017 wurde nicht eingesehen: noch ungeprüft.'
		},
		schemeUses: { positive: 'Plus', negative: 'Minus', bond: 'Potenzialausgleich' },
		outside: 'Temperatur im gewöhnlichen Raum',
		engine: 'Temperatur im Maschinenraum',
		block: 'Schriftfeld',
		fields: {
			title: 'Titel',
			supplementaryTitle: 'Zweiter Titel',
			legalOwner: 'Eigentümer',
			identificationNumber: 'Zeichnungsnummer',
			craft: 'Fahrzeug, Boot oder Ort',
			revisionIndex: 'Revision',
			dateOfIssue: 'Ausgabedatum',
			documentType: 'Dokumentart',
			creator: 'Gezeichnet von',
			approvalPerson: 'Geprüft von'
		}
	},

	profile: {
		title: 'Werte des eigenen Prüfprofils',
		base: 'Abgeleitet von',
		baseHint: 'Werte, die nicht geändert sind, kommen von dort.',
		count: (n) =>
			n === 0
				? 'Noch ist kein Wert geändert: geprüft wird nach dem Profil, von dem es abgeleitet ist.'
				: `${count(n, 'Wert', 'Werte')} geändert, nur für diesen Schaltplan.`,
		reset: (title) => `Veröffentlichten Wert nehmen: ${title}`,
		resetAll: 'Alle veröffentlichten Werte nehmen',
		changedFrom: (value, unit) => `In diesem Schaltplan angegeben, anstelle von ${`${value} ${unit}`.trim()}`,
		groups: {
			protection: 'Sicherungen und Automaten',
			'voltage-drop': 'Spannungsfall',
			conductors: 'Leiter',
			factors: 'Faktoren',
			amperage: 'Tabellen der Strombelastbarkeit'
		},
		confidence: {
			verified: 'in der Quelle gelesen',
			'two-sources': 'in zwei Quellen gelesen',
			derived: 'berechnet',
			memory: 'noch ungeprüft',
			'common-practice': 'keine veröffentlichte Regel',
			given: 'in diesem Schaltplan angegeben'
		}
	},

	cases: {
		title: 'Betriebsfälle',
		hint: 'Was eingeschaltet ist, und wie viel. 100 % ist die Bemessungsaufnahme eines Verbrauchers oder die Bemessungsleistung einer Quelle; 0 % ist aus. Ein leeres Feld folgt „Alle Verbraucher“ oder „Alle Quellen“.',
		name: 'Name',
		duration: 'Dauert',
		durations: { continuous: 'über 3 Minuten', surge: 'unter 3 Minuten' },
		battery: 'Batterien sind',
		batteries: { rest: 'geladen, wie im Betrieb', low: 'fast leer' },
		all: { loads: 'Alle Verbraucher', sources: 'Alle Quellen' },
		roles: {
			batteries: 'Batterien angeschlossen',
			switches: 'Schalter geschlossen',
			devices: 'Sicherungen und Automaten eingesetzt',
			sources: 'Quellen',
			loads: 'Verbraucher'
		},
		starts: 'läuft an',
		startsHint: 'Ohne Haken laufen alle eingeschalteten Verbraucher zugleich an.',
		add: 'Betriebsfall hinzufügen',
		remove: (name) => `Betriebsfall ${name} entfernen`,
		levels: (name) => `Anteile in „${name}“`,
		none: 'Noch kein Betriebsfall. Ohne einen fließt kein Strom, und nur der Aufbau lässt sich prüfen.',
		newName: (n) => `Fall ${n}`
	},

	findings: {
		title: 'Befunde',
		severities: { fatal: 'Gefahr', error: 'Fehler', warning: 'Warnung', note: 'Hinweis' },
		plural: {
			fatal: (n) => count(n, 'Gefahr', 'Gefahren'),
			error: (n) => count(n, 'Fehler', 'Fehler'),
			warning: (n) => count(n, 'Warnung', 'Warnungen'),
			note: (n) => count(n, 'Hinweis', 'Hinweise')
		},
		filter: 'Nur zeigen',
		showAll: 'Alle zeigen',
		remedy: 'Abhilfe',
		why: 'Warum es zählt',
		source: 'Quelle',
		unverified: 'noch ungeprüft',
		unverifiedHint: (figures) =>
			`${figures.length > 0 ? figures.join('; ') : 'Ein Wert dahinter'}: im veröffentlichten Text nicht eingesehen. Vor Verwendung nachschlagen.`,
		assumptions: 'Für diesen Befund angenommen',
		goTo: 'Auf der Zeichnung zeigen',
		checking: 'Wird geprüft …',
		failed: 'Die Prüfung ist abgebrochen.',
		noneYet: 'Die erste Prüfung läuft.',
		emptyDiagram:
			'Noch nichts zu prüfen. Eine Batterie auf das Blatt setzen, dann eine Sicherung, einen Verbraucher und die Leiter dazwischen: Befunde erscheinen beim Zeichnen.',
		clean: (profile) => `Nichts gefunden nach ${profile}. Das heißt nicht, dass es sicher ist: unten steht, was nicht geprüft wurde.`,
		mended: 'Beim Öffnen berichtigt',
		notChecked: 'Nicht geprüft',
		assumed: 'Angenommen',
		against: (profile) => `Nach ${profile}`,
		dockRight: 'Befunde nach rechts legen',
		dockBottom: 'Befunde nach unten legen',
		announce: (n) => (n === 0 ? 'Keine Befunde.' : `${count(n, 'Befund', 'Befunde')}.`)
	},

	status: {
		ready: 'Geprüft',
		checking: 'Wird geprüft …',
		stale: 'Prüfung steht aus',
		stopped: 'Prüfung abgebrochen',
		parts: (n) => count(n, 'Teil', 'Teile'),
		conductors: (n) => count(n, 'Leiter', 'Leiter'),
		selected: (n) => `${n} ausgewählt`,
		countsHint: 'Was auf der Zeichnung ist, eines nach dem anderen',
		caution: 'Eine Zeichenhilfe, keine Abnahme.',
		cautionMore: 'Vorsicht'
	},

	cautions: {
		title: 'Bevor nach einer Zeichnung gebaut wird',
		items: CAUTIONS,
		checked: 'Geprüft wird an der Zeichnung, wie sie ist',
		checkedItems: [
			'Strombelastbarkeit jedes Leiters gegen seinen Strom und gegen die Sicherung oder den Automaten, der ihn schützt',
			'Ob jeder Leiter geschützt ist, an jedem Ende, das gespeist werden kann, und wie weit von der Quelle',
			'Kurzschlussstrom gegen das Abschaltvermögen jeder Sicherung und jedes Automaten, ihre Bemessungsspannung, und welche von zwei hintereinander zuerst auslöst',
			'Spannungsfall zwischen Quelle und Verbraucher und zurück, auch an Wechselrichtern und Ladegeräten',
			'Was auf jedem Bolzen sitzt: Anzahl, Reihenfolge, Gewinde, Abdeckung, Kabelschuhe nebeneinander',
			'Batterien: parallele Stränge, Ladespannung und Ladestrom, Entladestrom, Energie für einen Tag, wo Betriebsstunden angegeben sind',
			'Fehlende Rückleiter, vertauschte Pole, Kurzschlüsse, Sackgassen, Verbindungen mit Chassis oder Rumpf',
			'Farben, Kennzeichen und Längen'
		],
		notChecked: 'Nicht geprüft',
		notCheckedItems: [
			'Blitzschlag, Korrosion, elektromagnetische Störungen',
			'Scheuern, Zugentlastung und alles andere, was Handarbeit ist',
			'Ob die gekauften Teile die eingetragenen Bemessungswerte haben'
		],
		ofThisDiagram: 'In diesem Schaltplan ebenfalls nicht geprüft'
	},

	help: {
		title: 'Hilfe und Tastenkürzel',
		steps: [
			'Teile von links auf das Blatt ziehen.',
			'Von Bolzen zu Bolzen ziehen zeichnet einen Leiter; Plus und Minus sind getrennte Leiter.',
			'Rechts Längen und Bemessungswerte eintragen. Befunde folgen beim Zeichnen.'
		],
		starts: 'Geführte Einstiege',
		stepsTitle: 'In drei Schritten',
		shortcuts: 'Tastenkürzel',
		notInFields: 'Nicht beim Tippen in einem Feld.',
		turn: 'Ausgewählte Teile drehen, mit Umschalt andersherum',
		nudge: (mm, far) => `Ausgewählte Teile um ${millimetresText(mm)} verschieben, mit Umschalt um ${millimetresText(far)}`,
		nudgeFromOutline: 'Aus der Gliederung: ausgewählte Teile verschieben',
		escape: 'Werkzeug weglegen; dann nichts auswählen; aus einem Feld zurück auf das Blatt',
		gestures: 'Auf dem Blatt',
		byMouse: 'Maus',
		byTouch: 'Finger',
		gestureRows: [
			{ what: 'Auswählen', mouse: 'Klicken; Umschalt nimmt dazu, oder einen Rahmen über freies Papier ziehen', touch: 'Antippen' },
			{ what: 'Teil verschieben', mouse: 'Ziehen', touch: 'Ziehen' },
			{
				what: 'Leiter zeichnen',
				mouse: 'Von Bolzen zu Bolzen ziehen',
				touch: 'Von Bolzen zu Bolzen ziehen; oder Verbinden, dann beide antippen'
			},
			{
				what: 'Sicherungsblock aufsetzen',
				mouse: 'Auf einem Bolzen loslassen',
				touch: 'Auf einem Bolzen loslassen; aus „Teile“: antippen, dann den Bolzen'
			},
			{ what: 'Leiter biegen', mouse: 'Eine gerade Strecke ziehen', touch: 'Eine gerade Strecke ziehen' },
			{ what: 'Ende umlegen', mouse: 'Leiter auswählen, seinen Griff ziehen', touch: 'Leiter auswählen, seinen Griff ziehen' },
			{ what: 'Blatt verschieben', mouse: 'Mitteltaste, Alt oder Leertaste und ziehen; Rad', touch: 'Freies Papier ziehen' },
			{ what: 'Vergrößern', mouse: 'Strg und Rad, oder zwei Finger', touch: 'Zwei Finger' },
			{ what: 'Weitere Befehle', mouse: 'Rechtsklick', touch: 'Gedrückt halten' },
			{
				what: 'Befund lesen',
				mouse: 'Sein Zeichen anklicken; noch einmal für den nächsten dort',
				touch: 'Sein Zeichen antippen; noch einmal für den nächsten dort'
			}
		]
	},

	examples: {
		title: 'Beispiele',
		intro: 'Erfundene Anlagen, jede wie vorgefunden, mit Fehlern zum Ansehen, und wie instand gesetzt.'
	},

	menu: { title: 'Befehle' },

	notice: { close: 'Weiter' },

	fields: {
		needed: 'Hier wird eine Zahl gebraucht.',
		notANumber: 'Das ist keine Zahl.',
		whole: 'Hier wird eine ganze Zahl gebraucht.',
		kept: (text, problem, value) =>
			`„${text}“ wurde nicht übernommen. ${problem.replace(/\.$/, '')}.${value === '' ? '' : ` Es bleibt bei ${value}.`}`,
		range: (min, max, unit = '') =>
			max === null
				? `Mindestens ${min} ${unit}`.trim()
				: min === null
					? `Höchstens ${max} ${unit}`.trim()
					: `Von ${min} bis ${max} ${unit}`.trim(),
		notKnown: 'nicht bekannt',
		unset: 'leer'
	},

	lateDialog: {
		title: 'Einen Moment',
		loading: 'Wird vorbereitet …',
		again: 'Noch einmal versuchen',
		notLoaded: (reason) =>
			`Dieser Teil des Programms ließ sich nicht laden (${reason}). Verbindung prüfen, schließen und noch einmal versuchen.`
	}
};
