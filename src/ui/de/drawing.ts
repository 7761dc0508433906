import type { Translation } from './translation.ts';
import type { drawingKeyTexts } from '../drawing/key-texts.ts';
import type { drawingTexts } from '../drawing/texts.ts';

export const drawingKeyDe: Translation<typeof drawingKeyTexts> = {
	open: 'Zeichenhilfen',
	openHint: 'Raster und Hilfslinien, Bereiche, Notizen, ein Bild unter der Zeichnung, Anordnen',
	openKey: 'Zeichenhilfen: Raster, Bereiche, Notizen, ein Bild darunter, Anordnen',
	gridKey: 'Raster zeigen oder verbergen, mit Umschalt die Hilfslinien',
	alignKey: 'Ausgewählte Teile an dieser Seite ausrichten',
	groupKey: 'Auswahl gruppieren, mit Umschalt die Gruppe auflösen',
	lockKey: 'Auswahl sperren oder entsperren',
	repeatKey: 'Letzten Befehl auf die Auswahl wiederholen, oder noch eines setzen',
	noteKey: 'Notiz schreiben; von einem Teil ziehen, um sie darauf zu richten',
	areaKey: 'Bereich zeichnen',
	rerouteKey: 'Ausgewählte Leiter neu führen, oder alle',
	group: 'Gruppieren',
	keys: { duplicate: 'Strg D', group: 'Strg G', ungroup: 'Strg Umschalt G', lock: 'Strg L' },
	ungroup: 'Gruppe auflösen',
	lock: 'Sperren',
	unlock: 'Entsperren',
	noteHere: 'Hier eine Notiz schreiben',
	noteTo: 'Dazu eine Notiz schreiben',
	newNote: 'Notiz',
	grid: (on) =>
		on ? 'Das Raster ist sichtbar; Teile rasten darauf ein.' : 'Das Raster ist verborgen; Teile liegen, wo sie abgelegt werden.',
	guides: (on) => (on ? 'Was verschoben wird, richtet sich an Nachbarn aus.' : 'Was verschoben wird, beachtet seine Nachbarn nicht.'),
	hint: {
		area: 'Von Ecke zu Ecke des Bereichs ziehen, oder klicken für einen von üblicher Größe.',
		note: 'Klicken, wo die Notiz stehen soll, oder vom Teil dorthin ziehen, um das es geht.',
		scale: 'Zwei Punkte des Bildes anklicken, deren Abstand bekannt ist.'
	},
	areas: 'Bereiche, Notizen, Bilder',
	areaWord: 'Bereich',
	noteWord: 'Notiz',
	pictureWord: 'Bild darunter',
	lockedWord: 'gesperrt'
};

export const drawingDe: Translation<typeof drawingTexts> = {
	title: 'Zeichenhilfen',
	line: 'Ausrichten',
	align: {
		left: 'Linke Kanten ausrichten',
		centre: 'Mitten übereinander',
		right: 'Rechte Kanten ausrichten',
		top: 'Oberkanten ausrichten',
		middle: 'Mitten nebeneinander',
		bottom: 'Unterkanten ausrichten'
	},
	distribute: { across: 'Gleiche Abstände von links nach rechts', down: 'Gleiche Abstände von oben nach unten' },

	moving: 'Beim Verschieben',
	grid: 'Raster von 5 mm',
	guides: 'Linien und Abstände zu Nachbarn',
	freely: 'Mit gedrückter Alt-Taste liegt etwas genau dort, wo die Hand ist.',

	areas: 'Bereiche',
	areasHint:
		'Ein Bereich sagt, was um die Dinge in ihm herum ist: Temperatur, Maschinenraum, Benzindampf, Wasser. Einen wählen und auf dem Blatt aufziehen. Teile zählen nach ihrer Mitte, Leiter nach ihren Enden und nach von Hand gesetzten Knicken; was am Teil oder Leiter selbst eingestellt ist, geht vor.',
	kinds: {
		batteryBay: 'Batteriefach',
		engineSpace: 'Maschinenraum',
		cabin: 'Kabine',
		berth: 'Schlafplatz',
		fuelLocker: 'Benzin- oder Gaskasten',
		outside: 'Außen',
		bilge: 'Bilge'
	},

	words: 'Notizen',
	note: 'Notiz schreiben',
	noteHint: 'Klicken, wo sie stehen soll, oder vom Teil oder Leiter dorthin ziehen, um den es geht.',

	picture: 'Ein Bild unter der Zeichnung',
	pictureHint:
		'Ein Foto des Fachs oder ein Plan. Zwei Punkte mit bekanntem Abstand darauf angeben, dann ist es maßstäblich. Es bleibt in der Diagrammdatei.',
	choosePicture: 'Bild wählen…',

	arrange: 'Anordnen',
	reroute: 'Alle Leiter neu führen',
	rerouteHint: 'Nimmt von Hand gesetzte Knicke weg; die gesperrter Leiter bleiben.',
	auto: 'Für mich anordnen…',
	autoHint: 'Ordnet alle Teile entlang des Stromwegs, zum Ansehen, bevor etwas geändert wird.',

	area: {
		title: (label) => (label.trim() === '' ? 'Bereich' : `Bereich ${label.trim()}`),
		label: 'Name',
		like: 'Wie es dort ist',
		spaces: {
			engine: 'Maschinenraum',
			fuel: 'Benzin oder Gas kann sich sammeln',
			sleeping: 'Hier schlafen Menschen',
			wet: 'Spritzwasser oder Regen',
			flooded: 'Wasser kann stehen'
		},
		ambient: 'Temperatur der Luft',
		asDiagram: 'wie im Diagramm',
		place: 'Platz auf der Zeichnung',
		left: 'Von links',
		top: 'Von oben',
		width: 'Breite',
		height: 'Höhe',
		inside: (parts, conductors) =>
			`${parts === 1 ? '1 Teil steht' : `${parts} Teile stehen`} darin, und ${conductors === 1 ? '1 Leiter hat' : `${conductors} Leiter haben`} seine Umgebung.`
	},

	noteForm: { title: 'Notiz', text: 'Worte', to: 'Zeigt auf', nothing: 'nichts', width: 'Breite' },

	pictureForm: {
		title: 'Bild unter der Zeichnung',
		label: 'Name',
		opacity: 'Deckkraft',
		scale: 'Maßstab durch zwei Punkte setzen',
		size: (width, height) => `${width} × ${height} auf der Zeichnung`,
		scaleTitle: 'Wie weit liegen die beiden Punkte auseinander?',
		distance: 'Abstand',
		distanceHint: 'Im wirklichen Fach, wie gemessen.',
		apply: 'Maßstab setzen'
	},

	arranged: {
		title: 'Für mich anordnen',
		working: 'Es wird ermittelt, wohin alles gehört…',
		now: 'Wie es ist',
		then: 'Angeordnet',
		moved: (n) =>
			`${n === 1 ? '1 Teil wird' : `${n} Teile werden`} verschoben. Gesperrte Teile und solche in Bereichen bleiben, wo sie sind; Blöcke bleiben auf ihren Bolzen.`,
		nothing: 'Nichts würde verschoben: Was weder gesperrt noch in einem Bereich ist, liegt schon in Ordnung.',
		bends: 'Von Hand gesetzte Knicke werden weggenommen, außer an gesperrten Leitern.',
		apply: 'Anordnen',
		failed: (reason) => `Es ließ sich keine Anordnung ermitteln (${reason}). Die Zeichnung ist, wie sie war.`
	}
};
