/** What the editor says in the status line, for eyes and screen readers alike. */
const sentence = (label: string): string => `${label.charAt(0).toUpperCase()}${label.slice(1)}.`;

export const messages = {
	done: (label: string) => `Done: ${label}.`,
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
