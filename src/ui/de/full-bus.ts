import type { Translation } from './translation.ts';
import type { fullBusTexts, positionTexts, sizingTexts } from '../full-bus-texts.ts';
import { count } from './count.ts';

export const fullBusDe: Translation<typeof fullBusTexts> = {
	open: 'Platz für Stromkreise suchen …',
	key: 'Platz für Stromkreise auf einer Schiene suchen',
	openHint: 'Platz für weitere Stromkreise auf dieser Schiene suchen (L)',
	title: (bus) => (bus === '' ? 'Platz für weitere Stromkreise' : `Platz für weitere Stromkreise auf ${bus}`),
	intro:
		'Angeben, was dazukommen soll. Jeder Weg, es anzuschließen, wird auf einer Kopie des Schaltplans gezeichnet und mit allen Regeln geprüft; dann vergleichen und einen nehmen.',
	bus: 'Schiene',
	noBus:
		'Auf der Zeichnung ist noch keine abgesicherte Verteilerschiene. Eine aus „Teile“ auf das Blatt setzen, anschließen und noch einmal fragen.',
	free: (names) => `Nicht voll: ${names} noch frei. Dieser Platz wird zuerst versucht, die anderen daneben.`,
	full: 'Jeder abgesicherte Platz ist belegt.',

	built: 'Die Anlage ist',
	builtAlready: 'schon gebaut',
	notBuilt: 'noch nicht gebaut',
	builtHint: 'In einer gebauten zählt, was auseinanderzunehmen ist; in einer nur gezeichneten kostet es nichts.',

	circuit: (index) => `Stromkreis ${index + 1}`,
	name: 'Name',
	nameFor: (index) => `NEU ${index + 1}`,
	current: 'Strom',
	length: 'Länge, einfacher Weg',
	fuse: 'Sicherung, mindestens',
	fuseEmpty: 'nach dem Strom',
	critical: 'Kritisch: an den engen Grenzwert des Spannungsfalls gehalten',
	continuous: 'Läuft drei Stunden oder länger am Stück',
	source: 'Speist die Schiene: ein Ladegerät oder Laderegler',
	add: 'Noch ein Stromkreis',
	most: 'Höchstens vier auf einmal.',
	remove: (name) => `${name} weglassen`,
	ask: 'Jeden Weg versuchen',
	askAgain: 'Noch einmal versuchen',
	missing: 'Jeder Stromkreis braucht seinen Strom und seine Länge.',
	changed: 'Die Antworten unten gelten dem, was vorher gefragt war.',

	trying: 'Jeder Weg wird versucht …',
	tried: (done, of) => `Weg ${done + 1} von ${of} wird versucht …`,
	cancel: 'Anhalten',
	failed: (reason) => `Es ließ sich nicht ermitteln (${reason}).`,
	answers: (feasible, refused) =>
		feasible === 0
			? `Von ${count(refused, 'Weg', 'Wegen')} ist keiner ohne eigenen Fehler.`
			: `${count(feasible, 'Weg', 'Wege')} ohne eigenen Fehler, der beste zuerst; ${refused} verworfen.`,
	none: 'Den Strom senken, den Weg verkürzen oder erst Platz schaffen: unten steht, was jeweils dagegenspricht.',

	everywhere: 'Gleich welcher',
	findings: (n) => count(n, 'Befund', 'Befunde'),
	everywhereHint: 'Diese bringen die Stromkreise selbst mit; kein Anschluss vermeidet sie, und keiner wird deshalb schlechter eingestuft.',
	rank: (n) => `${n}`,
	best: 'Bester',
	steps: 'Was sich ändert',
	buys: 'Zu kaufen',
	disturbed: 'Berührt',
	undisturbed: 'Nichts Vorhandenes wird angefasst.',
	stays: 'Danach frei',
	freeAfter: (positions, ends) =>
		positions + ends === 0
			? 'nichts'
			: [positions > 0 ? count(positions, 'Platz', 'Plätze') : '', ends > 0 ? count(ends, 'Endbolzen', 'Endbolzen') : '']
					.filter(Boolean)
					.join(', '),
	adds: 'Befunde, die kommen',
	clears: 'Befunde, die gehen',
	addsNone: 'Keine eigenen.',
	watch: 'Zu beachten',
	asks: 'Nur vor Ort zu sagen',
	why: 'Warum er hier steht',
	cost: (total) => `zählt ${total}; weniger ist besser`,
	costRow: (what, cost) => `${what}: ${cost}`,
	take: 'So machen',
	taken: (title) => `${title.charAt(0).toLowerCase()}${title.slice(1)}`,
	picture: (title) => `Wie sich die Zeichnung ändert: ${title}`,
	pictureWaiting: 'Wird gezeichnet …',
	pictureNone: 'Auf der Zeichnung ist nichts zu sehen.',
	look: 'Wie es aussähe',
	closer: 'Größer',
	smaller: 'Kleiner',
	more: (n) => `${count(n, 'weiteren Weg', 'weitere Wege')} zeigen`,
	fewer: 'Weniger zeigen',
	refused: 'Verworfen',
	refusedHint: 'Ebenfalls versucht, und warum nicht.',
	shortcuts: 'Abkürzungen, die nie angeboten werden',
	bar: (amps, rated) => `Schiene ${amps} von ${rated}`
};

export const positionDe: Translation<typeof positionTexts> = {
	open: 'Plätze ordnen …',
	openHint: 'Die Reihenfolge der Stromkreise finden, die die Schiene am wenigsten belastet',
	title: (bus) => `Reihenfolge der Stromkreise auf ${bus}`,
	intro:
		'Ladegeräte neben den Verbrauchern, die sie speisen, halten Strom von der Schiene fern. Die Reihenfolge ist exakt: alle werden verglichen.',
	keepEnds: 'Die Endbolzen lassen, wie sie sind',
	waiting: 'Alle Reihenfolgen werden verglichen …',
	failed: (reason) => `Es ließ sich nicht ermitteln (${reason}).`,
	none: 'Dieses Teil hat keine Schiene mit Plätzen.',
	best: 'Die Reihenfolge ist so gut wie jede andere: mit Umlegen wäre nichts gewonnen.',
	place: 'Platz',
	now: 'Jetzt',
	then: 'Am besten',
	segment: (a, b) => `Schiene ${a} bis ${b}`,
	nothing: 'nichts',
	greatest: 'Größter Strom in der Schiene',
	heat: 'Wärme in der Schiene, alle Fälle',
	ofRated: (amps, rated) => `${amps} von ${rated}`,
	moved: (n) => `${count(n, 'Leiter oder Block zieht um', 'Leiter und Blöcke ziehen um')}, jeder mit seiner Sicherung und seinem Namen.`,
	take: 'So ordnen',
	label: (bus) => `Stromkreise auf ${bus} ordnen`,
	picture: (bus) => `Wie ${bus} aussähe`,
	caption: 'Stromkreise auf der Schiene, jetzt und in der besten Reihenfolge'
};

export const sizingDe: Translation<typeof sizingTexts> = {
	open: 'Alles bemessen …',
	openHint: 'Am wenigsten Kupfer und die Sicherungen dazu (S)',
	key: 'Alles bemessen',
	title: 'Alles bemessen',
	intro:
		'Die dünnsten Leiter und kleinsten Sicherungen, die in jedem Betriebsfall jede Regel bestehen. Was festgehalten ist, bleibt: Leiter oder Teile mit Sicherungen lassen sich in ihren Einzelheiten festhalten.',
	waiting: 'Alles wird bemessen …',
	failed: (reason) => `Es ließ sich nicht ermitteln (${reason}).`,
	done: 'Alles hat schon seine Größe.',
	copper: (before, after) => `Kupfer ${before} kg → ${after} kg`,
	conductors: 'Leiter',
	fuses: 'Sicherungen',
	name: 'Was',
	from: 'Jetzt',
	to: 'Dann',
	why: 'Weil',
	kept: (names) => `Festgehalten: ${names}.`,
	left: 'Was Größen nicht beheben',
	take: (n) => `${count(n, 'Größe', 'Größen')} ändern`,
	label: 'Leiter und Sicherungen bemessen',
	pinConductor: 'Diesen Querschnitt behalten, wenn alles bemessen wird',
	pinFuses: 'Diese Sicherungen behalten, wenn alles bemessen wird'
};
