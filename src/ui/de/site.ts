import type { Translation } from './translation.ts';
import type { siteTexts } from '../site-texts.ts';

export const siteDe: Translation<typeof siteTexts> = {
	site: 'Einbauort und Schutzart',
	siteSummary: 'Wärme, Wasser, Dämpfe, Abdeckungen',
	joints: 'Kabelschuhe und Verbindungsstellen',
	jointsSummary: 'Löcher, Drehmoment, Litzen',
	hole: (end) => `Loch des Kabelschuhs an ${end}`,
	fits: 'passend zum Bolzen',
	torque: (end) => `Gemessenes Drehmoment an ${end}`,
	notRecorded: 'nicht festgehalten',
	solid: 'Ein massiver Draht, keine Litze',
	noRules: 'Danach sieht hier keine Prüfung',
	noRule: (title, reason) => `${title}: nicht geprüft. ${reason}`
};
