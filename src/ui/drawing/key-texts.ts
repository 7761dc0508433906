/** What the keys and menus of drawing say: loaded with the window. */
import { catalogue } from '../language/catalogue.ts';

export const drawingKeyTexts = catalogue('drawing-keys', {
	open: 'Drawing aids',
	openHint: 'Grid and guides, areas, notes, a picture below the drawing, arranging',
	openKey: 'Drawing aids: grid, areas, notes, a picture below, arranging',
	gridKey: 'Show or hide the grid, with Shift the guides',
	alignKey: 'Set the selected parts in line at that side',
	groupKey: 'Group what is selected, with Shift take the group apart',
	lockKey: 'Lock what is selected, or unlock it',
	repeatKey: 'Repeat the last command on what is selected, or place another',
	noteKey: 'Write a note; drag from a part to lead it there',
	areaKey: 'Draw an area',
	rerouteKey: 'Route the selected conductors again, or all',
	keys: { duplicate: 'Ctrl D', group: 'Ctrl G', ungroup: 'Ctrl Shift G', lock: 'Ctrl L' },
	group: 'Group',
	ungroup: 'Take the group apart',
	lock: 'Lock',
	unlock: 'Unlock',
	noteHere: 'Write a note here',
	noteTo: 'Write a note to this',
	newNote: 'Note',
	grid: (on: boolean) => (on ? 'The grid is shown; parts fall on it.' : 'The grid is hidden; parts come to lie where they are put.'),
	guides: (on: boolean) => (on ? 'What is moved falls into line with its neighbours.' : 'What is moved takes no notice of its neighbours.'),
	hint: {
		area: 'Drag from corner to corner of the area, or click for one of a usual size.',
		note: 'Click where the note belongs, or drag there from the part it is about.',
		scale: 'Click two points of the picture whose distance you know.'
	},
	areas: 'Areas, notes, pictures',
	areaWord: 'area',
	noteWord: 'note',
	pictureWord: 'picture below',
	lockedWord: 'locked'
});
