/** Sentences of what is done beside the system itself: a short tried out, readings compared, assembly ticked off. */
import type { ReadingsOffer, ShortDevice, ShortOffer, SuspectOffer } from '#editor';
import { ampsText, celsiusText, compactNumber, ohmsText, wattsText } from '#core/units';
import { catalogue } from './language/catalogue.ts';

const listed = (names: readonly string[]): string =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const timeTexts = catalogue('time', {
	never: 'never',
	after: (time: string) => `after ${time}`,
	between: (from: string, to: string) => `between ${from} and ${to}`
});

/** Seconds in the unit that fits them: "7 ms", "0.5 s", "20 min". */
export function timeText(seconds: number): string {
	if (seconds === Infinity) return timeTexts.never;
	if (seconds >= 7200) return `${compactNumber(seconds / 3600, 2)} h`;
	if (seconds >= 120) return `${compactNumber(seconds / 60, 2)} min`;
	return seconds < 0.1 ? `${compactNumber(seconds * 1000, 2)} ms` : `${compactNumber(seconds, 2)} s`;
}

/** "between 7 and 68 ms", "between 20 ms and 0.5 s". */
export function betweenText(fromS: number, toS: number): string {
	const [from, to] = [timeText(fromS), timeText(toS)];
	if (from === to) return timeTexts.after(from);
	const [number, unit] = from.split(' ');
	return timeTexts.between(unit === to.split(' ')[1] ? number! : from, to);
}

const throughText = ({ name, currentA, ratingA }: ShortDevice): string => `${ampsText(currentA)} through ${name}, ${ampsText(ratingA)}`;

/** What comes of a short, in a sentence or two. */
function verdict({ openings, nearest, withoutCurve, clears }: ShortOffer): string {
	const unknown =
		withoutCurve.length === 0 ? '' : ` No curve is known for ${listed(withoutCurve.map(({ name }) => name))}: it may open too.`;
	if (openings.length === 0) {
		if (withoutCurve.length > 0)
			return `Nothing is known to open: ${listed(withoutCurve.map(throughText))}, and its curve is not known here. Ask its maker when it trips.`;
		return nearest ? `Nothing need ever open: ${throughText(nearest)}.` : 'Nothing can open: no fuse or breaker is in the way.';
	}
	const sure = openings.filter(({ latestS }) => latestS < Infinity);
	const maybe = openings.filter(({ latestS }) => latestS === Infinity);
	const opens = sure.map(({ name, earliestS, latestS }) => `${name} opens ${betweenText(earliestS, latestS)}`);
	const may = maybe.map(
		({ name, earliestS }) => `${name} may open from ${timeText(earliestS)} on${opens.length > 0 ? '' : ', or not at all'}`
	);
	const others = maybe.length === 0 && withoutCurve.length === 0 ? '; the others stay closed' : '';
	const whole = `${capital(listed([...opens, ...may]))}${others}.`;
	if (!clears) return `${whole} Nothing is sure to end the short.${unknown}`;
	return `${whole}${sure.length === 0 ? ' One of them ends the short; which, their bands do not say.' : ''}${unknown}`;
}

export const shortTexts = catalogue('short', {
	open: 'Drop a short here…',
	openHint: 'Drop a short here, and see what opens (X)',
	key: 'Drop a short at what is selected',
	title: (at: string) => (at === '' ? 'A short' : `A short at ${at}`),
	intro:
		'All loads are off, all switches closed. The current is worked out, each fuse warms by its own band, and when one has opened the rest is worked out anew.',
	nothingSelected: 'Select a stud or a conductor of the positive side first.',
	at: 'Where',
	atEnd: (stud: string) => `at ${stud}`,
	to: 'Goes to',
	ofCircuit: (name: string) => `${name} (return of this circuit)`,
	resistance: 'Resistance of the short',
	resistances: [
		{ value: 0, text: '0 mΩ: a spanner' },
		{ value: 10, text: '10 mΩ' },
		{ value: 20, text: '20 mΩ' },
		{ value: 50, text: '50 mΩ: a chafed wire' }
	],
	condition: 'Condition',
	conditions: { greatest: 'Batteries full, copper cold', least: 'Batteries in use, copper hot' },
	waiting: 'Following the short…',
	failed: (reason: string) => `It could not be worked out (${reason}).`,
	why: {
		gone: 'This place is not wired to anything any more.',
		'not-positive': 'This is on the negative side. A short between two returns lets nothing flow; try a positive stud or conductor.',
		'no-return': 'No return lies beside it, so a short has nowhere to go.',
		'not-fed': 'Nothing feeds a short here: no current flows.'
	},
	verdict,
	flows: (amps: number, to: string) => `${ampsText(amps)} into ${to} at first.`,
	unverified: 'Bands are unverified:',
	strip: 'When each device opens',
	stripOf: (name: string, fromS: number, toS: number, first: boolean) =>
		`${name}: ${toS === Infinity ? `from ${timeText(fromS)} on, or never` : betweenText(fromS, toS)}${first ? ', may be first' : ''}`,
	mayBeFirst: 'may be first',
	noOpenings: 'No device opens, so there is no time to show.',
	steps: 'Step by step',
	pace: 'Bands followed at their',
	paces: { soonest: 'early edge', middle: 'middle', latest: 'late edge' },
	step: (index: number, of: number) => `Step ${index + 1} of ${of}`,
	span: (fromS: number, toS: number) => {
		if (toS === Infinity) return fromS === 0 ? 'From the start on, until somebody ends it' : `From ${timeText(fromS)} on`;
		return fromS === 0 ? `The first ${timeText(toS)}` : `From ${timeText(fromS)} to ${timeText(toS)}`;
	},
	stepCurrent: (amps: number) => (amps < 1 ? 'The short is out.' : `${ampsText(amps)} through the short.`),
	opensThen: (name: string) => `Then ${name} opens.`,
	previous: 'Previous step',
	next: 'Next step',
	play: 'Play the steps',
	pause: 'Pause',
	devices: 'Fuses and breakers',
	device: 'Device',
	rating: 'Rating',
	current: 'Current',
	noDevices: 'No device carries anything.',
	conductors: 'Conductors',
	conductor: 'Conductor',
	temperature: 'At the end',
	limit: 'Stands',
	noConductors: 'No conductor warms by more than 1 °C.',
	more: (count: number) => `and ${count} less warm`,
	celsius: (value: number) => (value > 1083 ? 'melted' : celsiusText(Math.round(value))),
	tooHot: 'too hot',
	bound: 'After 5 s heat leaves the copper; the figures are for 5 s without any, an upper bound for that time (adiabatic, IEC 60949).',
	limitSource:
		'What insulation stands at the end of a short: IEC 60364-5-54 Table 54.2. That boat and vehicle wire falls under it is common practice.',
	startGreatest: 'Conductors start as warm as the air around them.',
	startLeast: 'Conductors start as warm as their insulation may be in service.',
	dark: 'Dark, though switched on',
	noneDark: 'No load is dark.',
	mark: 'Show on the drawing',
	withoutCurve: (names: string) => `No curve is known here for ${names}, so nothing is said of when it opens.`
});

const mOhm = (ohms: number): string => ohmsText(ohms);

function suspectWords({ name, kind, between }: SuspectOffer): string {
	const ends = between.length === 2 ? ` (${between[0]} to ${between[1]})` : '';
	switch (kind) {
		case 'conductor':
			return `conductor ${name}${ends}, in its copper or at one of its lugs`;
		case 'segment':
			return `the bar of ${name}${ends}, or a joint on it`;
		case 'fuse':
			return `${name}, in the fuse or at its contacts`;
		case 'breaker':
			return `${name}, at its contacts`;
		case 'switch':
			return `${name}, at its contacts`;
		case 'shunt':
			return `${name}, at one of its studs`;
		case 'battery':
			return `battery ${name}, inside or at its posts`;
		case 'protective':
			return `${name}, at its contacts`;
	}
}

export const readingTexts = catalogue('reading', {
	tab: 'Test readings',
	intro:
		'Bring about the case, measure between two studs, and type what the meter shows. Beside each stands the model’s value. The more studs are read, the surer the joint can be named.',
	case: 'Case',
	noise: 'The meter wanders by',
	noiseHint: 'Standard deviation of one reading: half of its last steps',
	noCase: 'There is no operating case; add one first.',
	caption: 'Readings in this case',
	red: 'Red lead',
	black: 'Black lead',
	model: 'Model',
	reading: 'Reading',
	difference: 'Differs',
	number: (index: number, what: string) => `${what} of reading ${index + 1}`,
	remove: (index: number) => `Take out reading ${index + 1}`,
	add: 'Add a reading',
	addAll: 'Add every stud',
	addAllHint: 'One row for each stud against the battery’s negative',
	removeAll: 'Take out all',
	noRows: 'No reading in this case yet.',
	noModel: 'no path',
	notANumber: 'Not a number of volts.',
	noSuchStud: (name: string) => `No stud is called “${name}”.`,
	paste: 'Paste several rows',
	pasteHint: 'A row each: red lead, black lead if it is another, volts. “B1 +; 12.84”. Volts alone fill the blank rows in turn.',
	take: 'Take these rows',
	pasted: (taken: number, left: readonly string[]) =>
		`${taken} taken.${left.length === 0 ? '' : ` Not understood: ${left.map((line) => `“${line}”`).join(', ')}. Names are as on the drawing.`}`,
	verdictTitle: 'What the readings say',
	waiting: 'Comparing…',
	failed: (reason: string) => `It could not be compared (${reason}).`,
	verdict({ verdict, suspects }: ReadingsOffer): string {
		const [first] = suspects;
		switch (verdict) {
			case 'too-few':
				return 'Type at least two readings; more let the joint be named.';
			case 'collapsed':
				return 'This case has no operating point, so there is nothing to compare with. Lower its loads, or choose another.';
			case 'agrees':
				return 'The readings agree with the model, within what the meter can tell.';
			case 'found':
				return `${capital(suspectWords(first!))}, explains the difference.`;
			case 'several':
				return `These readings cannot tell ${suspects.length} suspects apart. Read where they differ most, below.`;
			case 'none-explains':
				return first
					? 'No single joint or conductor explains the difference. Several may be at fault, or something is not as drawn; the nearest is below.'
					: 'No single joint or conductor explains the difference. Several may be at fault, or something is not as drawn.';
		}
	},
	suspect: suspectWords,
	figures: ({ extraOhm, uncertaintyOhm, heatW, currentA, explains }: SuspectOffer) =>
		`${mOhm(extraOhm)} more than drawn, ± ${mOhm(uncertaintyOhm)}; ${wattsText(heatW)} of heat at ${ampsText(currentA)} in this case; explains ${Math.round(100 * explains)} %`,
	fitted: (batteryV: number, draw: number) =>
		`Fitted along: batteries ${Math.abs(batteryV) < 0.0005 ? 'as in the model' : `${compactNumber(Math.abs(batteryV) * 1000, 2)} mV ${batteryV > 0 ? 'above' : 'below'} the model`}, loads ${Math.abs(draw) < 0.0005 ? 'as on their plates' : `drawing ${compactNumber(Math.abs(draw) * 100, 2)} % ${draw > 0 ? 'more' : 'less'}`}.`,
	next: 'Read next',
	readNext: (name: string) => `Add ${name}`,
	show: (name: string) => `Show ${name} on the drawing`,
	showPlain: 'Show on the drawing'
});

export const assemblyTexts = catalogue('assembly', {
	tab: 'Assembly order',
	intro:
		'One step after the other: nothing is live before its protection is in place. At a stop, measure, and go on only when it is right.',
	empty: 'The diagram has no parts yet.',
	progress: (done: number, of: number) => `${done} of ${of} steps done`,
	reset: 'Untick all',
	resetQuestion: 'Untick every step?',
	resetText: 'The ticks of this diagram are forgotten; the diagram itself stays as it is.',
	resetYes: 'Untick all',
	resetNo: 'Keep them',
	stop: 'Stop until',
	torque: 'Torque',
	stack: 'From the seat up',
	show: (index: number) => `Show step ${index + 1} on the drawing`,
	showPlain: 'Show',
	waiting: 'Putting the steps in order…',
	failed: (reason: string) => `The order could not be made (${reason}).`,
	kept: 'Ticks are kept in this browser, for this diagram.',
	torqueSource: 'Torques are from the threads’ table; what a maker states goes first.'
});

export const onSiteTexts = catalogue('on-site', {
	open: 'On site',
	hint: 'Assembly order and test readings (O)',
	key: 'Assembly order and test readings',
	title: 'On site',
	tabs: 'What is done on site'
});
