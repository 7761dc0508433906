/** Sentences of the full-bus assistant, of the order of positions, and of sizing everything. */
import { catalogue } from './language/catalogue.ts';

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const fullBusTexts = catalogue('full-bus', {
	open: 'Find room for circuits…',
	key: 'Find room for circuits on a bus',
	openHint: 'Find room for more circuits on this bus (L)',
	title: (bus: string) => (bus === '' ? 'Room for more circuits' : `Room for more circuits on ${bus}`),
	intro:
		'Say what is to be added. Every way to land it is drawn on a copy of the diagram and checked with all rules; then you compare, and take one.',
	bus: 'Bus',
	noBus: 'There is no fused distribution bus on the drawing yet. Put one from the shelf on the sheet, wire it, and ask again.',
	free: (names: string) => `Not full: ${names} still free. That place is tried first, with the others beside it.`,
	full: 'Every fused position is taken.',

	built: 'The system is',
	builtAlready: 'already built',
	notBuilt: 'not built yet',
	builtHint: 'In one that is built, what must be taken apart counts; in one that is only drawn, it costs nothing.',

	circuit: (index: number) => `Circuit ${index + 1}`,
	name: 'Name',
	nameFor: (index: number) => `NEW ${index + 1}`,
	current: 'Current',
	length: 'Length, one way',
	fuse: 'Fuse, at least',
	fuseEmpty: 'by the current',
	critical: 'Critical: held to the tight voltage-drop limit',
	continuous: 'Runs three hours or more at a time',
	source: 'Feeds the bus: a charger or controller',
	add: 'Another circuit',
	most: 'Four at a time at most.',
	remove: (name: string) => `Leave out ${name}`,
	ask: 'Try every way',
	askAgain: 'Try again',
	missing: 'Each circuit needs its current and its length.',
	changed: 'The answers below are to what was asked before.',

	trying: 'Trying every way…',
	tried: (done: number, of: number) => `Trying way ${done + 1} of ${of}…`,
	cancel: 'Stop',
	failed: (reason: string) => `It could not be worked out (${reason}).`,
	answers: (feasible: number, refused: number) =>
		feasible === 0
			? `None of ${count(refused, 'way')} is without an error of its own.`
			: `${count(feasible, 'way')} without an error of its own, best first; ${refused} refused.`,
	none: 'Lower the current, shorten the way, or make room first: see below what stands against each.',

	everywhere: 'Whichever you take',
	findings: (n: number) => count(n, 'finding'),
	everywhereHint: 'These come with the circuits themselves; no landing avoids them, and none is ranked down for them.',
	rank: (n: number) => `${n}`,
	best: 'Best',
	steps: 'What changes',
	buys: 'To buy',
	disturbed: 'Disturbed',
	undisturbed: 'Nothing that is there is touched.',
	stays: 'Free afterwards',
	freeAfter: (positions: number, ends: number) =>
		positions + ends === 0
			? 'nothing'
			: [positions > 0 ? count(positions, 'position') : '', ends > 0 ? count(ends, 'end stud') : ''].filter(Boolean).join(', '),
	adds: 'Findings it adds',
	clears: 'Findings it clears',
	addsNone: 'None of its own.',
	watch: 'Look at',
	asks: 'Only you can say',
	why: 'Why it ranks here',
	cost: (total: string) => `counts ${total}; less is better`,
	costRow: (what: string, cost: string) => `${what}: ${cost}`,
	take: 'Do this',
	taken: (title: string) => `${title.charAt(0).toLowerCase()}${title.slice(1)}`,
	picture: (title: string) => `How the drawing changes: ${title}`,
	pictureWaiting: 'Drawing it…',
	pictureNone: 'Nothing to be seen on the drawing.',
	look: 'How it would look',
	closer: 'Larger',
	smaller: 'Smaller',
	more: (n: number) => `Show ${count(n, 'more way')}`,
	fewer: 'Show fewer',
	refused: 'Refused',
	refusedHint: 'Tried as well, and why not.',
	shortcuts: 'Short cuts that are never offered',
	bar: (amps: string, rated: string) => `bar ${amps} of ${rated}`
});

export const positionTexts = catalogue('positions', {
	open: 'Order the positions…',
	openHint: 'Find the order of circuits that asks least of the bar',
	title: (bus: string) => `Order of circuits on ${bus}`,
	intro: 'Chargers beside the loads they feed keep current off the bar. The order is exact: all orders are compared.',
	keepEnds: 'Leave the end studs as they are',
	waiting: 'Comparing all orders…',
	failed: (reason: string) => `It could not be worked out (${reason}).`,
	none: 'This part has no bar with positions.',
	best: 'The order is as good as any: nothing would be gained by moving a circuit.',
	place: 'Place',
	now: 'Now',
	then: 'Best',
	segment: (a: string, b: string) => `Bar ${a} to ${b}`,
	nothing: 'nothing',
	greatest: 'Greatest current in the bar',
	heat: 'Heat in the bar, all cases',
	ofRated: (amps: string, rated: string) => `${amps} of ${rated}`,
	moved: (n: number) => `${count(n, 'conductor or block moves', 'conductors and blocks move')}, each with its fuse and its name.`,
	take: 'Put them in this order',
	label: (bus: string) => `order the circuits on ${bus}`,
	picture: (bus: string) => `How ${bus} would look`,
	caption: 'Circuits on the bus, now and in the best order'
});

export const sizingTexts = catalogue('sizing', {
	open: 'Size everything…',
	openHint: 'Least copper and the fuses to go with it (S)',
	key: 'Size everything',
	title: 'Size everything',
	intro:
		'The thinnest conductors and the smallest fuses that pass every rule in every operating case. What is pinned keeps its size: pin a conductor or a part with fuses in its details.',
	waiting: 'Sizing everything…',
	failed: (reason: string) => `It could not be worked out (${reason}).`,
	done: 'Everything has its size already.',
	copper: (before: string, after: string) => `Copper ${before} kg → ${after} kg`,
	conductors: 'Conductors',
	fuses: 'Fuses',
	name: 'What',
	from: 'Now',
	to: 'Then',
	why: 'Because',
	kept: (names: string) => `Pinned, and kept: ${names}.`,
	left: 'What sizes do not mend',
	take: (n: number) => `Change ${count(n, 'size')}`,
	label: 'size conductors and fuses',
	pinConductor: 'Keep this size when everything is sized',
	pinFuses: 'Keep its fuses when everything is sized'
});
