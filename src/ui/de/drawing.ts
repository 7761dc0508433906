import type { Translation } from './translation.ts';
import type { drawingKeyTexts } from '../drawing/key-texts.ts';
import type { drawingTexts } from '../drawing/texts.ts';

export const drawingKeyDe: Translation<typeof drawingKeyTexts> = {
	open: 'Zeichenhilfen',
	openHint: 'Raster und Hilfslinien, Bereiche, Notizen, ein Bild darunter, Anordnen',
	gridKey: 'Raster zeigen oder verbergen, mit Umschalt die Hilfslinien',
	alignKey: 'Ausgewählte Teile an dieser Seite ausrichten',
	grid: (on) =>
		on ? 'Das Raster ist sichtbar; Teile rasten darauf ein.' : 'Das Raster ist verborgen; Teile liegen, wo sie abgelegt werden.',
	guides: (on) => (on ? 'Was verschoben wird, richtet sich an Nachbarn aus.' : 'Was verschoben wird, beachtet seine Nachbarn nicht.')
};

export const drawingDe: Translation<typeof drawingTexts> = {
	line: 'Ausrichten',
	align: {
		left: 'Linke Kanten ausrichten',
		centre: 'Mitten übereinander',
		right: 'Rechte Kanten ausrichten',
		top: 'Oberkanten ausrichten',
		middle: 'Mitten nebeneinander',
		bottom: 'Unterkanten ausrichten'
	},
	distribute: { across: 'Gleiche Abstände von links nach rechts', down: 'Gleiche Abstände von oben nach unten' }
};
