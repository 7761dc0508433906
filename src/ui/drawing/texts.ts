/** The sentences of what arranges the drawing: lines, grid, areas, notes, pictures. */
import type { AreaSpace } from '#core/diagram';
import type { AlignTo, DistributeAlong } from '#core/geometry';
import { catalogue } from '../language/catalogue.ts';

export const drawingTexts = catalogue('drawing', {
	title: 'Drawing aids',
	line: 'In line',
	align: {
		left: 'Left edges in line',
		centre: 'Centres one above the other',
		right: 'Right edges in line',
		top: 'Top edges in line',
		middle: 'Centres side by side',
		bottom: 'Bottom edges in line'
	} satisfies Record<AlignTo, string>,
	distribute: {
		across: 'Equal gaps from left to right',
		down: 'Equal gaps from top to bottom'
	} satisfies Record<DistributeAlong, string>,

	moving: 'While you move things',
	grid: 'Grid of 5 mm',
	guides: 'Lines and distances to neighbours',
	freely: 'Hold Alt while dragging to put something exactly where the hand is.',

	areas: 'Areas',
	areasHint:
		'An area says what is around the things in it: temperature, engine space, petrol vapour, water. Choose one, then drag it on the sheet. Parts count by their middle, conductors by their ends and by bends set by hand; what is set on a part or conductor itself comes first.',
	kinds: {
		batteryBay: 'Battery bay',
		engineSpace: 'Engine space',
		cabin: 'Cabin',
		berth: 'Sleeping place',
		fuelLocker: 'Petrol or gas locker',
		outside: 'Outside',
		bilge: 'Bilge'
	},

	words: 'Notes',
	note: 'Write a note',
	noteHint: 'Click where it belongs, or drag there from the part or conductor it is about.',

	picture: 'A picture below the drawing',
	pictureHint:
		'A photograph of the bay or a plan. Mark two points of it whose distance you know, and it is to scale. It stays in the diagram file.',
	choosePicture: 'Choose a picture…',

	arrange: 'Arranging',
	reroute: 'Route all conductors again',
	rerouteHint: 'Takes away bends set by hand; those of locked conductors stay.',
	auto: 'Arrange for me…',
	autoHint: 'Sets all parts in order along the way the current takes, for you to look at before anything is changed.',

	area: {
		title: (label: string) => (label.trim() === '' ? 'Area' : `Area ${label.trim()}`),
		label: 'Name',
		like: 'What it is like there',
		spaces: {
			engine: 'Engine space',
			fuel: 'Petrol or gas may gather',
			sleeping: 'People sleep here',
			wet: 'Spray or rain',
			flooded: 'Water may stand'
		} satisfies Record<AreaSpace, string>,
		ambient: 'Temperature of the air',
		asDiagram: 'as in the diagram',
		place: 'Place on the drawing',
		left: 'From the left',
		top: 'From the top',
		width: 'Width',
		height: 'Height',
		inside: (parts: number, conductors: number) =>
			`${parts === 1 ? '1 part stands' : `${parts} parts stand`} in it, and ${conductors === 1 ? '1 conductor has' : `${conductors} conductors have`} its surroundings.`
	},

	noteForm: {
		title: 'Note',
		text: 'Words',
		to: 'Leads to',
		nothing: 'nothing',
		width: 'Width'
	},

	pictureForm: {
		title: 'Picture below the drawing',
		label: 'Name',
		opacity: 'Shows through',
		scale: 'Set the scale by two points',
		size: (width: string, height: string) => `${width} × ${height} on the drawing`,
		scaleTitle: 'How far apart are the two points?',
		distance: 'Distance',
		distanceHint: 'In the real bay, as measured.',
		apply: 'Set the scale'
	},

	arranged: {
		title: 'Arrange for me',
		working: 'Working out where everything goes…',
		now: 'As it is',
		then: 'Arranged',
		moved: (n: number) =>
			`${n === 1 ? '1 part moves' : `${n} parts move`}. Locked parts, and those in areas, stay where they are; blocks stay on their studs.`,
		nothing: 'Nothing would move: what is not locked or in an area lies in order already.',
		bends: 'Bends set by hand are taken away, except on locked conductors.',
		apply: 'Arrange',
		failed: (reason: string) => `No arrangement could be worked out (${reason}). The drawing is as it was.`
	}
});
