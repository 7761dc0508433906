import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart, type Link } from '../define.ts';
import { adapted, amount, count, flag, fuseFamily, names, optionalAmount, ratings, thread } from '../fields.ts';
import { rect } from '#core/graphics';
import { siteFields } from '../site.ts';
import { bladeFuse, body, centredBox, fittedText, fixingHole, raised } from '../sketch.ts';
import { clamp, stud } from '../terminals.ts';

const params = z.strictObject({
	ways: count('Ways', 6, 2, 24),
	family: fuseFamily('Fuse type', 'blade-regular', ['blade-mini', 'blade-regular', 'blade-large']),
	fuseA: ratings('Fuses', [10, 10, 10, 10, 10, 10], 'ways'),
	names: names('What each way feeds', 'ways'),
	fuseRatedV: optionalAmount('Fuses usable up to', 'V', { max: 1000, whenEmpty: 'as the fuse type' }),
	fuseBreakingA: optionalAmount('Breaking capacity of the fuses', 'A', { max: 200_000, whenEmpty: 'as the fuse type' }),
	ratedA: amount('Panel rating', 'A', 100, { max: 1000 }),
	wayRatedA: amount('Rating of a way', 'A', 30, { max: 200 }),
	negativeStrip: flag('With a negative strip', true),
	thread: thread('Feed stud thread', 'M6'),
	...siteFields()
});

type Params = z.output<typeof params>;

/** Strips inside the panel, a few centimetres of thin bar. */
const STRIP_OHM = 0.000_1;

const ROW_MM = 18;
const COLUMN_X_MM = 68;
const FUSE_X_MM = 47;
const WIDTH_MM = 160;
const HEAD_MM = 44;
const STRIP_MM = 30;

const rows = ({ ways }: Params): number => Math.ceil(ways / 2);
const heightMm = (panel: Params): number => rows(panel) * ROW_MM + HEAD_MM + (panel.negativeStrip ? STRIP_MM : 8);
const box = (panel: Params) => centredBox(WIDTH_MM, heightMm(panel));
const rowY = (panel: Params, row: number): number => -heightMm(panel) / 2 + HEAD_MM + (row + 0.5) * ROW_MM;

/** Ways are numbered down the left column, then down the right. */
function wayAt(panel: Params, index: number) {
	const left = index < rows(panel);
	const x = left ? -COLUMN_X_MM : COLUMN_X_MM;
	return { at: { x, y: rowY(panel, left ? index : index - rows(panel)) }, side: left ? ('west' as const) : ('east' as const) };
}

/** Returns stand in a row of clamps along the lower edge. */
function returnAt(panel: Params, index: number) {
	const step = Math.min(ROW_MM, (WIDTH_MM - 28) / panel.ways);
	return { x: (index - (panel.ways - 1) / 2) * step, y: heightMm(panel) / 2 - 11 };
}

export const bladePanel = definePart({
	kind: 'blade-panel',
	name: 'Blade-fuse panel',
	help: 'Feeds small circuits, each through its own blade fuse. Its feeder needs a fuse no larger than the panel rating.',
	group: 'distribution',
	letter: 'F',
	params,
	terminals(panel) {
		const top = -heightMm(panel) / 2 + 16;
		const ratingA = adapted(panel.fuseA, panel.ways, null);
		const ways = ratingA.map((fuseA, index) => {
			const { at, side } = wayAt(panel, index);
			return clamp(String(index + 1), `way ${index + 1}`, at, side, { role: 'positive', ratedA: fuseA ?? panel.wayRatedA });
		});
		const returns = ratingA.map((_, index) =>
			clamp(`n${index + 1}`, `return ${index + 1}`, returnAt(panel, index), 'south', { role: 'negative', ratedA: panel.wayRatedA })
		);
		const feed = { thread: panel.thread, ratedA: panel.ratedA, maxTerminals: 2 };
		return [
			stud('feed', '+ feed', { x: panel.negativeStrip ? 24 : 50, y: top }, 'north', { ...feed, role: 'positive' }),
			...(panel.negativeStrip ? [stud('neg', '− feed', { x: 56, y: top }, 'north', { ...feed, role: 'negative' })] : []),
			...ways,
			...(panel.negativeStrip ? returns : [])
		];
	},
	links(panel) {
		const strip = (id: string, between: readonly [string, string], ratedA: number): Link => ({
			kind: 'segment',
			id,
			between,
			resistanceOhm: STRIP_OHM,
			ratedA
		});
		const fuses = adapted(panel.fuseA, panel.ways, null).flatMap((ratingA, index): Link[] =>
			ratingA === null
				? []
				: [
						protectiveLink(`fuse-${index + 1}`, ['@bar', String(index + 1)], {
							ratingA,
							family: panel.family,
							ratedV: panel.fuseRatedV,
							breakingA: panel.fuseBreakingA
						})
					]
		);
		const returns = Array.from({ length: panel.ways }, (_, index) =>
			strip(`return-${index + 1}`, ['@strip', `n${index + 1}`], panel.wayRatedA)
		);
		return [
			strip('bar', ['feed', '@bar'], panel.ratedA),
			...fuses,
			...(panel.negativeStrip ? [strip('strip', ['neg', '@strip'], panel.ratedA), ...returns] : [])
		];
	},
	outline(panel) {
		const { minX, minY, maxX, maxY } = box(panel);
		const nameOf = adapted(panel.names, panel.ways, '');
		const fuseWidthMm = panel.family === 'blade-large' ? 26 : panel.family === 'blade-mini' ? 13 : 20;
		return [
			body({ minX, minY, maxX, maxY }, 5),
			...[minX + 7, maxX - 7].flatMap((x) => [fixingHole(x, minY + 7), fixingHole(x, maxY - 7)]),
			...[-1, 1].map((side) => raised(side * FUSE_X_MM - 15, rowY(panel, 0) - ROW_MM / 2, 30, rows(panel) * ROW_MM, 3)),
			...adapted(panel.fuseA, panel.ways, null).flatMap((ratingA, index) => {
				const { at, side } = wayAt(panel, index);
				const inward = side === 'west' ? 1 : -1;
				return [
					...bladeFuse(-inward * FUSE_X_MM, at.y, fuseWidthMm, ratingA),
					fittedText(-inward * 16, at.y, `${index + 1} ${nameOf[index]!}`.trim(), 6, 28, { fill: 'muted' })
				];
			}),
			...(panel.negativeStrip
				? [rect(minX + 12, maxY - 20, maxX - minX - 24, 16, { fill: 'case-raised', stroke: 'negative', width: 0.6, r: 2 })]
				: [])
		];
	},
	nameplate(panel) {
		const { minX, minY, maxX } = box(panel);
		return { minX: minX + 12, maxX: panel.negativeStrip ? 8 : maxX - 46, minY: minY + 6, maxY: minY + HEAD_MM - 8 };
	},
	box,
	summary: (panel) => `${panel.ways} ways, ${ampsText(panel.ratedA)}`
});
