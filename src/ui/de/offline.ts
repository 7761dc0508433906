import type { Translation } from './translation.ts';
import type { offlineTexts } from '../offline-texts.ts';

export const offlineDe: Translation<typeof offlineTexts> = {
	update: {
		ready: 'Eine neue Version ist bereit. Sie gilt, sobald die Seite neu geladen wird.',
		now: 'Jetzt laden',
		later: 'Später'
	},
	about: {
		title: 'Über Wireworthy',
		version: (version) => `Version ${version}`,
		privacy:
			'Nichts verlässt dieses Gerät: die Seite fragt keine andere Adresse, es gibt kein Konto, und niemand wird gezählt. Einmal geöffnet, läuft sie ohne Netz.',
		licences: 'Woraus es gebaut ist',
		lead: 'Teile dieser Programme und Schriften stecken in dieser Seite. Dank an alle, die sie geschrieben haben.',
		licence: (licence) => `Lizenz: ${licence}`,
		failed: 'Die Liste ließ sich nicht holen. Die Seite neu laden, sobald ein Netz da ist.'
	}
};
