/** What the keys of drawing do, for the list in the help and for those who press them: loaded with the window. */
import { catalogue } from '../language/catalogue.ts';

export const drawingKeyTexts = catalogue('drawing-keys', {
	open: 'Drawing aids',
	openHint: 'Grid and guides, areas, notes, a picture below, arranging',
	gridKey: 'Show or hide the grid, with Shift the guides',
	alignKey: 'Set the selected parts in line at that side',
	grid: (on: boolean) => (on ? 'The grid is shown; parts fall on it.' : 'The grid is hidden; parts come to lie where they are put.'),
	guides: (on: boolean) => (on ? 'What is moved falls into line with its neighbours.' : 'What is moved takes no notice of its neighbours.')
});
