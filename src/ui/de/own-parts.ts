import type { Translation } from './translation.ts';
import type { ownPartTexts } from '../own-parts/texts.ts';
import { count } from './count.ts';

const parts = (n: number): string => count(n, 'Teil', 'Teile');

export const ownPartsDe: Translation<typeof ownPartTexts> = {
	shelf: {
		title: 'Eigene Teile',
		none: 'Fehlt hier etwas? Selbst machen: Umriss, Bolzen, was sie innen verbindet und was es verbraucht oder liefert.',
		make: 'Teil machen',
		bring: 'Einlesen',
		bringHint: 'Eine Datei mit Teilen übernehmen',
		send: 'Ausgeben',
		sendHint: 'Die eigenen Teile als Datei sichern',
		edit: (name) => `${name} ändern`,
		fromDiagram: 'In diesem Plan, nicht in Ihrem Regal',
		notRead: (reason) => `Die eigenen Teile konnten nicht gelesen werden. ${reason} Die im Plan sind nicht betroffen.`,
		damaged: (n) => `${parts(n)} im Regal ${n === 1 ? 'konnte' : 'konnten'} nicht gelesen werden und ${n === 1 ? 'fehlt' : 'fehlen'} hier.`
	},

	maker: {
		titleNew: 'Ein Teil machen',
		titleEdit: (name) => `${name} ändern`,
		previewOf: (name, studs) => `Zeichnung von ${name} mit ${count(studs, 'Bolzen oder Klemme', 'Bolzen und Klemmen')}`,
		kind: 'Beginnen mit',
		kindHint: 'Bolzen und Werte für den Anfang; alles lässt sich ändern.',
		starts: {
			plain: 'einem leeren Gehäuse mit zwei Bolzen',
			load: 'etwas, das Strom verbraucht',
			source: 'etwas, das lädt oder versorgt',
			battery: 'einer Batterie',
			converter: 'einem Wandler',
			switch: 'einem Schalter oder Relais',
			fuses: 'einer Schiene mit Sicherungen'
		},
		resumed: 'So war es beim letzten Mal.',
		anew: 'Neu beginnen',
		body: 'Name und Umriss',
		studs: 'Bolzen und Klemmen',
		links: 'Verbindungen im Inneren',
		linksHint: 'Was die Bolzen innen verbindet: Schienen, Sicherungen, Schalter. Innere Punkte sind für das, was keinen Bolzen erreicht.',
		devices: 'Was es tut',
		devicesHint: 'Steht hier nichts, gibt es den Strom nur weiter.',
		limits: 'Grenzen und Gebrauch',
		site: 'Wo es ist',
		addStud: 'Bolzen hinzufügen',
		addLink: {
			plain: 'Schiene oder Leitung hinzufügen',
			switch: 'Schalter hinzufügen',
			shunt: 'Messwiderstand hinzufügen',
			fuse: 'Sicherung hinzufügen',
			breaker: 'Automaten hinzufügen'
		},
		linkKinds: { plain: 'Schiene oder Leitung', switch: 'Schalter', shunt: 'Messwiderstand', fuse: 'Sicherung', breaker: 'Automat' },
		addDevice: {
			load: 'Verbraucher hinzufügen',
			source: 'Quelle hinzufügen',
			battery: 'Batterie hinzufügen',
			converter: 'Wandler hinzufügen'
		},
		deviceKinds: { load: 'Verbraucher', source: 'Quelle', battery: 'Batterie', converter: 'Wandler' },
		remove: (what) => `${what} entfernen`,
		rowName: (what, n) => `${what} ${n}`,
		stud: 'Bolzen',
		inside: (n) => `innerer Punkt ${n}`,
		choose: 'einen Bolzen wählen',
		ends: (from, to) => `${from} bis ${to}`,
		faults: (n) =>
			n === 1 ? 'Eines ist noch zu ändern, bevor es bleiben kann:' : `${n} Dinge sind noch zu ändern, bevor es bleiben kann:`,
		sound: 'Nichts ist daran falsch.',
		keep: 'Behalten',
		keepAndPlace: 'Behalten und einsetzen',
		change: 'Ändern',
		changeAll: (n) => `Auch ${n === 1 ? 'das andere gleiche Teil' : `die anderen ${n} gleichen Teile`} in diesem Plan ändern`,
		onShelf: 'Auch in Ihrem Regal behalten, für andere Pläne auf diesem Gerät',
		takeOff: 'Aus dem Regal nehmen',
		takeOffQuestion: (name) => `${name} aus dem Regal nehmen?`,
		takeOffText: 'Gleiche Teile in Plänen bleiben, wie sie sind.',
		takeOffYes: 'Herausnehmen',
		takeOffNo: 'Drin lassen',
		sendOne: 'Ausgeben'
	},

	open: 'Aufbau ändern…',
	kept: (name) => `${name} ist in Ihrem Regal.`,
	changed: (name, n) => `${name}: ${parts(n)} im Plan geändert.`,
	takenOff: (name) => `${name} ist nicht mehr in Ihrem Regal.`,
	exported: (file) => `${file} gesichert.`,
	imported: (n) => `${parts(n)} in Ihr Regal gestellt.`,
	alreadyThere: (n) => (n === 1 ? 'Das Teil ist schon in Ihrem Regal.' : `Alle ${n} Teile sind schon in Ihrem Regal.`),
	refusedTitle: (name) => `${name} wurde nicht übernommen`,
	refusedOk: 'Schließen',
	notKept: (reason) => `Das Teil konnte auf diesem Gerät nicht behalten werden. ${reason}`
};
