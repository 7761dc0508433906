/** Words of the part maker and of the shelf of parts somebody made. */
import { catalogue } from '../language/catalogue.ts';
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const ownPartTexts = catalogue('own-parts', {
	shelf: {
		title: 'Your parts',
		none: 'Something is missing here? Make it: its outline, its studs, what joins them inside and what it draws or delivers.',
		make: 'Make a part',
		bring: 'Import',
		bringHint: 'Take in a file of parts',
		send: 'Export',
		sendHint: 'Save your parts as a file',
		edit: (name: string) => `Change ${name}`,
		fromDiagram: 'In this diagram, not on your shelf',
		notRead: (reason: string) => `Your parts could not be read. ${reason} Those in the diagram are not affected.`,
		damaged: (n: number) => `${count(n, 'part')} on the shelf could not be read and ${n === 1 ? 'is' : 'are'} not shown.`
	},

	maker: {
		titleNew: 'Make a part',
		titleEdit: (name: string) => `Change ${name}`,
		previewOf: (name: string, studs: number) => `Drawing of ${name} with ${count(studs, 'stud or clamp', 'studs and clamps')}`,
		kind: 'Begin with',
		kindHint: 'Studs and figures to start from; all can be changed.',
		starts: {
			plain: 'an empty box with two studs',
			load: 'something that uses current',
			source: 'something that charges or supplies',
			battery: 'a battery',
			converter: 'a converter',
			switch: 'a switch or relay',
			fuses: 'a bar with fuses'
		},
		resumed: 'This is as you left it.',
		anew: 'Begin anew',
		body: 'Name and outline',
		studs: 'Studs and clamps',
		links: 'Links inside',
		linksHint: 'What joins the studs inside: bars, fuses, switches. Points inside are for what reaches no stud.',
		devices: 'What it does',
		devicesHint: 'Nothing here means: it only passes current on.',
		limits: 'Limits and use',
		site: 'Where it is',
		addStud: 'Add a stud',
		addLink: { plain: 'Add a bar or lead', switch: 'Add a switch', shunt: 'Add a shunt', fuse: 'Add a fuse', breaker: 'Add a breaker' },
		linkKinds: { plain: 'Bar or lead', switch: 'Switch', shunt: 'Shunt', fuse: 'Fuse', breaker: 'Breaker' },
		addDevice: { load: 'Add a load', source: 'Add a source', battery: 'Add a battery', converter: 'Add a converter' },
		deviceKinds: { load: 'Load', source: 'Source', battery: 'Battery', converter: 'Converter' },
		remove: (what: string) => `Remove ${what}`,
		rowName: (what: string, n: number) => `${what} ${n}`,
		stud: 'Stud',
		inside: (n: string) => `point ${n} inside`,
		choose: 'choose a stud',
		ends: (from: string, to: string) => `${from} to ${to}`,
		faults: (n: number) =>
			n === 1 ? 'One thing has to change before it can be kept:' : `${n} things have to change before it can be kept:`,
		sound: 'Nothing is wrong with it.',
		keep: 'Keep',
		keepAndPlace: 'Keep and place',
		change: 'Change it',
		changeAll: (n: number) => `Also change the other ${count(n, 'part')} like it in this diagram`,
		onShelf: 'Keep it on your shelf too, for other diagrams on this device',
		takeOff: 'Take off the shelf',
		takeOffQuestion: (name: string) => `Take ${name} off your shelf?`,
		takeOffText: 'Parts of this kind in diagrams stay as they are.',
		takeOffYes: 'Take it off',
		takeOffNo: 'Leave it',
		sendOne: 'Export'
	},

	open: 'Change how it is made…',
	kept: (name: string) => `${name} is on your shelf.`,
	changed: (name: string, n: number) => `${name}: ${count(n, 'part')} in the diagram changed.`,
	takenOff: (name: string) => `${name} was taken off your shelf.`,
	exported: (file: string) => `Saved ${file}.`,
	imported: (n: number) => `${count(n, 'part')} put on your shelf.`,
	alreadyThere: (n: number) => `${n === 1 ? 'The part is' : `All ${n} parts are`} on your shelf already.`,
	refusedTitle: (name: string) => `${name} was not taken in`,
	refusedOk: 'Close',
	notKept: (reason: string) => `The part could not be kept on this device. ${reason}`
});
