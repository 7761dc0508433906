/**
 * The sentences of the window, in one place, so that they can be read as a whole and later be translated; those of
 * lenses, mends, acceptance and explanations are beside it in insight-texts.ts. Findings
 * bring their own words (core/rules), parts theirs (core/parts), commands theirs (core/diagram).
 */
import { CAUTIONS } from '#core/reports';
import type { Severity } from '#core/rules';
import type { Confidence } from '#core/tables';
import { celsiusText, millimetresText } from '#core/units';
import { catalogue } from './language/catalogue.ts';

type Craft = 'vehicle' | 'boat' | 'cabin';
type Negative = 'bonded' | 'insulated';

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const texts = catalogue('window', {
	app: 'Wireworthy',
	canvas: 'Drawing. Arrow keys move what is selected. The Outline tab lists the same things and can be read and used from the keyboard.',

	file: {
		group: 'File',
		name: 'Name of the diagram',
		untitled: 'Untitled diagram',
		theFile: 'The file',
		unsaved: 'Not saved since the last change',
		new: 'New',
		open: 'Open',
		save: 'Save',
		examples: 'Examples',
		newHint: 'Start an empty diagram',
		openHint: 'Open a diagram file from this device',
		saveHint: 'Save the diagram as a file on this device',
		examplesHint: 'Invented systems, with faults and mended',
		saved: (name: string) => `Saved ${name}.`,
		opened: (name: string) => `Opened ${name}.`,
		unknownKinds: (n: number) =>
			n === 1
				? '1 part is of a kind this version does not know; it is kept but not checked.'
				: `${n} parts are of kinds this version does not know; they are kept but not checked.`,
		mended: (n: number) => `${n} references were mended; they are listed with the findings.`,
		started: 'Started an empty diagram.',
		notOpened: (name: string) => `${name} was not opened`,
		discard: 'It has changes that were not saved.',
		discardTitle: 'Leave this diagram?',
		discardSave: 'Save, then leave',
		discardYes: 'Leave without saving',
		discardNo: 'Keep editing'
	},

	edit: {
		group: 'Steps',
		undo: 'Undo',
		redo: 'Redo',
		undoStep: (label: string) => `Undo: ${label}`,
		redoStep: (label: string) => `Redo: ${label}`,
		nothingToUndo: 'Nothing to undo',
		nothingToRedo: 'Nothing to redo',
		delete: 'Delete',
		duplicate: 'Duplicate',
		rotate: 'Turn',
		copy: 'Copy',
		cut: 'Cut',
		paste: 'Paste',
		selectAll: 'Select everything',
		autoRoute: 'Route again',
		connectFrom: 'Connect from here'
	},

	tools: {
		group: 'Tool',
		select: 'Select',
		connect: 'Connect',
		pan: 'Move the sheet',
		hint: {
			select: 'Drag to move, drag over empty paper to select several. Drag from a stud to draw a conductor.',
			pan: 'Drag to move the sheet.',
			connect: 'Click the stud where the conductor starts.',
			connectFrom: (stud: string) => `From ${stud}: click the stud where the conductor ends, or press Escape.`,
			place: (name: string) => `Click where the ${name} belongs, or press Escape.`
		},
		banner: {
			place: (name: string) => `Tap where the ${name.charAt(0).toLowerCase()}${name.slice(1)} goes`,
			connect: 'Tap the stud where the conductor starts',
			connectFrom: (stud: string) => `From ${stud}: tap the stud where it ends`,
			cancel: 'Cancel'
		}
	},

	view: {
		group: 'View',
		fit: 'Whole diagram',
		zoomIn: 'Closer',
		zoomOut: 'Further away',
		zoom: (factor: number) => `${Math.round(factor * 100)} %`,
		theme: { light: 'Light', dark: 'Dark', system: 'As the device' },
		themeButton: (name: string) => `Theme: ${name}`,
		close: 'Close',
		language: 'Language and units',
		panels: 'Panels',
		side: 'Details and findings',
		split: 'Border between details and findings'
	},

	empty: {
		first: 'Begin with a battery',
		then: 'Drag it here from Parts. Then add a fuse, something that uses current, and the conductors there and back.',
		examples: 'Or look at an example'
	},

	shelf: {
		title: 'Parts',
		search: 'Find a part',
		hint: 'Drag a part onto the sheet; or click it, then click its place. Enter puts it in the middle.',
		placeFirst: (name: string) => `Enter puts “${name}” in the middle.`,
		none: (query: string) => `No part is called “${query}”.`,
		groups: {
			sources: 'Batteries',
			charging: 'Charging',
			protection: 'Fuses and breakers',
			distribution: 'Distribution',
			loads: 'Loads'
		}
	},

	outline: {
		title: 'Outline',
		tree: 'Parts, their studs and what lands on them',
		empty: 'Nothing here yet. Take a part from the Parts tab: a battery is a good start.',
		conductors: 'Conductors',
		toStud: (conductor: string, stud: string) => `${conductor} to ${stud}`,
		mountedOn: (stud: string) => `on ${stud}`,
		connectHere: 'Connect to here',
		connecting: (stud: string) => `Choose the stud where the conductor from ${stud} ends.`,
		cancel: 'Do not connect'
	},

	inspector: {
		title: 'Details',
		several: (n: number) => `${n} things selected`,
		common: 'What can be done with all of them',
		unknownKind: (kind: string) =>
			`This build does not know the kind “${kind}”. The part is kept as it is, but nothing about it is checked.`,
		label: 'Designation',
		noLabel: 'Without a designation it cannot be told from others in findings, lists and on the drawing.',
		labelled: (label: string) => (label.trim() === '' ? 'The designation is empty.' : `The designation is now ${label.trim()}.`),
		labelHint:
			'Letter and number, as on the part’s label. G: source, Q: switch, F: protection, T: converter, E: load, M: motor, B: sensing, X: connection, W: conductor (IEC 81346-2).',
		note: 'Note',
		ratings: 'Ratings',
		studs: 'Studs and clamps',
		noStuds: 'Nothing can land on this part.',
		sitsOn: 'Sits on',
		sitsOnHint: 'Or drag the block onto a stud.',
		standsAlone: 'no stud'
	},

	conductor: {
		title: (label: string) => (label === '' ? 'Conductor' : `Conductor ${label}`),
		ends: (from: string, to: string) => `${from} to ${to}`,
		land: 'Land it on other studs',
		from: 'From',
		to: 'To',
		label: 'Label',
		labelHint: 'As printed on both of its ends',
		size: 'Size',
		system: 'System of sizes',
		awg: 'AWG',
		iec: 'mm²',
		length: 'Length, one way',
		lengthHint: 'Along the run, not as the crow flies: 2.5, 250 cm, 8 ft or 18 in. Empty when not measured: a length is then assumed.',
		notALength: 'That is not a length: write 2.5, 250 cm, 8 ft or 18 in.',
		notMeasured: 'not measured',
		insulation: 'Insulation',
		insulationC: celsiusText,
		environment: 'Runs through',
		byAreas: (where: string) => `As drawn: ${where}`,
		environments: { outside: 'Ordinary space', 'engine-space': 'Engine space' },
		bundle: 'In a bundle of',
		bundleHint: 'Conductors carrying current side by side, this one included',
		sheathed: 'Sheathed, or in conduit, over its whole length',
		colour: 'Colour',
		use: 'Use',
		uses: { ordinary: 'Ordinary', cranking: 'Cranking motor supply', spare: 'Capped spare' },
		figures: 'Figures',
		amperage: 'Amperage',
		continuous: 'Worst continuous current',
		working: 'Working temperature',
		about: (celsius: number) => `about ${celsiusText(Math.round(celsius))}`,
		surge: 'Worst current of all cases',
		volts: 'Volts lost',
		letThrough: 'Let-through current',
		protectedBy: 'Protected by',
		unprotected: 'nothing',
		assumedLength: (length: string) => `Length assumed: ${length}`,
		wait: 'Figures appear when the check has run.',
		colours: {
			auto: 'By the colour scheme',
			red: 'Red',
			black: 'Black',
			yellow: 'Yellow',
			green: 'Green',
			'green-yellow': 'Green and yellow',
			brown: 'Brown',
			blue: 'Blue',
			grey: 'Grey',
			white: 'White',
			orange: 'Orange',
			violet: 'Violet',
			pink: 'Pink',
			tan: 'Tan'
		}
	},

	stud: {
		title: (name: string) => `Stud ${name}`,
		clamp: (name: string) => `Clamp ${name}`,
		order: 'What sits on it',
		orderHint: 'From the nut down to the seat, as you would take it apart',
		top: 'nut side',
		seat: 'seat',
		empty: 'Nothing lands here yet.',
		up: (what: string) => `Move ${what} towards the nut`,
		down: (what: string) => `Move ${what} towards the seat`,
		assumed: 'No washer or nut is drawn; the usual ones are assumed.',
		threadLeft: 'Thread left over the nut',
		tooShort: (mm: string) => `none: it ends ${mm} below the nut’s top`,
		thread: 'Thread',
		rated: 'Rated current',
		fault: 'Short-circuit current',
		volts: 'Volts',
		inCase: (name: string) => `in “${name}”`,
		hardware: { washer: 'Washer', 'lock-washer': 'Lock washer', nut: 'Nut' },
		add: (what: string) => `Put a ${what.toLowerCase()} on top`,
		remove: (what: string) => `Remove ${what}`
	},

	settings: {
		title: 'Diagram',
		hint: 'Select something on the sheet to see its details here.',
		system: 'System',
		/** In a line: "12 V, boat, negative bonded, US small craft". */
		summary: ({ nominalV, craft, negative }: { nominalV: number; craft: Craft; negative: Negative }, profile: string): string =>
			`${nominalV} V, ${texts.settings.crafts[craft].toLowerCase()}, negative ${texts.settings.negatives[negative].toLowerCase()}, ${profile}`,
		nominal: 'Nominal voltage',
		craft: 'Built into',
		crafts: { vehicle: 'Vehicle or trailer', boat: 'Boat', cabin: 'Cabin or station' },
		negative: 'Negative pole',
		negativeHint: 'Bonded to chassis or hull, or insulated from them',
		negatives: { bonded: 'Bonded', insulated: 'Insulated' },
		profile: 'Check against',
		scheme: 'Colour scheme',
		/** By the colours they draw: IEC 60446 has another one for a negative that is bonded to earth or hull. */
		schemes: (bonded: boolean) => ({
			abyc: 'Red + / black − (ABYC E-11)',
			'iec-60446': bonded ? 'Brown + / blue − (IEC 60446)' : 'Brown + / grey − (IEC 60446)',
			'iec-60445': 'Red + / white − (IEC 60445:2017, unverified)'
		}),
		schemeHints: {
			abyc: 'ABYC E-11 also allows a yellow negative.',
			'iec-60446': 'Blue where the negative is bonded, grey where it is insulated.',
			'iec-60445': 'The edition of 2017 was not seen: not yet verified.'
		},
		schemeUses: { positive: 'positive', negative: 'negative', bond: 'bonding' },
		outside: 'Temperature in ordinary space',
		engine: 'Temperature in engine space',
		block: 'Title block',
		fields: {
			title: 'Title',
			supplementaryTitle: 'Second title',
			legalOwner: 'Owner',
			identificationNumber: 'Drawing number',
			craft: 'Vehicle, boat or place',
			revisionIndex: 'Revision',
			dateOfIssue: 'Date of issue',
			documentType: 'Document type',
			creator: 'Drawn by',
			approvalPerson: 'Checked by'
		}
	},

	profile: {
		title: 'Numbers of the custom profile',
		base: 'Made from',
		baseHint: 'Numbers that were not changed come from it.',
		count: (n: number) =>
			n === 0
				? 'No number is changed yet: the check is that of the profile it is made from.'
				: `${count(n, 'number')} changed, for this diagram alone.`,
		reset: (title: string) => `Take the published number: ${title}`,
		resetAll: 'Take all published numbers',
		changedFrom: (value: string, unit: string) => `Given in this diagram, in place of ${`${value} ${unit}`.trim()}`,
		groups: {
			protection: 'Fuses and breakers',
			'voltage-drop': 'Voltage drop',
			conductors: 'Conductors',
			factors: 'Factors',
			amperage: 'Amperage tables'
		},
		confidence: {
			verified: 'read in the source',
			'two-sources': 'read in two sources',
			derived: 'worked out',
			memory: 'not yet verified',
			'common-practice': 'nobody’s rule',
			given: 'given in this diagram'
		} satisfies Record<Confidence, string>
	},

	cases: {
		title: 'Operating cases',
		hint: 'What is switched on, and how much. 100 % is the rated draw of a load or the rated output of a source; 0 % is off. An empty field follows “All loads” or “All sources”.',
		name: 'Name',
		duration: 'Lasts',
		durations: { continuous: 'over 3 minutes', surge: 'under 3 minutes' },
		battery: 'Batteries are',
		batteries: { rest: 'charged, as in use', low: 'nearly empty' },
		all: { loads: 'All loads', sources: 'All sources' },
		roles: { batteries: 'Batteries in', switches: 'Switches closed', devices: 'Fuses and breakers in', sources: 'Sources', loads: 'Loads' },
		starts: 'starts',
		startsHint: 'With no box ticked, all loads that are on start at once.',
		add: 'Add a case',
		remove: (name: string) => `Remove case ${name}`,
		levels: (name: string) => `Levels in “${name}”`,
		none: 'No case yet. Without one, nothing draws current and only the layout can be checked.',
		newName: (n: number) => `Case ${n}`
	},

	findings: {
		title: 'Findings',
		severities: { fatal: 'Danger', error: 'Error', warning: 'Warning', note: 'Note' } satisfies Record<Severity, string>,
		plural: {
			fatal: (n: number) => count(n, 'danger'),
			error: (n: number) => count(n, 'error'),
			warning: (n: number) => count(n, 'warning'),
			note: (n: number) => count(n, 'note')
		} satisfies Record<Severity, (n: number) => string>,
		filter: 'Show only',
		showAll: 'Show all',
		remedy: 'To do',
		why: 'Why it matters',
		source: 'Source',
		unverified: 'not yet verified',
		unverifiedHint: (figures: readonly string[]) =>
			`${figures.length > 0 ? figures.join('; ') : 'A figure behind this'}: not seen in the published text. Look it up before you rely on it.`,
		assumptions: 'Assumed for this finding',
		goTo: 'Show on the drawing',
		checking: 'Checking…',
		failed: 'The check stopped.',
		noneYet: 'The first check is running.',
		emptyDiagram:
			'Nothing to check yet. Put a battery on the sheet, then a fuse, a load and the conductors between them: findings appear here while you draw.',
		clean: (profile: string) => `Nothing found against ${profile}. That is not the same as safe: see what was not checked, below.`,
		mended: 'Mended on opening',
		notChecked: 'Not checked',
		assumed: 'Assumed',
		against: (profile: string) => `Against ${profile}`,
		dockRight: 'Put the findings on the right',
		dockBottom: 'Put the findings along the bottom',
		announce: (n: number) => (n === 0 ? 'No findings.' : `${count(n, 'finding')}.`)
	},

	status: {
		ready: 'Checked',
		checking: 'Checking…',
		stale: 'Waiting for the check',
		stopped: 'Check stopped',
		parts: (n: number) => count(n, 'part'),
		conductors: (n: number) => count(n, 'conductor'),
		selected: (n: number) => `${n} selected`,
		countsHint: 'What is on the drawing, one by one',
		caution: 'A drawing aid, not an inspection.',
		cautionMore: 'Cautions'
	},

	cautions: {
		title: 'Before you build from a drawing',
		items: CAUTIONS,
		checked: 'Checked, on the drawing as it stands',
		checkedItems: [
			'Amperage of each conductor against its current, and against the fuse or breaker that protects it',
			'Whether every conductor is protected, at each end that can be fed, and how far from the source',
			'Short-circuit current against what each fuse or breaker can interrupt, its voltage rating, and which of two in a row opens first',
			'Volts lost between source and load and back, and at inverters and chargers',
			'What sits on each stud: number, order, thread, cover, lugs side by side',
			'Batteries: parallel strings, charging voltage and current, discharge current, energy for a day where hours of use are given',
			'Missing returns, reversed poles, shorts, dead ends, bonds to chassis or hull',
			'Colours, designations and lengths'
		],
		notChecked: 'Not checked',
		notCheckedItems: [
			'Lightning, corrosion, electromagnetic disturbance',
			'Chafe, strain relief and everything else that is done with the hands',
			'Whether the parts you buy have the ratings you typed'
		],
		ofThisDiagram: 'In this diagram, also not checked'
	},

	help: {
		title: 'Help and shortcuts',
		steps: [
			'Drag parts from the left onto the sheet.',
			'Drag from stud to stud to draw a conductor; the positive and the negative are separate conductors.',
			'Type lengths and ratings on the right. Findings follow as you draw.'
		],
		starts: 'Guided starts',
		stepsTitle: 'In three steps',
		shortcuts: 'Shortcuts',
		notInFields: 'Not while typing in a field.',
		turn: 'Turn the selected parts, Shift the other way',
		nudge: (mm: number, far: number) => `Move the selected parts by ${millimetresText(mm)}, with Shift by ${millimetresText(far)}`,
		nudgeFromOutline: 'From the Outline: move the selected parts',
		escape: 'Put the tool away; then, select nothing; from a field, back to the sheet',
		gestures: 'On the sheet',
		byMouse: 'Mouse',
		byTouch: 'Touch',
		gestureRows: [
			{ what: 'Select', mouse: 'Click; Shift adds, or drag a box over empty paper', touch: 'Tap' },
			{ what: 'Move a part', mouse: 'Drag it', touch: 'Drag it' },
			{ what: 'Draw a conductor', mouse: 'Drag from stud to stud', touch: 'Drag from stud to stud; or Connect, then tap both' },
			{ what: 'Mount a fuse block', mouse: 'Drop it on a stud', touch: 'Drop it on a stud; from Parts: tap it, then the stud' },
			{ what: 'Bend a conductor', mouse: 'Drag one of its straight runs', touch: 'Drag one of its straight runs' },
			{ what: 'Land an end elsewhere', mouse: 'Select the conductor, drag its handle', touch: 'Select the conductor, drag its handle' },
			{ what: 'Move the sheet', mouse: 'Middle button, Alt or the space bar, and drag; wheel', touch: 'Drag empty paper' },
			{ what: 'Zoom', mouse: 'Ctrl and wheel, or pinch', touch: 'Pinch' },
			{ what: 'More actions', mouse: 'Right click', touch: 'Press and hold' },
			{ what: 'Read a finding', mouse: 'Click its mark; again for the next one there', touch: 'Tap its mark; again for the next one there' }
		]
	},

	examples: {
		title: 'Examples',
		intro: 'Invented systems, each as found, with faults to see, and as repaired.'
	},

	menu: { title: 'Actions' },

	notice: { close: 'Continue' },

	fields: {
		needed: 'A number is needed here.',
		notANumber: 'That is not a number.',
		whole: 'A whole number is needed here.',
		kept: (text: string, problem: string, value: string) =>
			`“${text}” was not taken. ${problem.replace(/\.$/, '')}.${value === '' ? '' : ` Still ${value}.`}`,
		/** Limits as printed; null where there is none. */
		range: (min: string | null, max: string | null, unit = '') =>
			max === null
				? `At least ${min} ${unit}`.trim()
				: min === null
					? `At most ${max} ${unit}`.trim()
					: `From ${min} to ${max} ${unit}`.trim(),
		notKnown: 'not known',
		unset: 'empty'
	},

	lateDialog: {
		title: 'One moment',
		loading: 'Getting ready…',
		again: 'Try again',
		notLoaded: (reason: string) =>
			`This part of the program could not be loaded (${reason}). Check the connection, close this and try again.`
	}
});
