import type { Translation } from './translation.ts';
import type { ReadingsOffer, ShortDevice, ShortOffer, SuspectOffer } from '#editor';
import { ampsText, celsiusText, compactNumber, ohmsText, wattsText } from '#core/units';
import {
	betweenText,
	timeText,
	type assemblyTexts,
	type onSiteTexts,
	type readingTexts,
	type shortTexts,
	type timeTexts
} from '../on-site-texts.ts';

const listed = (names: readonly string[]): string =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const timeDe: Translation<typeof timeTexts> = {
	never: 'nie',
	after: (time) => `nach ${time}`,
	between: (from, to) => `zwischen ${from} und ${to}`
};

const throughText = ({ name, currentA, ratingA }: ShortDevice): string => `${ampsText(currentA)} durch ${name}, ${ampsText(ratingA)}`;

function verdict({ openings, nearest, withoutCurve, clears }: ShortOffer): string {
	const unknown =
		withoutCurve.length === 0
			? ''
			: ` Für ${listed(withoutCurve.map(({ name }) => name))} ist keine Kennlinie bekannt: auch dort kann es auslösen.`;
	if (openings.length === 0) {
		if (withoutCurve.length > 0)
			return `Sicher löst nichts aus: ${listed(withoutCurve.map(throughText))}, und die Kennlinie ist hier nicht bekannt. Den Hersteller fragen, wann sie auslöst.`;
		return nearest
			? `Nichts muss je auslösen: ${throughText(nearest)}.`
			: 'Nichts kann auslösen: keine Sicherung und kein Automat ist im Weg.';
	}
	const sure = openings.filter(({ latestS }) => latestS < Infinity);
	const maybe = openings.filter(({ latestS }) => latestS === Infinity);
	const opens = sure.map(({ name, earliestS, latestS }) => `${name} löst ${betweenText(earliestS, latestS)} aus`);
	const may = maybe.map(
		({ name, earliestS }) => `${name} kann ab ${timeText(earliestS)} auslösen${opens.length > 0 ? '' : ', oder gar nicht'}`
	);
	const others = maybe.length === 0 && withoutCurve.length === 0 ? '; die anderen bleiben geschlossen' : '';
	const whole = `${capital(listed([...opens, ...may]))}${others}.`;
	if (!clears) return `${whole} Nichts beendet den Kurzschluss mit Sicherheit.${unknown}`;
	return `${whole}${sure.length === 0 ? ' Eine davon beendet den Kurzschluss; welche, sagen ihre Bänder nicht.' : ''}${unknown}`;
}

export const shortDe: Translation<typeof shortTexts> = {
	open: 'Hier kurzschließen …',
	openHint: 'Hier einen Kurzschluss annehmen und sehen, was auslöst (X)',
	key: 'Kurzschluss an der Auswahl annehmen',
	title: (at) => (at === '' ? 'Ein Kurzschluss' : `Ein Kurzschluss an ${at}`),
	intro:
		'Alle Verbraucher sind aus, alle Schalter geschlossen. Der Strom wird berechnet, jede Sicherung erwärmt sich nach ihrem Band, und wenn eine ausgelöst hat, wird der Rest neu berechnet.',
	nothingSelected: 'Erst einen Bolzen oder Leiter der Plusseite auswählen.',
	at: 'Wo',
	atEnd: (stud) => `an ${stud}`,
	to: 'Geht nach',
	ofCircuit: (name) => `${name} (Rückleiter dieses Stromkreises)`,
	resistance: 'Widerstand des Kurzschlusses',
	resistances: [
		{ value: 0, text: '0 mΩ: ein Schraubenschlüssel' },
		{ value: 10, text: '10 mΩ' },
		{ value: 20, text: '20 mΩ' },
		{ value: 50, text: '50 mΩ: ein durchgescheuerter Draht' }
	],
	condition: 'Zustand',
	conditions: { greatest: 'Batterien voll, Kupfer kalt', least: 'Batterien im Betrieb, Kupfer heiß' },
	waiting: 'Dem Kurzschluss wird gefolgt …',
	failed: (reason) => `Es ließ sich nicht berechnen (${reason}).`,
	why: {
		gone: 'Diese Stelle ist mit nichts mehr verbunden.',
		'not-positive': 'Dies ist auf der Minusseite. Zwischen zwei Rückleitern fließt nichts; einen Bolzen oder Leiter der Plusseite nehmen.',
		'no-return': 'Daneben liegt kein Rückleiter, der Kurzschluss kann nirgendwohin.',
		'not-fed': 'Nichts speist hier einen Kurzschluss: es fließt kein Strom.'
	},
	verdict,
	flows: (amps, to) => `Zuerst ${ampsText(amps)} nach ${to}.`,
	unverified: 'Die Bänder sind ungeprüft:',
	strip: 'Wann jedes Gerät auslöst',
	stripOf: (name, fromS, toS, first) =>
		`${name}: ${toS === Infinity ? `ab ${timeText(fromS)}, oder nie` : betweenText(fromS, toS)}${first ? ', vielleicht zuerst' : ''}`,
	mayBeFirst: 'vielleicht zuerst',
	noOpenings: 'Kein Gerät löst aus, also gibt es keine Zeit zu zeigen.',
	steps: 'Schritt für Schritt',
	pace: 'Bänder verfolgt an ihrer',
	paces: { soonest: 'frühen Kante', middle: 'Mitte', latest: 'späten Kante' },
	step: (index, of) => `Schritt ${index + 1} von ${of}`,
	span: (fromS, toS) => {
		if (toS === Infinity) return fromS === 0 ? 'Von Beginn an, bis jemand es beendet' : `Ab ${timeText(fromS)}`;
		return fromS === 0 ? `Die ersten ${timeText(toS)}` : `Von ${timeText(fromS)} bis ${timeText(toS)}`;
	},
	stepCurrent: (amps) => (amps < 1 ? 'Der Kurzschluss ist beendet.' : `${ampsText(amps)} durch den Kurzschluss.`),
	opensThen: (name) => `Dann löst ${name} aus.`,
	previous: 'Voriger Schritt',
	next: 'Nächster Schritt',
	play: 'Schritte abspielen',
	pause: 'Anhalten',
	devices: 'Sicherungen und Automaten',
	device: 'Gerät',
	rating: 'Bemessung',
	current: 'Strom',
	noDevices: 'Kein Gerät führt etwas.',
	conductors: 'Leiter',
	conductor: 'Leiter',
	temperature: 'Am Ende',
	limit: 'Verträgt',
	noConductors: `Kein Leiter erwärmt sich um mehr als 1 K.`,
	more: (n) => `und ${n} weniger warme`,
	celsius: (value) => (value > 1083 ? 'geschmolzen' : celsiusText(Math.round(value))),
	tooHot: 'zu heiß',
	bound:
		'Nach 5 s verlässt Wärme das Kupfer; die Werte gelten für 5 s ohne das, eine obere Grenze für diese Zeit (adiabatisch, IEC 60949).',
	limitSource:
		'Was die Isolierung am Ende eines Kurzschlusses verträgt: IEC 60364-5-54 Tabelle 54.2. Dass Boots- und Fahrzeugleitungen darunter fallen, ist übliche Praxis.',
	startGreatest: 'Leiter beginnen so warm wie die Luft um sie.',
	startLeast: 'Leiter beginnen so warm, wie ihre Isolierung im Betrieb sein darf.',
	dark: 'Dunkel, obwohl eingeschaltet',
	noneDark: 'Kein Verbraucher ist dunkel.',
	mark: 'Auf der Zeichnung zeigen',
	withoutCurve: (names) => `Für ${names} ist hier keine Kennlinie bekannt, deshalb wird nichts darüber gesagt, wann sie auslöst.`
};

function suspectWords({ name, kind, between }: SuspectOffer): string {
	const ends = between.length === 2 ? ` (${between[0]} bis ${between[1]})` : '';
	switch (kind) {
		case 'conductor':
			return `Leiter ${name}${ends}, in seinem Kupfer oder an einem seiner Kabelschuhe`;
		case 'segment':
			return `die Schiene von ${name}${ends} oder eine Verbindungsstelle daran`;
		case 'fuse':
			return `${name}, in der Sicherung oder an ihren Kontakten`;
		case 'breaker':
		case 'switch':
		case 'protective':
			return `${name}, an den Kontakten`;
		case 'shunt':
			return `${name}, an einem seiner Bolzen`;
		case 'battery':
			return `Batterie ${name}, innen oder an ihren Polen`;
	}
}

export const readingDe: Translation<typeof readingTexts> = {
	tab: 'Messwerte',
	intro:
		'Den Betriebsfall herstellen, zwischen zwei Bolzen messen und eintragen, was das Messgerät zeigt. Daneben steht der Wert des Modells. Je mehr Bolzen gemessen sind, desto sicherer lässt sich die Stelle nennen.',
	case: 'Fall',
	noise: 'Das Messgerät schwankt um',
	noiseHint: 'Standardabweichung einer Messung: die Hälfte seiner letzten Stelle',
	noCase: 'Es gibt keinen Betriebsfall; erst einen hinzufügen.',
	caption: 'Messwerte in diesem Fall',
	red: 'Rote Spitze',
	black: 'Schwarze Spitze',
	model: 'Modell',
	reading: 'Messwert',
	difference: 'Abweichung',
	number: (index, what) => `${what} der Messung ${index + 1}`,
	remove: (index) => `Messung ${index + 1} herausnehmen`,
	add: 'Messung hinzufügen',
	addAll: 'Alle Bolzen hinzufügen',
	addAllHint: 'Eine Zeile für jeden Bolzen gegen den Minuspol der Batterie',
	removeAll: 'Alle herausnehmen',
	noRows: 'In diesem Fall ist noch nichts gemessen.',
	noModel: 'kein Weg',
	notANumber: 'Keine Spannung in Volt.',
	noSuchStud: (name) => `Kein Bolzen heißt „${name}“.`,
	paste: 'Mehrere Zeilen einfügen',
	pasteHint:
		'Je Zeile: rote Spitze, schwarze Spitze, wenn es eine andere ist, Volt. „B1 +; 12,84“. Nur Volt füllen die leeren Zeilen der Reihe nach.',
	take: 'Diese Zeilen nehmen',
	pasted: (taken, left) =>
		`${taken} übernommen.${left.length === 0 ? '' : ` Nicht verstanden: ${left.map((line) => `„${line}“`).join(', ')}. Namen wie auf der Zeichnung.`}`,
	verdictTitle: 'Was die Messwerte sagen',
	waiting: 'Wird verglichen …',
	failed: (reason) => `Es ließ sich nicht vergleichen (${reason}).`,
	verdict({ verdict: said, suspects }: ReadingsOffer): string {
		const [first] = suspects;
		switch (said) {
			case 'too-few':
				return 'Mindestens zwei Messwerte eintragen; mit mehr lässt sich die Stelle nennen.';
			case 'collapsed':
				return 'Dieser Fall hat keinen Arbeitspunkt, es gibt also nichts zu vergleichen. Verbraucher verringern oder einen anderen wählen.';
			case 'agrees':
				return 'Die Messwerte stimmen mit dem Modell überein, soweit das Messgerät es sagen kann.';
			case 'found':
				return `${capital(suspectWords(first!))}, erklärt die Abweichung.`;
			case 'several':
				return `Diese Messwerte unterscheiden ${suspects.length} Verdächtige nicht. Dort messen, wo sie am weitesten auseinanderliegen, unten.`;
			case 'none-explains':
				return first
					? 'Keine einzelne Verbindungsstelle und kein Leiter erklärt die Abweichung. Vielleicht sind es mehrere, oder etwas ist nicht wie gezeichnet; am nächsten kommt, was unten steht.'
					: 'Keine einzelne Verbindungsstelle und kein Leiter erklärt die Abweichung. Vielleicht sind es mehrere, oder etwas ist nicht wie gezeichnet.';
		}
	},
	suspect: suspectWords,
	figures: ({ extraOhm, uncertaintyOhm, heatW, currentA, explains }) =>
		`${ohmsText(extraOhm)} mehr als gezeichnet, ± ${ohmsText(uncertaintyOhm)}; ${wattsText(heatW)} Wärme bei ${ampsText(currentA)} in diesem Fall; erklärt ${Math.round(100 * explains)} %`,
	fitted: (batteryV, draw) =>
		`Mit angepasst: Batterien ${Math.abs(batteryV) < 0.0005 ? 'wie im Modell' : `${compactNumber(Math.abs(batteryV) * 1000, 2)} mV ${batteryV > 0 ? 'über' : 'unter'} dem Modell`}, Verbraucher ${Math.abs(draw) < 0.0005 ? 'wie auf dem Schild' : `nehmen ${compactNumber(Math.abs(draw) * 100, 2)} % ${draw > 0 ? 'mehr' : 'weniger'} auf`}.`,
	next: 'Als Nächstes messen',
	readNext: (name) => `${name} hinzufügen`,
	show: (name) => `${name} auf der Zeichnung zeigen`,
	showPlain: 'Auf der Zeichnung zeigen'
};

export const assemblyDe: Translation<typeof assemblyTexts> = {
	tab: 'Reihenfolge der Montage',
	intro:
		'Ein Schritt nach dem anderen: nichts steht unter Spannung, bevor sein Schutz sitzt. An einem Halt messen und erst weitermachen, wenn es stimmt.',
	empty: 'Der Schaltplan hat noch keine Teile.',
	progress: (done, of) => `${done} von ${of} Schritten erledigt`,
	reset: 'Alle Haken entfernen',
	resetQuestion: 'Alle Haken entfernen?',
	resetText: 'Die Haken dieses Schaltplans werden vergessen; der Schaltplan selbst bleibt, wie er ist.',
	resetYes: 'Alle entfernen',
	resetNo: 'Behalten',
	stop: 'Halt, bis',
	torque: 'Drehmoment',
	stack: 'Ab der Auflage',
	show: (index) => `Schritt ${index + 1} auf der Zeichnung zeigen`,
	showPlain: 'Zeigen',
	waiting: 'Schritte werden geordnet …',
	failed: (reason) => `Die Reihenfolge ließ sich nicht bilden (${reason}).`,
	kept: 'Die Haken werden in diesem Browser für diesen Schaltplan aufbewahrt.',
	torqueSource: 'Drehmomente sind aus der Tabelle der Gewinde; die Angabe eines Herstellers geht vor.'
};

export const onSiteDe: Translation<typeof onSiteTexts> = {
	open: 'Vor Ort',
	hint: 'Reihenfolge der Montage und Messwerte (O)',
	key: 'Reihenfolge der Montage und Messwerte',
	title: 'Vor Ort',
	tabs: 'Was vor Ort getan wird'
};
