/** What is said about arranging the drawing: aligning, grouping, locking, areas, notes and pictures. */
export const drawingMessages = {
	tooFew: {
		align: 'Select two or more parts to set in line.',
		distribute: 'Select three or more parts to set at equal distances.'
	},
	already: { align: 'They are in line already.', distribute: 'They are at equal distances already.' }
};
