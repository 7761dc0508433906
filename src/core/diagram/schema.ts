/**
 * The file format, version 1. Types are inferred from the schema, so the two cannot differ.
 *
 * Everything that can be added or removed is kept in a record by id (never an array): one deletion is then
 * one small patch, whatever the size of the diagram. Drawing coordinates are millimetres at full size.
 */
import './no-eval.ts';
import * as z from 'zod';
import { THREADS } from '#core/tables';
import { PictureText } from './picture.ts';

export const FORMAT = 'wireworthy-diagram';
export const VERSION = 1;

/**
 * Ids are made of letters, digits, "-" and "_"; a dot separates a part from its terminal in a stud key. Names every
 * object inherits are refused: `parts['constructor']` would find a function that nobody put there.
 */
export const Id = z
	.string()
	.regex(/^[A-Za-z0-9_-]{1,64}$/, 'An id is 1 to 64 letters, digits, "-" or "_".')
	.refine((id) => !(id in Object.prototype), 'This name is reserved; another id is needed.');
const shortText = z.string().max(200);
const coordinateMm = z.number().min(-1e6).max(1e6);

export const PointSchema = z.strictObject({ x: coordinateMm, y: coordinateMm });

export const TerminalRefSchema = z.strictObject({ part: Id, terminal: Id });

export const AWG_SIZES = ['18', '16', '14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'] as const;
export const IEC_SIZES = ['0.5', '0.75', '1', '1.5', '2.5', '4', '6', '10', '16', '25', '35', '50', '70', '95', '120'] as const;

/** A conductor size in the system it is sold in: AWG (ASTM B258) or nominal mm² (IEC 60228). */
export const GaugeSchema = z.discriminatedUnion('system', [
	z.strictObject({ system: z.literal('awg'), size: z.enum(AWG_SIZES) }),
	z.strictObject({ system: z.literal('iec'), size: z.enum(IEC_SIZES) })
]);

export const INSULATION_C = [60, 75, 80, 90, 105, 125, 200] as const;

/** The colour of the insulation; "auto" takes it from the diagram's colour scheme and the conductor's pole. */
export const COLOURS = [
	'auto',
	'red',
	'black',
	'yellow',
	'green',
	'green-yellow',
	'brown',
	'blue',
	'grey',
	'white',
	'orange',
	'violet',
	'pink',
	'tan'
] as const;

export const ConductorSchema = z.strictObject({
	/** Designation as printed on the conductor's label; may be empty. */
	label: shortText,
	from: TerminalRefSchema,
	to: TerminalRefSchema,
	gauge: GaugeSchema,
	/** One-way length in metres; null means not measured yet (an assumption is then made and shown). */
	lengthM: z.number().positive().max(1000).nullable(),
	insulationC: z.union(INSULATION_C.map((c) => z.literal(c))),
	environment: z.enum(['outside', 'engine-space']),
	/** Current-carrying conductors bundled together, this one included. */
	bundleCount: z.int().min(1).max(200),
	/** Sheathed, or in conduit or enclosure, over its whole length. */
	sheathed: z.boolean(),
	colour: z.enum(COLOURS),
	/** Use that exempts a conductor from ordinary rules: cranking-motor supply, or a capped spare. */
	use: z.enum(['ordinary', 'cranking', 'spare']),
	/** True where its size is to stay when everything is sized. Left out: false. */
	pinned: z.boolean().optional(),
	/** Bends set by hand, in order from `from` to `to`; null lets the program route it. */
	bends: z.array(PointSchema).max(200).nullable(),
	/** Thread each lug's hole is made for, and what its nut was tightened to. Left out or null: made to fit, not recorded. */
	fromHole: z.enum(THREADS).nullable().optional(),
	toHole: z.enum(THREADS).nullable().optional(),
	fromTorqueNm: z.number().positive().max(500).nullable().optional(),
	toTorqueNm: z.number().positive().max(500).nullable().optional(),
	/** One solid wire instead of strands. Left out: stranded. */
	solid: z.boolean().optional(),
	/** True where `environment` was set by hand and no area changes it. Left out: false. */
	placedByHand: z.boolean().optional(),
	/** True where its route and ends are not to be changed by dragging. Left out: false. */
	locked: z.boolean().optional()
});

/** One line of a list of things of the same sort, such as the studs of a part somebody made: each field a plain value. */
const RowSchema = z
	.record(
		z
			.string()
			.regex(/^[A-Za-z0-9]{1,40}$/)
			.refine((name) => !(name in Object.prototype)),
		z.union([z.number(), z.string().max(100), z.boolean(), z.null()])
	)
	.refine((row) => Object.keys(row).length <= 40, 'A line has at most 40 fields.');

/** What is drawn by hand may belong together, and may be kept where it is. */
const standing = {
	/** Things with the same name are selected and moved as one. Left out: by itself. */
	group: Id.optional(),
	/** True where it is not to be moved. Left out: false. */
	locked: z.boolean().optional()
};

/** A value of a part's parameter. Which parameters a part has is said by its definition in core/parts. */
export const ParamSchema = z.union([
	z.number(),
	z.string().max(500),
	z.boolean(),
	z.null(),
	z.array(z.union([z.number(), z.null()])).max(64),
	z.array(z.string().max(100)).max(64),
	z.array(RowSchema).max(64)
]);

export const PartSchema = z.strictObject({
	kind: z.string().regex(/^[a-z0-9-]{1,40}$/),
	/** Designation, for example "F3"; shown on the drawing and in every list. */
	label: shortText,
	/** Centre of the part on the drawing. */
	at: PointSchema,
	/** Quarter turns clockwise, in degrees. */
	rotation: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
	params: z.record(Id, ParamSchema),
	/** True where its fuses keep their ratings when everything is sized. Left out: false. */
	pinned: z.boolean().optional(),
	...standing,
	note: z.string().max(2000)
});

/** What a place asks of the parts in it: rules about heat, vapour, water and people. */
export const AREA_SPACES = ['sleeping', 'engine', 'fuel', 'wet', 'flooded'] as const;
const lengthMm = z.number().min(10).max(1e6);

/** A named place on the drawing: what lies in it has its surroundings. */
export const AreaSchema = z.strictObject({
	label: shortText,
	/** Upper left corner. */
	at: PointSchema,
	widthMm: lengthMm,
	heightMm: lengthMm,
	/** None: an ordinary, dry place. */
	spaces: z.array(z.enum(AREA_SPACES)).max(AREA_SPACES.length),
	/** Of the air there; null where it is that of the whole diagram. */
	ambientC: z.number().min(-60).max(150).nullable(),
	...standing
});

/** Words on the drawing. */
export const NoteSchema = z.strictObject({
	text: z.string().max(2000),
	/** Upper left corner; the height follows from the text. */
	at: PointSchema,
	widthMm: z.number().min(40).max(2000),
	/** What its leader points at; null for words by themselves. */
	to: z.strictObject({ kind: z.enum(['part', 'conductor']), id: Id }).nullable(),
	...standing
});

/** A photograph or plan under the drawing, to scale. */
export const UnderlaySchema = z.strictObject({
	label: shortText,
	picture: PictureText,
	widthPx: z.int().min(1).max(20_000),
	heightPx: z.int().min(1).max(20_000),
	/** Upper left corner. */
	at: PointSchema,
	mmPerPx: z.number().min(0.001).max(1000),
	opacity: z.number().min(0.05).max(1),
	...standing
});

/**
 * One thing on a stud, counted from the seat upward. `lug` is a conductor's end, `block` the plate of a
 * fuse block mounted here, `fuse` the terminal-mounted fuse of the block's own post.
 */
export const StackItemSchema = z.discriminatedUnion('kind', [
	z.strictObject({ kind: z.literal('lug'), conductor: Id, end: z.enum(['from', 'to']) }),
	z.strictObject({ kind: z.literal('block'), block: Id }),
	z.strictObject({ kind: z.literal('fuse') }),
	z.strictObject({ kind: z.literal('washer') }),
	z.strictObject({ kind: z.literal('lock-washer') }),
	z.strictObject({ kind: z.literal('nut') })
]);

/**
 * What is on and how much, for one state of use. A load's level is the share of its rated draw, a source's
 * the share of its rated output, a switch's 1 closed and 0 open, and a battery's 0 disconnected by its electronics.
 */
export const OperatingCaseSchema = z.strictObject({
	label: shortText,
	/** Position in lists; records have no order of their own. */
	order: z.number(),
	/** Surge cases last under three minutes and are left out of continuous-current checks. */
	duration: z.enum(['continuous', 'surge']),
	/** Level of every load not named in `levels`. */
	loads: z.number().min(0).max(10),
	/** Level of every source other than batteries not named in `levels`. */
	sources: z.number().min(0).max(10),
	/** By part id. */
	levels: z.record(Id, z.number().min(0).max(10)),
	/** Open-circuit voltage of the batteries: as in use, or nearly empty. Left out: "rest". */
	battery: z.enum(['rest', 'low']).optional(),
	/** Loads that start in a surge case, by part id. Left out or empty: all that are on start at once. */
	starting: z.record(Id, z.literal(true)).optional()
});

/** ISO 7200 data fields, as far as a title block on the drawing needs them. */
export const TitleBlockSchema = z.strictObject({
	title: shortText,
	supplementaryTitle: shortText,
	legalOwner: shortText,
	identificationNumber: shortText,
	craft: shortText,
	revisionIndex: shortText,
	dateOfIssue: shortText,
	documentType: shortText,
	creator: shortText,
	approvalPerson: shortText
});

/** A profile made by changing numbers of a published one. Which keys there are is said by core/profiles. */
export const CustomProfileSchema = z.strictObject({
	base: Id,
	numbers: z.record(
		z
			.string()
			.regex(/^[A-Za-z0-9.:/-]{1,64}$/)
			.refine((key) => !(key in Object.prototype)),
		z.number().min(0).max(1e6)
	)
});

export const SEVERITIES = ['fatal', 'error', 'warning', 'note'] as const;

/** What a finding said when it was accepted: when these numbers move, the finding is open again. */
export const FingerprintSchema = z.strictObject({
	severity: z.enum(SEVERITIES),
	/** "kind:id" of each subject, the first being where the finding is marked. */
	subjects: z.array(z.string().max(200)).max(1000),
	/** The figures its message is made of, by name. */
	numbers: z.record(
		z
			.string()
			.regex(/^[A-Za-z0-9_.]{1,120}$/)
			.refine((name) => !(name in Object.prototype)),
		z.number()
	)
});

/** Someone's decision to live with a finding. */
export const WaiverSchema = z.strictObject({
	reason: z.string().max(2000),
	by: shortText,
	date: z.iso.date(),
	fingerprint: FingerprintSchema
});

/** Key of a finding: rule and subjects. */
export const FindingKeySchema = z
	.string()
	.regex(/^[a-z0-9-]+:[A-Za-z0-9_.,-]*(?:#\d+)?$/, 'The key of a finding is its rule, a colon and its subjects.')
	.max(20_000);

export const StudKeySchema = z.string().regex(/^[A-Za-z0-9_-]{1,64}\.[A-Za-z0-9_-]{1,64}$/);

const content = {
	format: z.literal(FORMAT),
	version: z.literal(VERSION),
	titleBlock: TitleBlockSchema,
	system: z.strictObject({
		nominalV: z.union([z.literal(12), z.literal(24), z.literal(48)]),
		/** Where the drawing is for: decides which metalwork may carry current. */
		craft: z.enum(['vehicle', 'boat', 'cabin']),
		/** The negative pole is bonded to chassis or hull, or the system floats. */
		negative: z.enum(['bonded', 'insulated'])
	}),
	/** Id of the rule profile (core/profiles). */
	profile: Id,
	/** What the profile "custom" is made of; null until a number was changed. */
	customProfile: CustomProfileSchema.nullable().default(null),
	colourScheme: z.enum(['abyc', 'iec-60446', 'iec-60445']),
	ambient: z.strictObject({
		outsideC: z.number().min(-60).max(100),
		engineSpaceC: z.number().min(-60).max(150)
	}),
	cases: z.record(Id, OperatingCaseSchema),
	parts: z.record(Id, PartSchema),
	conductors: z.record(Id, ConductorSchema),
	/** Fuse blocks that sit on another part's stud: block id → the stud it is on. */
	mounts: z.record(Id, TerminalRefSchema),
	/** Stud key "part.terminal" → what sits on it, from the seat upward. */
	stacks: z.record(StudKeySchema, z.array(StackItemSchema).max(32)),
	areas: z.record(Id, AreaSchema).default({}),
	notes: z.record(Id, NoteSchema).default({}),
	/** Findings that were accepted, by their key. */
	waivers: z.record(FindingKeySchema, WaiverSchema).default({})
};

/** A diagram without what is said about it: what a revision keeps. */
export const ContentSchema = z.strictObject(content);

/** One issue of the drawing, kept whole. */
export const RevisionSchema = z.strictObject({
	/** Index of ISO 7200: "A", "B" and so on. */
	letter: z.string().regex(/^[A-Z0-9]{1,4}$/, 'A revision is one to four capital letters or digits.'),
	/** Position in lists. */
	order: z.number(),
	date: z.iso.date(),
	by: shortText,
	/** What changed and why. */
	why: z.string().max(2000),
	content: ContentSchema
});

/** What somebody noted about the drawing, and what became of it. */
export const RemarkSchema = z.strictObject({
	/** "part", "conductor", "stud" with its id or key, "finding" with its key, or "diagram" for the whole. */
	on: z.strictObject({ kind: z.enum(['part', 'conductor', 'stud', 'finding', 'diagram']), id: z.string().max(20_000) }),
	text: z.string().min(1).max(4000),
	by: shortText,
	date: z.iso.date(),
	answer: z.string().max(4000),
	answeredBy: shortText,
	closed: z.boolean()
});

/** What a meter showed, or is to show, between two terminals while a case holds: red lead `at`, black lead `to`. */
export const TakenReadingSchema = z.strictObject({
	case: Id,
	at: TerminalRefSchema,
	to: TerminalRefSchema,
	/** Null: planned, not taken yet. */
	volts: z.number().min(-1000).max(1000).nullable(),
	/** Position in lists. */
	order: z.number(),
	/** Null until it was taken. */
	date: z.iso.date().nullable(),
	by: shortText
});

export const DiagramSchema = z
	.strictObject({
		...content,
		revisions: z.record(Id, RevisionSchema).default({}),
		remarks: z.record(Id, RemarkSchema).default({}),
		readings: z.record(Id, TakenReadingSchema).default({}),
		/** Pictures below the drawing: no part of what is issued. */
		underlays: z.record(Id, UnderlaySchema).default({})
	})
	.meta({
		title: 'Wireworthy diagram',
		description: 'A low-voltage DC wiring diagram: parts, conductors, stud stacks and operating cases.'
	});

export type Diagram = z.infer<typeof DiagramSchema>;
export type Part = z.infer<typeof PartSchema>;
export type Conductor = z.infer<typeof ConductorSchema>;
export type Gauge = z.infer<typeof GaugeSchema>;
export type Area = z.infer<typeof AreaSchema>;
export type AreaSpace = (typeof AREA_SPACES)[number];
export type Note = z.infer<typeof NoteSchema>;
export type Underlay = z.infer<typeof UnderlaySchema>;
export type TerminalRef = z.infer<typeof TerminalRefSchema>;
export type StackItem = z.infer<typeof StackItemSchema>;
export type OperatingCase = z.infer<typeof OperatingCaseSchema>;
export type TitleBlock = z.infer<typeof TitleBlockSchema>;
export type Fingerprint = z.infer<typeof FingerprintSchema>;
export type Waiver = z.infer<typeof WaiverSchema>;
export type Content = z.infer<typeof ContentSchema>;
export type Revision = z.infer<typeof RevisionSchema>;
export type Remark = z.infer<typeof RemarkSchema>;
export type TakenReading = z.infer<typeof TakenReadingSchema>;
export type Param = z.infer<typeof ParamSchema>;
export type Rotation = Part['rotation'];
export type Colour = Conductor['colour'];
export type ColourScheme = Diagram['colourScheme'];
export type ConductorEnd = 'from' | 'to';
export type InsulationC = (typeof INSULATION_C)[number];
export type PartId = string;
export type ConductorId = string;
export type CaseId = string;

/** "part.terminal": names one stud or clamp of the diagram. */
export type StudKey = string;
