/** Sentences of the full-bus assistant, of the order of positions, and of sizing everything. */
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const fullBusTexts = {
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
	fuse: 'Fuse asked for',
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
};
