import * as z from 'zod';
import { AWG_SIZES } from '#core/diagram';
import { ampsText, decimalText } from '#core/units';
import type { FuseFamilyId } from '#core/tables';
import { protectiveLink } from '../copper.ts';
import { definePart } from '../define.ts';
import { choice, fuseFamily, fuseRating, optionalAmount, thread } from '../fields.ts';
import { rect, type Primitive } from '#core/graphics';
import { siteFields } from '../site.ts';
import { bladeFuse, body, cartridgeFuse, centredBox, cubeFuse, fittedText, stripFuse } from '../sketch.ts';
import { fuseSymbol } from '../symbols.ts';
import { clamp, stud } from '../terminals.ts';

const params = z.strictObject({
	family: fuseFamily('Fuse type', 'blade-regular'),
	fuseA: fuseRating('Fuse', 15),
	ratedV: optionalAmount('Fuse usable up to', 'V', { max: 1000, whenEmpty: 'as the fuse type' }),
	breakingA: optionalAmount('Breaking capacity', 'A', { max: 200_000, whenEmpty: 'as the fuse type' }),
	holderA: optionalAmount('Holder takes fuses up to', 'A', { max: 2000 }),
	holderGauge: choice('Holder takes conductors up to', 'not-known', {
		'not-known': 'not known',
		...(Object.fromEntries(AWG_SIZES.map((size) => [size, `${size} AWG`])) as Record<(typeof AWG_SIZES)[number], string>)
	}),
	connection: choice('Connected by', 'auto', { auto: 'as usual for the fuse type', studs: 'studs', clamps: 'clamps or tails' }),
	thread: thread('Stud thread', 'M8'),
	...siteFields()
});

type Params = z.output<typeof params>;

const CLAMPED: readonly FuseFamilyId[] = ['blade-mini', 'blade-regular', 'blade-large', 'cylindrical'];

const hasStuds = ({ connection, family }: Params): boolean => (connection === 'auto' ? !CLAMPED.includes(family) : connection === 'studs');

const size = (fuse: Params) => (hasStuds(fuse) ? { widthMm: 110, depthMm: 40, reachMm: 38 } : { widthMm: 64, depthMm: 24, reachMm: 28 });
const box = (fuse: Params) => centredBox(size(fuse).widthMm, size(fuse).depthMm);

/** The fuse itself, between the two terminals. */
function element({ family, fuseA, ...rest }: Params, reachMm: number): Primitive[] {
	if (!hasStuds({ family, fuseA, ...rest }))
		return bladeFuse(0, 0, family === 'blade-large' ? 29 : family === 'blade-mini' ? 15 : 24, fuseA);
	switch (family) {
		case 'class-t':
		case 'cylindrical':
			return cartridgeFuse(-reachMm, -2, reachMm, -2, fuseA);
		case 'cube':
			return [...cubeFuse(0, -2, fuseA), fittedText(0, -2, fuseA === null ? '' : decimalText(fuseA), 8, 22, { bold: true })];
		default:
			return stripFuse(-reachMm, -2, reachMm, -2, fuseA);
	}
}

export const inlineFuse = definePart({
	kind: 'inline-fuse',
	name: 'In-line fuse',
	help: 'A fuse in its own holder, in the run of a positive conductor. It belongs at the source end.',
	group: 'protection',
	letter: 'F',
	params,
	terminals(fuse) {
		const x = size(fuse).reachMm;
		return hasStuds(fuse)
			? [
					stud('in', 'in', { x: -x, y: 0 }, 'west', { thread: fuse.thread, ratedA: fuse.fuseA }),
					stud('out', 'out', { x, y: 0 }, 'east', { thread: fuse.thread, ratedA: fuse.fuseA })
				]
			: [
					clamp('in', 'in', { x: -x, y: 0 }, 'west', { ratedA: fuse.fuseA }),
					clamp('out', 'out', { x, y: 0 }, 'east', { ratedA: fuse.fuseA })
				];
	},
	links: (fuse) =>
		fuse.fuseA === null
			? []
			: [
					protectiveLink('fuse', ['in', 'out'], {
						ratingA: fuse.fuseA,
						family: fuse.family,
						ratedV: fuse.ratedV,
						breakingA: fuse.breakingA
					})
				],
	outline(fuse) {
		const { widthMm, depthMm, reachMm } = size(fuse);
		return [
			body(box(fuse), hasStuds(fuse) ? 5 : 8),
			// Ribs that hold the cover.
			...[-1, 1].map((side) =>
				rect(side * (widthMm / 2 - 4) - 1, -depthMm / 2 + 4, 2, depthMm - 8, { fill: 'case-raised', stroke: 'case-edge', width: 0.3 })
			),
			...element(fuse, reachMm),
			...(hasStuds(fuse) ? fuseSymbol(0, depthMm / 2 - 4.5, 16) : [])
		];
	},
	box,
	summary: (fuse) => (fuse.fuseA === null ? 'no fuse' : ampsText(fuse.fuseA))
});
