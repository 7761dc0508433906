/** What is said about arranging the drawing: aligning, grouping, locking, areas, notes and pictures. */
export const drawingMessages = {
	tooFew: {
		align: 'Select two or more parts to set in line.',
		distribute: 'Select three or more parts to set at equal distances.'
	},
	already: { align: 'They are in line already.', distribute: 'They are at equal distances already.' },
	noGroup: 'Nothing of a group is selected.',
	noConductors: 'There is no conductor to route.',
	noDistance: 'Mark two points of the picture whose distance you know.',
	lockedDelete: 'What is selected is locked. Unlock it first.',
	nothingToRepeat: 'Nothing was done yet that could be repeated.',
	cannotRepeat: (label: string) => `“${label}” cannot be repeated.`,
	selectToRepeat: (label: string) => `Select what is meant to repeat “${label}”.`,
	area: 'Area',
	note: 'Note',
	picture: 'Picture'
};
