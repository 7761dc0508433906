import { FORMAT, VERSION, type Conductor, type Diagram, type OperatingCase, type TitleBlock } from './schema.ts';

export const EMPTY_TITLE_BLOCK: TitleBlock = {
	title: '',
	supplementaryTitle: '',
	legalOwner: '',
	identificationNumber: '',
	craft: '',
	revisionIndex: '',
	dateOfIssue: '',
	documentType: '',
	creator: '',
	approvalPerson: ''
};

/** The two states that size most conductors: everything drawing from the batteries, and everything charging them. */
export const FIRST_CASES: Readonly<Record<string, OperatingCase>> = {
	peak: { label: 'Peak, no charging', order: 1, duration: 'continuous', loads: 1, sources: 0, levels: {} },
	charging: { label: 'Charging, no loads', order: 2, duration: 'continuous', loads: 0, sources: 1, levels: {} }
};

/** A new diagram: 12 V in a vehicle with its negative bonded, 30 °C outside and 50 °C in the engine space. */
export const emptyDiagram = (): Diagram => ({
	format: FORMAT,
	version: VERSION,
	titleBlock: { ...EMPTY_TITLE_BLOCK },
	system: { nominalV: 12, craft: 'vehicle', negative: 'bonded' },
	profile: 'common-practice',
	customProfile: null,
	colourScheme: 'abyc',
	ambient: { outsideC: 30, engineSpaceC: 50 },
	cases: structuredCases(),
	parts: {},
	conductors: {},
	mounts: {},
	stacks: {},
	areas: {},
	notes: {},
	waivers: {},
	revisions: {},
	remarks: {},
	readings: {},
	underlays: {}
});

function structuredCases(): Diagram['cases'] {
	return Object.fromEntries(Object.entries(FIRST_CASES).map(([id, value]) => [id, { ...value, levels: {} }]));
}

/** A conductor of which only its ends are known: size and length are still to be settled. */
export const newConductor = (from: Conductor['from'], to: Conductor['to']): Conductor => ({
	label: '',
	from,
	to,
	gauge: { system: 'awg', size: '10' },
	lengthM: null,
	insulationC: 105,
	environment: 'outside',
	bundleCount: 1,
	sheathed: false,
	colour: 'auto',
	use: 'ordinary',
	bends: null
});
