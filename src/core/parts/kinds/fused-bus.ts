import * as z from 'zod';
import { ampsText } from '#core/units';
import { barSegments, protectiveLink } from '../copper.ts';
import { definePart, type Link } from '../define.ts';
import { adapted, amount, count, fuseFamily, lengthMm, names, optionalAmount, ratings, thread } from '../fields.ts';
import { rect, type Primitive } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, bolt, cartridgeFuse, fittedText, fixingHole, metal, stripFuse } from '../sketch.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	positions: count('Fuse positions', 4, 2, 12),
	family: fuseFamily('Fuse type', 'strip-sf51', ['strip-sf51', 'strip-sf30', 'limiter', 'class-t', 'cylindrical']),
	fuseA: ratings('Fuses', [100, 100, 100, 100], 'positions'),
	names: names('What each position feeds', 'positions'),
	fuseRatedV: optionalAmount('Fuses usable up to', 'V', { max: 1000, whenEmpty: 'as the fuse type' }),
	fuseBreakingA: optionalAmount('Breaking capacity of the fuses', 'A', { max: 200_000, whenEmpty: 'as the fuse type' }),
	positionRatedA: optionalAmount('A position takes fuses up to', 'A', { max: 2000 }),
	ratedA: amount('Bar rating', 'A', 500, { max: 5000 }),
	sectionMm2: amount('Bar section', 'mm²', 150, { max: 5000 }),
	pitchMm: lengthMm('Pitch of positions', 30, 20, 80),
	endThread: thread('End stud thread', 'M8'),
	endUsableMm: optionalAmount('Usable length of end studs', 'mm', {
		max: 100,
		whenEmpty: 'usual for the thread',
		hint: 'seat to thread end'
	}),
	positionThread: thread('Position stud thread', 'M8'),
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

type Params = z.output<typeof params>;

/** The bar runs along here; fuses hang from it to the position studs. */
const BAR_Y_MM = -26;
const FUSE_LENGTH_MM = 51;
const END_GAP_MM = 34;
const END_MM = 26;

const positionX = ({ positions, pitchMm }: Params, index: number): number => (index - (positions - 1) / 2) * pitchMm;
const endX = (bus: Params): number => -positionX(bus, 0) + END_GAP_MM;
const fuseSpacingMm = ({ family }: Params): number => (family === 'strip-sf30' ? 30 : FUSE_LENGTH_MM);
const box = (bus: Params) => ({ minX: -endX(bus) - END_MM, maxX: endX(bus) + END_MM, minY: -66, maxY: 50 });

function fuseBody(bus: Params, x: number, ratingA: number | null): Primitive[] {
	const draw = bus.family === 'class-t' || bus.family === 'cylindrical' ? cartridgeFuse : stripFuse;
	return draw(x, BAR_Y_MM, x, BAR_Y_MM + fuseSpacingMm(bus), ratingA);
}

/** The edge of the cover, where there is one. */
const cover = (minX: number, minY: number, maxX: number, maxY: number): Primitive =>
	rect(minX + 3, minY + 3, maxX - minX - 6, maxY - minY - 6, { stroke: 'case-edge', width: 0.4, dash: [4, 2.5], r: 4 });

export const fusedBus = definePart({
	kind: 'fused-bus',
	name: 'Fused distribution bus',
	help: 'A positive bus with a fuse for each outgoing circuit, and an unfused stud at either end: feed it there, or mount a fuse block on it.',
	group: 'distribution',
	letter: 'X',
	params,
	terminals(bus) {
		const cover = { coverHeightMm: bus.coverHeightMm, coverSlotMm: bus.coverSlotMm };
		const end = {
			thread: bus.endThread,
			otherSides: ['north' as const],
			role: 'positive' as const,
			usableLengthMm: bus.endUsableMm,
			ratedA: bus.ratedA,
			...cover
		};
		const at = (x: number) => ({ x, y: BAR_Y_MM });
		return [
			stud('L', 'end stud L', at(-endX(bus)), 'west', { ...end, print: { text: 'L', at: { x: -endX(bus), y: BAR_Y_MM + 20 } } }),
			...adapted(bus.fuseA, bus.positions, null).map((ratingA, index) =>
				stud(
					String(index + 1),
					`position ${index + 1}`,
					{ x: positionX(bus, index), y: BAR_Y_MM + fuseSpacingMm(bus) },
					'south',
					// A fuse sits under the lug here, so a block's plate would find no seat.
					{ thread: bus.positionThread, role: 'positive', ratedA: ratingA, acceptsBlock: false, ...cover }
				)
			),
			stud('R', 'end stud R', at(endX(bus)), 'east', { ...end, print: { text: 'R', at: { x: endX(bus), y: BAR_Y_MM + 20 } } })
		];
	},
	links(bus) {
		const onBar = Array.from({ length: bus.positions }, (_, index) => `@${index + 1}`);
		const fuses = adapted(bus.fuseA, bus.positions, null).flatMap((ratingA, index): Link[] =>
			ratingA === null
				? []
				: [
						protectiveLink(`fuse-${index + 1}`, [`@${index + 1}`, String(index + 1)], {
							ratingA,
							family: bus.family,
							ratedV: bus.fuseRatedV,
							breakingA: bus.fuseBreakingA
						})
					]
		);
		return [...barSegments(['L', ...onBar, 'R'], bus.pitchMm, bus.sectionMm2, bus.ratedA), ...fuses];
	},
	outline(bus) {
		const { minX, maxX, minY, maxY } = box(bus);
		const nameOf = adapted(bus.names, bus.positions, '');
		return [
			body({ minX, maxX, minY, maxY }, 5),
			rect(minX + 18, minY, maxX - minX - 36, 4, { fill: 'positive', opacity: 0.75 }),
			...[minX + 8, maxX - 8].flatMap((x) => [fixingHole(x, minY + 8), fixingHole(x, maxY - 8)]),
			...(bus.coverHeightMm === null ? [] : [cover(minX, minY, maxX, maxY)]),
			metal(minX + 10, BAR_Y_MM - 11, maxX - minX - 20, 22, 2),
			...adapted(bus.fuseA, bus.positions, null).flatMap((ratingA, index) => {
				const x = positionX(bus, index);
				return [
					...fuseBody(bus, x, ratingA),
					...bolt(x, BAR_Y_MM, bus.positionThread),
					// As wide as the strip beside the bar, so that it also fits when the bus stands upright.
					fittedText(x, minY + 16, `${index + 1} ${nameOf[index]!}`.trim(), 7.5, Math.min(bus.pitchMm - 2, 25), { bold: true })
				];
			})
		];
	},
	box,
	summary: (bus) => `${bus.positions} positions, bar ${ampsText(bus.ratedA)}`
});
