import * as z from 'zod';
import { choice, lengthMm, optionalAmount, words } from '../fields.ts';
import { siteFields } from '../site.ts';
import { DeviceRow, LinkRow, StudRow } from './rows.ts';

const maker = { section: 'maker' } as const;

/** Poles of the part as it comes: two, so that what is placed can be wired at once. */
const STUDS = [
	{ id: 's1', name: '+', role: 'positive', leftMm: 30, topMm: 20 },
	{ id: 's2', name: '−', role: 'negative', leftMm: 90, topMm: 20 }
] as const;

const list = <Row extends z.ZodType>(title: string, row: Row, most: number, standard: readonly z.input<Row>[] = []) =>
	z
		.array(row)
		.max(most)
		.default(standard.map((given) => row.parse(given)) as never)
		.meta({ title, ...maker });

/** All that a part of somebody's own is made of. */
export const ownParams = z.strictObject({
	name: words('Name', 'Own part', 60, maker),
	letter: choice(
		'Class letter',
		'E',
		{
			E: 'E: load, lamp, heater',
			M: 'M: motor',
			G: 'G: source, battery',
			T: 'T: converter, charger',
			F: 'F: fuse, breaker',
			Q: 'Q: switch, relay',
			B: 'B: sensing, shunt',
			X: 'X: connection, bus',
			A: 'A: several of these'
		},
		{ ...maker, hint: 'of its designation, IEC 81346-2' }
	),
	shape: choice('Outline', 'rounded', { rounded: 'rounded corners', square: 'square corners', round: 'round ends' }, maker),
	widthMm: lengthMm('Width', 120, 20, 1000, maker),
	heightMm: lengthMm('Height', 90, 20, 1000, maker),
	studs: list('Studs and clamps', StudRow, 40, STUDS),
	links: list('Links inside', LinkRow, 40),
	devices: list('What it does', DeviceRow, 12),
	madeForV: optionalAmount('Made for', 'V', { max: 100, whenEmpty: 'the voltage it is fed with', hint: 'nominal voltage on its label' }),
	maxFuseA: optionalAmount('Largest fuse allowed', 'A', { max: 2000, whenEmpty: 'no limit known', hint: 'by its instructions' }),
	minV: optionalAmount('Works down to', 'V', { max: 100, whenEmpty: 'not known' }),
	minInputV: optionalAmount('Input works down to', 'V', { max: 100, whenEmpty: 'not known', hint: 'of a converter' }),
	chemistry: choice('Battery chemistry', 'not-given', {
		'not-given': 'none, or not given',
		'lithium-iron-phosphate': 'lithium iron phosphate',
		'lead-acid': 'lead-acid'
	}),
	...siteFields()
});

export type OwnParams = z.output<typeof ownParams>;
