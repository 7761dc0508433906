/** What positive and negative buses have in common: a bar with studs in a row. */
import * as z from 'zod';
import { ampsText } from '#core/units';
import { barSegments } from './copper.ts';
import { definePart, type PartDefinition, type Role } from './define.ts';
import { amount, choice, count, lengthMm, optionalAmount, thread } from './fields.ts';
import { rect, type Primitive } from '#core/graphics';
import { siteFields } from './site.ts';
import { body, centredBox, fixingHole, metal } from './sketch.ts';
import { stud } from './terminals.ts';

const DEPTH_MM = 56;
const END_MM = 24;

const opposite = (side: 'north' | 'south') => (side === 'north' ? 'south' : 'north');

interface BusBarKind {
	readonly kind: string;
	readonly name: string;
	readonly help: string;
	readonly role: Extract<Role, 'positive' | 'negative'>;
	/** The side conductors leave by when neither is nearer. */
	readonly exit: 'north' | 'south';
}

export function busBar({ kind, name, help, role, exit }: BusBarKind): PartDefinition {
	const params = z.strictObject({
		studs: count('Studs', 4, 2, 16),
		thread: thread('Stud thread', 'M8'),
		usableLengthMm: optionalAmount('Usable stud length', 'mm', { max: 100, whenEmpty: 'usual for the thread', hint: 'seat to thread end' }),
		pitchMm: lengthMm('Stud pitch', 30, 12, 100),
		ratedA: amount('Rating', 'A', 250, { max: 5000 }),
		sectionMm2: amount('Bar section', 'mm²', 100, { max: 5000 }),
		exit: choice(
			'Conductors leave',
			'nearer',
			{ nearer: 'on the nearer side', north: 'upward', south: 'downward' },
			{ hint: 'before the part is turned' }
		),
		coverHeightMm: optionalAmount('Cover height', 'mm', {
			max: 300,
			whenEmpty: 'no cover, or not known',
			hint: 'seat to the inside of the closed cover'
		}),
		coverSlotMm: optionalAmount('Cover slot', 'mm', {
			max: 100,
			whenEmpty: 'no cover, or not known',
			hint: 'thickest cable that leaves under the cover'
		}),
		...siteFields()
	});
	const box = ({ studs, pitchMm }: { studs: number; pitchMm: number }) => centredBox((studs - 1) * pitchMm + 2 * END_MM, DEPTH_MM);
	const ids = (studs: number) => Array.from({ length: studs }, (_, index) => String(index + 1));
	return definePart({
		kind,
		name,
		help,
		group: 'distribution',
		letter: 'X',
		params,
		terminals: (bus) =>
			ids(bus.studs).map((id, index) =>
				stud(id, `stud ${id}`, { x: (index - (bus.studs - 1) / 2) * bus.pitchMm, y: 0 }, bus.exit === 'nearer' ? exit : bus.exit, {
					...(bus.exit === 'nearer' && { otherSides: [opposite(exit)] }),
					thread: bus.thread,
					role,
					usableLengthMm: bus.usableLengthMm,
					coverHeightMm: bus.coverHeightMm,
					coverSlotMm: bus.coverSlotMm,
					ratedA: bus.ratedA
				})
			),
		links: (bus) => barSegments(ids(bus.studs), bus.pitchMm, bus.sectionMm2, bus.ratedA),
		outline(bus): Primitive[] {
			const { minX, maxX, minY, maxY } = box(bus);
			const width = maxX - minX;
			const edge = exit === 'south' ? minY : maxY - 5;
			return [
				body({ minX, maxX, minY, maxY }, 5),
				rect(minX + 14, edge, width - 28, 5, { fill: role, opacity: 0.75 }),
				...[minX + 7, maxX - 7].flatMap((x) => [fixingHole(x, minY + 8), fixingHole(x, maxY - 8)]),
				metal(minX + 12, -11, width - 24, 22, 2)
			];
		},
		box,
		summary: (bus) => `${bus.studs} × ${bus.thread}, ${ampsText(bus.ratedA)}`
	}) as unknown as PartDefinition;
}
