/** Studs, links and devices of a part somebody made: one line each, a form's fields and the file's at once. */
import * as z from 'zod';
import { THREADS } from '#core/tables';
import { amount, choice, flag, fuseFamily, hoursADay, lengthMm, optionalAmount, share, words } from '../fields.ts';

const RowId = z
	.string()
	.regex(/^[a-z0-9-]{1,20}$/, 'An id is 1 to 20 small letters, digits or "-".')
	.refine((id) => !(id in Object.prototype), 'This name is reserved; another id is needed.');

/** Points inside the part, where links meet that reach no stud. */
export const INSIDE = ['@1', '@2', '@3', '@4'] as const;

const stud = (title: string) => z.string().max(20).default('').meta({ title, refers: 'stud' });
/** A stud, or a point inside. */
const point = (title: string) => z.string().max(20).default('').meta({ title, refers: 'point' });

/** Threads, and "clamp" for a screw clamp or a lead of its own. */
const FASTENINGS = ['clamp', ...THREADS] as const;

export const StudRow = z.strictObject({
	id: RowId,
	name: words('Name', '', 24, { hint: 'as printed on it: “+”, “IN −”' }),
	thread: z
		.enum(FASTENINGS)
		.default('M8')
		.meta({ title: 'Thread', options: FASTENINGS.map((value) => ({ value, label: value === 'clamp' ? 'none: a clamp' : value })) }),
	role: choice('Pole', 'either', { either: 'either', positive: 'positive', negative: 'negative', chassis: 'chassis' }),
	leftMm: lengthMm('From the left edge', 20, 0, 1000),
	topMm: lengthMm('From the top edge', 20, 0, 1000),
	side: choice('Conductors leave', 'north', {
		north: 'upward',
		east: 'to the right',
		south: 'downward',
		west: 'to the left',
		any: 'any way'
	}),
	usableMm: optionalAmount('Usable length', 'mm', { max: 100, whenEmpty: 'usual for the thread', hint: 'seat to thread end' }),
	coverMm: optionalAmount('Cover height', 'mm', { max: 300, whenEmpty: 'no cover, or not known', hint: 'seat to the inside of the cover' }),
	most: z.int().min(1).max(12).default(4).meta({ title: 'Takes lugs up to', hint: 'by its maker; 4 is the general limit' }),
	ratedA: optionalAmount('Rated current', 'A', { max: 5000, whenEmpty: 'not known' }),
	block: flag('A fuse block may be mounted here', true)
});

const ends = { id: RowId, from: point('From'), to: point('To') };

const passive = {
	...ends,
	milliohm: amount('Resistance', 'mΩ', 0.15, { max: 1_000_000 }),
	ratedA: optionalAmount('Rated current', 'A', { max: 5000, whenEmpty: 'not known' })
};

const protective = {
	...ends,
	ratingA: z.number().min(0.001).max(2000).nullable().default(30).meta({ title: 'Rating', unit: 'A', whenEmpty: 'none fitted' }),
	ratedV: optionalAmount('Usable up to', 'V', { max: 1000, whenEmpty: 'not known' }),
	breakingA: optionalAmount('Breaking capacity', 'A', { max: 200_000, whenEmpty: 'not known' })
};

export const LINK_KINDS = ['plain', 'switch', 'shunt', 'fuse', 'breaker'] as const;

export const LinkRow = z.discriminatedUnion('kind', [
	z.strictObject({ kind: z.literal('plain'), ...passive }),
	z.strictObject({ kind: z.literal('switch'), ...passive }),
	z.strictObject({ kind: z.literal('shunt'), ...passive }),
	z.strictObject({ kind: z.literal('fuse'), ...protective, family: fuseFamily('Fuse type', 'blade-regular') }),
	z.strictObject({ kind: z.literal('breaker'), ...protective })
]);

const poles = { id: RowId, positive: point('Positive at'), negative: point('Negative at') };

export const DEVICE_KINDS = ['load', 'source', 'battery', 'converter'] as const;

export const DeviceRow = z.discriminatedUnion('does', [
	z.strictObject({
		does: z.literal('load'),
		...poles,
		drawAs: choice('Draws', 'current', { current: 'a steady current (A)', power: 'a steady power (W)', resistance: 'as a resistance (Ω)' }),
		draw: amount('Rated draw', 'A, W or Ω', 5, {
			max: 50_000,
			unitBy: { param: 'drawAs', units: { current: 'A', power: 'W', resistance: 'Ω' } }
		}),
		critical: flag('Critical circuit', false, { hint: 'the tight voltage-drop limit applies' }),
		reversible: flag('Works either way round', false),
		startTimes: optionalAmount('Draws at start', '× rated', { max: 20, whenEmpty: 'no more than rated' }),
		startS: optionalAmount('Start lasts', 's', { max: 300, whenEmpty: 'not known' }),
		hoursPerDay: hoursADay('Hours a day')
	}),
	z.strictObject({
		does: z.literal('source'),
		...poles,
		maxA: amount('Rated output', 'A', 20, { max: 2000 }),
		setV: amount('Output voltage', 'V', 14.2, { max: 100 }),
		blocksReverse: flag('Blocks reverse current', true),
		alwaysOn: flag('A supply of its own', false, { hint: 'its output feeds loads without a battery' }),
		hoursPerDay: hoursADay('Hours a day at rated output')
	}),
	z.strictObject({
		does: z.literal('battery'),
		...poles,
		emfV: amount('Open-circuit voltage', 'V', 12.8, { max: 100 }),
		milliohm: amount('Internal resistance', 'mΩ', 10, { max: 100_000 }),
		capacityAh: amount('Capacity', 'Ah', 100, { max: 10_000 }),
		continuousA: optionalAmount('Discharge limit', 'A', { max: 5000, whenEmpty: 'not known' })
	}),
	z.strictObject({
		does: z.literal('converter'),
		id: RowId,
		positive: stud('Input + at'),
		negative: stud('Input − at'),
		outPositive: stud('Output + at'),
		outNegative: stud('Output − at'),
		maxA: amount('Rated output', 'A', 20, { max: 2000 }),
		setV: amount('Output voltage', 'V', 12.5, { max: 100 }),
		efficiency: share('Efficiency', 0.9),
		blocksReverse: flag('Blocks reverse current', true),
		alwaysOn: flag('A supply of its own', true, { hint: 'its output feeds loads without a battery' })
	})
]);

export type StudRow = z.output<typeof StudRow>;
export type LinkRow = z.output<typeof LinkRow>;
export type DeviceRow = z.output<typeof DeviceRow>;

type End = readonly [field: string, end: string];

/** A conductor's ends of a row, with the name of the field each stands in. */
export const endsOfRow = (row: LinkRow | DeviceRow): readonly End[] =>
	Object.entries(row).filter((entry): entry is [string, string] => END_FIELDS.has(entry[0]));

/** The two ends of each way through it: of a converter, its input and its output. */
export const pairsOfRow = (row: LinkRow | DeviceRow): [End, End][] => {
	const ends = endsOfRow(row);
	return ends.flatMap((end, index): [End, End][] => (index % 2 === 1 ? [[ends[index - 1]!, end]] : []));
};

const END_FIELDS: ReadonlySet<string> = new Set(['from', 'to', 'positive', 'negative', 'outPositive', 'outNegative']);
