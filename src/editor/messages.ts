/** What the editor says in the status line, for eyes and screen readers alike. */
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const sentence = (label: string): string => `${capital(label)}.`;

/** Steps are named by what they do ("move 2 parts"); once done, by what was done ("Moved 2 parts"). */
const DONE: Readonly<Record<string, string>> = {
	accept: 'accepted',
	align: 'aligned',
	arrange: 'arranged',
	add: 'added',
	answer: 'answered',
	base: 'based',
	change: 'changed',
	close: 'closed',
	delete: 'deleted',
	distribute: 'distributed',
	draw: 'drew',
	edit: 'edited',
	group: 'grouped',
	issue: 'issued',
	lay: 'laid',
	lead: 'led',
	label: 'labelled',
	let: 'let',
	lock: 'locked',
	make: 'made',
	mount: 'mounted',
	move: 'moved',
	open: 'opened',
	paste: 'pasted',
	place: 'placed',
	remove: 'removed',
	reorder: 'reordered',
	route: 'routed',
	set: 'set',
	switch: 'switched',
	take: 'took',
	turn: 'turned',
	unlock: 'unlocked',
	unmount: 'unmounted',
	withdraw: 'withdrew',
	write: 'wrote'
};

function past(label: string): string {
	const [verb = '', ...rest] = label.split(' ');
	const done = DONE[verb];
	return done === undefined ? `Done: ${label}` : [capital(done), ...rest].join(' ');
}

export const messages = {
	done: (label: string) => `${past(label)}.`,
	duplicated: (parts: number) => `Duplicated ${parts} part${parts === 1 ? '' : 's'}.`,
	undone: (label: string) => `Undone: ${label}.`,
	redone: (label: string) => `Done again: ${label}.`,
	nothingToUndo: 'There is nothing to undo.',
	nothingToRedo: 'There is nothing to do again.',
	connected: (label: string, from: string, to: string, size: string) =>
		sentence(`conductor ${label} drawn from ${from} to ${to}, ${size} proposed; its length is still to be entered`),
	copied: (parts: number) => `Copied ${parts} part${parts === 1 ? '' : 's'} with the conductors between them.`,
	nothingToCopy: 'Select one or more parts to copy. A conductor is copied with the parts at both of its ends.',
	nothingToPaste: 'Nothing was copied yet.',
	notAFragment: 'The clipboard does not hold parts of a diagram, so nothing was pasted.',
	tooLarge: 'The clipboard holds more than can be pasted at once, so nothing was pasted.',
	brokenFragment: (reason: string) => `The clipboard holds a damaged piece of a diagram, so nothing was pasted: ${reason}`,
	nothingToMove: 'Select one or more parts to move.',
	nothingToTurn: 'Select one or more parts to turn.',
	checkFault: (reason: string) =>
		`The check failed on this diagram and findings may be out of date (${reason}). The drawing is not affected.`,
	workerReplaced: (reason: string) =>
		`The check stopped unexpectedly and was started again; findings may be out of date until the next change (${reason}).`
};
