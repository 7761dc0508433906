import type { Translation } from './translation.ts';
import type { drawnAsTexts } from '../handoff/drawn-as-texts.ts';
import type { findTexts } from '../find/texts.ts';
import type { voiceTexts } from '../findings/voice-texts.ts';
import type { outlineTexts } from '../outline/texts.ts';
import type { viewsTexts } from '../views-texts.ts';
import { windowDe } from './window.ts';

const { severities } = windowDe.findings;

export const viewsDe: Translation<typeof viewsTexts> = {
	symbols: 'Schaltzeichen',
	symbolsHint: 'Schaltzeichen (IEC 60617) oder maßstäbliche Umrisse',
	symbolsOn:
		'Schaltzeichen statt Umrissen; die Leiter bleiben, wo sie sind. Die Zeichen sind aus dem Gedächtnis nach IEC 60617 gezeichnet und noch nicht nachgeprüft.',
	symbolsOff: 'Umrisse im Maßstab.',
	notLoaded: 'Die Schaltzeichen konnten nicht geholt werden. Die Verbindung prüfen und noch einmal versuchen.',
	find: 'Suchen',
	findHint: 'Ein Teil, einen Leiter, einen Bolzen oder einen Befund suchen'
};

export const drawnAsDe: Translation<typeof drawnAsTexts> = {
	label: 'Teile gezeichnet als',
	unverified: 'Die Schaltzeichen sind aus dem Gedächtnis nach IEC 60617 gezeichnet und noch nicht nachgeprüft.',
	ways: { outlines: 'Umrisse, maßstäblich', symbols: 'Schaltzeichen' }
};

export const findDe: Translation<typeof findTexts> = {
	title: 'Suchen',
	field: 'Auf der Zeichnung suchen',
	placeholder: 'F3, Bilgenpumpe, W12, B1 +, 35 mm², überlastet …',
	results: 'Was gefunden wurde',
	kinds: { part: 'Teil', conductor: 'Leiter', stud: 'Bolzen', area: 'Bereich', note: 'Anmerkung', finding: 'Befund' },
	between: (from, to) => `${from} bis ${to}`,
	carries: (things) => `trägt ${things}`,
	bare: 'nichts angeschlossen',
	hint: 'Kennzeichen, Beschriftung, Teil eines Namens, Querschnitt oder ein Wort eines Befunds eingeben. Pfeiltasten wählen, die Eingabetaste geht hin.',
	hintTouch: 'Auf das Gesuchte tippen, um hinzugehen.',
	emptyDiagram: 'Auf der Zeichnung ist noch nichts. Ein Teil aus „Teile“ nehmen; danach ist es hier mit Namen und Kennzeichen zu finden.',
	none: (query) => `Nichts auf der Zeichnung heißt „${query}“, und kein Befund sagt das.`,
	inHelp: 'Eine Taste oder Geste suchen',
	notInHelp: (query) => `Keine Taste oder Geste ist mit „${query}“ beschrieben.`,
	noneHint: 'Ein einzelnes Wort versuchen, ein Kennzeichen wie F3 oder einen Querschnitt wie 35 mm².',
	found: (n, shown) => (n > shown ? `${n} gefunden, die nächsten ${shown} werden gezeigt.` : `${n} gefunden.`)
};

export const outlineDe: Translation<typeof outlineTexts> = {
	conductors: (n) => `Leiter (${n})`,
	findings: (n) => `Befunde (${n})`,
	way: (from, to, size) => `${from} bis ${to}, ${size}`,
	severity: (severity) => severities[severity],
	renaming: (name) => `Neuer Name für ${name}. Die Eingabetaste übernimmt ihn, Escape lässt ihn.`,
	renamed: (name) => `Heißt jetzt ${name}.`,
	size: (name, size) => `${name} hat jetzt ${size}.`,
	largest: (name, size) => `${name} hat ${size}: einen größeren Querschnitt gibt es nicht.`,
	smallest: (name, size) => `${name} hat ${size}: einen kleineren Querschnitt gibt es nicht.`,
	keys: 'Pfeiltasten gehen durch den Baum; mit Alt verschieben sie das Teil. Auf einem Leiter führt der Pfeil nach rechts zu seinem anderen Ende. F2 benennt um, Entf entfernt. C auf einem Bolzen beginnt einen Leiter, C auf einem anderen beendet ihn. Plus und Minus machen einen Leiter dicker und dünner. Die Eingabetaste zeigt einen Befund.'
};

export const voiceDe: Translation<typeof voiceTexts> = {
	one: (severity, message) => `Neu (${severities[severity]}): ${message}`,
	more: (n) => `Und ${n} ${n === 1 ? 'weiterer neuer Befund' : 'weitere neue Befunde'}.`,
	gone: (n) => (n === 1 ? 'Ein Befund ist erledigt.' : `${n} Befunde sind erledigt.`),
	none: 'Kein Befund ist übrig.'
};
