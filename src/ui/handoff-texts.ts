/** Sentences of handing over: packet, pictures, tables, print. */
import { catalogue } from './language/catalogue.ts';

export const handoffTexts = catalogue('handoff', {
	open: 'Hand over',
	hint: 'Save or print the packet: drawing, schedules, labels, tests',
	title: 'Hand over',

	empty: 'There is nothing to hand over yet.',
	emptyHint:
		'Put a battery on the sheet, then a fuse, a load and the conductors between them. Or open an example and look at its packet first.',

	packet: {
		title: 'Packet',
		about: 'Everything a stranger needs to build it and an inspector to check it, on numbered sheets.',
		paper: 'Tables on',
		drawingPaper: 'Drawing on',
		placing: 'Drawing',
		placings: { fitted: 'whole, on one sheet', tiled: 'in tiles, large enough to read' },
		sections: 'Sections',
		all: 'All',
		none: 'None',
		noSection: 'Choose at least one section.',
		save: 'Save PDF',
		print: 'Print…'
	},

	picture: {
		title: 'Drawing alone',
		svg: 'Save SVG',
		svgHint: 'Sharp at every size, and can be opened by drawing programs',
		png: 'Save PNG',
		scale: 'Size of the PNG',
		scaleOption: (factor: number, widthPx: number, heightPx: number) => `${factor} × (${widthPx} × ${heightPx} dots)`
	},

	tables: {
		title: 'Tables for a spreadsheet',
		about: 'Comma-separated values in UTF-8. Texts that a spreadsheet would take for a formula get an apostrophe before them.',
		which: 'Table',
		all: 'All of them in one file',
		save: 'Save CSV'
	},

	working: {
		tables: 'Working out the tables…',
		pdf: 'Writing the PDF…',
		print: 'Laying out the sheets…',
		png: 'Drawing the picture…'
	},
	asItIs: 'Made from the diagram and its check as they are now.',
	stop: 'Stop',

	saved: (name: string) => `Saved ${name}.`,
	savedPdf: (name: string, sheets: number) => `Saved ${name}, ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'}.`,
	missing: (characters: readonly string[]) =>
		`The packet’s font has no shape for ${characters.slice(0, 12).join(' ')}: ${characters.length === 1 ? 'it is' : 'they are'} printed as a box. Use other characters, or print from the browser.`,
	printed: 'The browser was asked to print.',

	failed: {
		tables: (reason: string) => `The tables could not be worked out (${reason}). Nothing was changed in the diagram.`,
		pdf: (reason: string) => `The PDF was not made: ${reason}. With fewer sections, or the drawing on one sheet, it needs less memory.`,
		print: (reason: string) => `The browser did not print: ${reason}. Save the PDF and print that.`,
		png: (reason: string) => `The PNG was not made. ${reason} Choose a smaller size, or save the SVG.`,
		save: (reason: string) => `The file was not saved: ${reason}. The browser may be set to refuse downloads from this page.`
	}
});
