import type { Translation } from './translation.ts';
import type { keepingTexts } from '../keeping-texts.ts';
import type { FaultKind, News } from '#keeping';
import { count } from './count.ts';

/** Was geschehen ist, und was zu tun ist. */
const FAULTS: Record<FaultKind, { readonly what: string; readonly remedy: string }> = {
	full: {
		what: 'Auf diesem Gerät ist kein Platz mehr für die letzten Änderungen',
		remedy:
			'Den Schaltplan jetzt als Datei speichern. Dann Platz schaffen: unter „Schaltpläne“ den Papierkorb leeren oder Speicher freigeben. Es wird von selbst noch einmal versucht.'
	},
	newer: {
		what: 'Die Schaltpläne auf diesem Gerät wurden von einer neueren Version dieses Programms aufbewahrt',
		remedy:
			'Alle Tabs des Programms schließen und neu öffnen, um diese Version zu bekommen. Sie sind unberührt; bis dahin als Datei speichern.'
	},
	unavailable: {
		what: 'Dieser Browser bewahrt für diese Seite nichts auf',
		remedy: 'In einem privaten Fenster, oder wo Websitedaten verboten sind, geht die Arbeit mit dem Tab verloren. Als Datei speichern.'
	},
	closed: {
		what: 'Der Browser hat den Speicher der Schaltpläne geschlossen',
		remedy: 'Es wird von selbst noch einmal versucht. Bleibt es dabei: als Datei speichern und die Seite neu laden.'
	},
	elsewhere: {
		what: 'Ein anderer Tab bearbeitet diesen Schaltplan',
		remedy: 'Mit „Hier bearbeiten“ anfordern oder den anderen Tab schließen.'
	},
	gone: {
		what: 'Der Schaltplan ist nicht mehr auf diesem Gerät',
		remedy: 'Vielleicht wurde er in einem anderen Tab weggeworfen.'
	},
	failed: {
		what: 'Die letzten Änderungen ließen sich auf diesem Gerät nicht aufbewahren',
		remedy: 'Es wird von selbst noch einmal versucht. Zur Sicherheit den Schaltplan als Datei speichern.'
	}
};

const NEWS: Record<News['kind'], string> = {
	'your-turn': 'Dieser Tab bearbeitet den Schaltplan jetzt.',
	'handed-over': 'Ein anderer Tab hat diesen Schaltplan angefordert und bearbeitet ihn jetzt. Alle Änderungen wurden aufbewahrt.',
	'taken-away': 'Ein anderer Tab hat diesen Schaltplan übernommen. Alle Änderungen waren aufbewahrt.',
	'no-answer': 'Der andere Tab antwortet nicht.',
	stays: 'Der andere Tab hat Änderungen, die er noch nicht aufbewahren konnte, und arbeitet weiter. Zuerst dort nachsehen.',
	'put-back': 'Der Schaltplan war von diesem Gerät verschwunden; er wurde aus dem, was hier offen ist, wiederhergestellt.'
};

export const keepingDe: Translation<typeof keepingTexts> = {
	state: {
		kept: 'Aufbewahrt',
		keptHint: 'Jede Änderung wird sofort in diesem Browser aufbewahrt. Speichern schreibt eine Datei.',
		keeping: 'Wird aufbewahrt …',
		notKept: 'Nicht aufbewahrt',
		reading: 'Schreibgeschützt'
	},

	fault: ({ kind, reason }) => {
		const { what, remedy } = FAULTS[kind];
		const said = kind === 'failed' && reason !== '' ? ` (${reason.replace(/\.$/, '')})` : '';
		return `${what}${said}. ${remedy}`;
	},
	news: ({ kind }) => NEWS[kind],
	copied:
		'Ein anderer Tab hat diesen Schaltplan übernommen, bevor die letzten Änderungen aufbewahrt waren. Sie gehen hier als zweiter Schaltplan gleichen Namens weiter.',

	reading: {
		banner: 'Dieser Schaltplan wird in einem anderen Tab bearbeitet. Hier ist zu sehen, wie er sich ändert.',
		refused:
			'Ein anderer Tab bearbeitet diesen Schaltplan; hier lässt sich nichts ändern. „Hier bearbeiten“ drücken, um in diesem Tab weiterzumachen.',
		editHere: 'Hier bearbeiten',
		asked: 'Angefragt …',
		forceTitle: 'Der andere Tab antwortet nicht',
		force:
			'Er schläft vielleicht oder hängt. Hier lässt sich trotzdem weiterarbeiten; Änderungen, die er noch nicht aufbewahrt hat, kommen dann in einen eigenen Schaltplan.',
		forceYes: 'Trotzdem hier bearbeiten',
		forceNo: 'Weiter nur lesen'
	},

	resumed: (name) => `${name} geöffnet, wie zuletzt geändert.`,
	lost: (n) =>
		`${n === 1 ? 'Der letzte Schritt ließ' : `Die letzten ${n} Schritte ließen`} sich nicht lesen und ${n === 1 ? 'fehlt' : 'fehlen'}: dieser Teil des Speichers war beschädigt. Alles davor ist da.`,
	opening: 'Was zuletzt offen war, wird noch geholt.',
	unreadable:
		'Er ließ sich nicht lesen: was davon aufbewahrt ist, ist beschädigt. Er bleibt unter „Schaltpläne“; eine frühere Version lässt sich vielleicht noch öffnen.',

	disk: {
		changedTitle: (name) => `${name} wurde von einem anderen Programm geändert`,
		onSave: 'Seit dem Öffnen oder Speichern hier hat etwas anderes diese Datei geschrieben. Speichern würde das überschreiben.',
		overwrite: 'Überschreiben',
		elsewhere: 'Als andere Datei speichern',
		cancel: 'Nicht speichern',
		onFocus: 'Was jetzt in der Datei steht, lässt sich ansehen; das ist ein Schritt, und Rückgängig bringt zurück, was hier offen ist.',
		load: 'Inhalt der Datei zeigen',
		stay: 'Behalten, was offen ist',
		loaded: (name) => `Gezeigt wird jetzt, was in ${name} steht.`,
		step: (name) => `${name} übernehmen`
	},

	diagrams: {
		button: 'Schaltpläne',
		buttonHint: 'Alle in diesem Browser aufbewahrten Schaltpläne',
		title: 'Schaltpläne',
		search: 'Einen Schaltplan suchen',
		none: 'Noch ist nichts aufbewahrt. Ein Schaltplan kommt mit seiner ersten Änderung hierher.',
		noneFound: (query) => `Kein Schaltplan heißt „${query}“.`,
		list: 'Aufbewahrte Schaltpläne',
		open: 'gerade offen',
		untitled: 'Schaltplan ohne Namen',
		card: (parts, conductors) => `${count(parts, 'Teil', 'Teile')}, ${count(conductors, 'Leiter', 'Leiter')}`,
		changed: (date) => `geändert ${date}`,
		binnedOn: (date) => `im Papierkorb seit ${date}`,
		duplicate: 'Verdoppeln',
		copyOf: (name) => `${name} (Kopie)`,
		rename: 'Umbenennen',
		name: 'Neuer Name',
		store: 'Namen übernehmen',
		cancel: 'Abbrechen',
		versions: 'Versionen',
		bin: 'In den Papierkorb',
		restore: 'Zurücklegen',
		showBin: (n) => `Papierkorb (${n})`,
		leaveBin: 'Zurück zu den Schaltplänen',
		binEmpty: 'Der Papierkorb ist leer.',
		emptyBin: 'Papierkorb leeren',
		emptyTitle: 'Papierkorb leeren?',
		emptyText: (n) => `${count(n, 'Schaltplan', 'Schaltpläne')} mit allen Versionen ${n === 1 ? 'ist' : 'sind'} dann endgültig weg.`,
		emptyYes: 'Endgültig wegwerfen',
		emptyNo: 'Behalten',
		emptied: (n) => `${count(n, 'Schaltplan', 'Schaltpläne')} endgültig weggeworfen.`,
		binned: (name) => `${name} liegt im Papierkorb und lässt sich zurücklegen.`,
		restored: (name) => `${name} ist wieder da.`,
		duplicated: (name) => `${name} angelegt.`,
		renamed: (name) => `Er heißt jetzt ${name}.`,
		exportAll: 'Alle als eine Datei speichern',
		importAll: 'Aus einer Datei hinzufügen …',
		exported: (n, unreadable) =>
			`${count(n, 'Schaltplan', 'Schaltpläne')} in einer Datei gespeichert.${unreadable.length === 0 ? '' : ` Nicht lesbar und ausgelassen: ${unreadable.join(', ')}.`}`,
		imported: (n, refused) =>
			`${count(n, 'Schaltplan', 'Schaltpläne')} hinzugefügt.${refused.length === 0 ? '' : ` Ausgelassen: ${refused.join(' ')}`}`,
		notImported: 'Nichts wurde hinzugefügt',
		close: 'Schließen',
		archiveName: (date) => `Wireworthy Schaltpläne ${date}`
	},

	storage: {
		promised: 'Der Browser hat zugesagt, sie nicht zu löschen.',
		notPromised: 'Der Browser darf sie löschen, wenn der Speicher knapp wird; was bleiben muss, als Datei speichern.',
		unknown: 'Der Browser sagt nicht, wie lange er sie aufbewahrt; was bleiben muss, als Datei speichern.',
		where: 'Schaltpläne werden in diesem Browser auf diesem Gerät aufbewahrt und nirgends sonst.',
		used: (used) => `${used} belegt.`
	},

	versions: {
		title: (name) => `Versionen von ${name}`,
		back: 'Alle Schaltpläne',
		list: 'Versionen, neueste zuerst',
		none: 'Noch ist keine Version aufbewahrt. Eine wird bei jedem Speichern aufbewahrt, alle zehn Minuten Arbeit, und bevor zu einer anderen zurückgegangen wird.',
		restore: 'Hierhin zurückgehen',
		restoreHint: 'Ein Schritt, den Rückgängig zurücknimmt',
		openFirst: 'Den Schaltplan öffnen, um zu einer Version zurückzugehen.',
		unreadable: 'Diese Version lässt sich nicht lesen.',
		drawing: (date) => `Die Zeichnung vom ${date}`,
		step: (date) => `zur Version vom ${date} zurückgehen`,
		why: {
			saved: 'als Datei gespeichert',
			worked: 'während der Arbeit aufbewahrt',
			'before-restoring': 'vor dem Zurückgehen',
			opened: 'wie zuerst geöffnet',
			mended: 'nach dem Berichtigen'
		}
	}
};
