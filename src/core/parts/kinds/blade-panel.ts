import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart, type Link } from '../define.ts';
import { adapted, amount, count, flag, fuseFamily, names, optionalAmount, ratings, thread } from '../fields.ts';
import { body, centredBox } from '../sketch.ts';
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
	thread: thread('Feed stud thread', 'M6')
});

type Params = z.output<typeof params>;

/** Strips inside the panel, a few centimetres of thin bar. */
const STRIP_OHM = 0.000_1;

const ROW_MM = 17;
const COLUMN_X_MM = 42;
const STRIP_Y_MM = 16;

const rows = ({ ways }: Params): number => Math.ceil(ways / 2);
const heightMm = (panel: Params): number => rows(panel) * ROW_MM + 46 + (panel.negativeStrip ? 34 : 0);
const box = (panel: Params) => centredBox(108, heightMm(panel));
const rowY = (panel: Params, row: number): number => -heightMm(panel) / 2 + 40 + row * ROW_MM;

/** Ways are numbered down the left column, then down the right. */
function wayAt(panel: Params, index: number) {
	const left = index < rows(panel);
	const x = left ? -COLUMN_X_MM : COLUMN_X_MM;
	return { at: { x, y: rowY(panel, left ? index : index - rows(panel)) }, side: left ? ('west' as const) : ('east' as const) };
}

/** Returns stand in a row of clamps along the lower edge. */
function returnAt(panel: Params, index: number) {
	const step = Math.min(ROW_MM, 84 / panel.ways);
	return { x: (index - (panel.ways - 1) / 2) * step + 6, y: heightMm(panel) / 2 - STRIP_Y_MM + 6 };
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
			stud('feed', '+ feed', { x: panel.negativeStrip ? -20 : 0, y: top }, 'north', { ...feed, role: 'positive' }),
			...(panel.negativeStrip ? [stud('neg', '− feed', { x: 20, y: top }, 'north', { ...feed, role: 'negative' })] : []),
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
	outline: (panel) => [body(box(panel))],
	box,
	summary: (panel) => `${panel.ways} ways, ${ampsText(panel.ratedA)}`
});
