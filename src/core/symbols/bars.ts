/** Metal that joins three ends or more: a bar, with what is not on it led to it. */
import type { Point } from '#core/geometry';
import { line, type Primitive } from '#core/graphics';
import type { Link, PartDescription, Terminal } from '#core/parts';
import { HEAVY, joint, lead } from './ink.ts';

export interface Bar {
	readonly members: ReadonlySet<string>;
	readonly from: Point;
	readonly to: Point;
}

/** Bars of a part: ends joined by segments, three of them or more, or two that meet other links inside. */
export function barsOf({ links, terminals }: PartDescription): Bar[] {
	const group = new Map<string, Set<string>>();
	const groupOf = (end: string): Set<string> => {
		let found = group.get(end);
		if (!found) group.set(end, (found = new Set([end])));
		return found;
	};
	for (const link of links) {
		const ends = endsOf(link);
		if (link.kind !== 'segment' || ends.some(isOutside)) continue;
		const [a, b] = [groupOf(ends[0]!), groupOf(ends[1]!)];
		if (a === b) continue;
		for (const end of b) {
			a.add(end);
			group.set(end, a);
		}
	}
	return [...new Set(group.values())].flatMap((members) => barOf(members, links, terminals));
}

export const endsOf = (link: Link): readonly string[] => ('between' in link ? link.between : [link.positive, link.negative]);

/** The metal of the craft, which is no place in a part. */
export const isOutside = (end: string): boolean => end.startsWith('@@');

/** Level or upright as most of the terminals on it and behind it lie. */
function barOf(members: ReadonlySet<string>, links: readonly Link[], terminals: readonly Terminal[]): Bar[] {
	const behind = links
		.filter(({ kind }) => kind !== 'segment')
		.flatMap((link) => (endsOf(link).some((end) => members.has(end)) ? endsOf(link) : []));
	const on = terminals.filter(({ id }) => members.has(id));
	const near = terminals.filter(({ id }) => behind.includes(id) && !members.has(id));
	if (members.size < 3 && near.length < 2) return [];
	const all = [...on, ...near];
	const level =
		near.length > 0
			? near.filter(isUpright).length * 2 >= near.length
			: sameMost(on.map(({ at }) => at.y)) >= sameMost(on.map(({ at }) => at.x));
	const axis = level ? 'x' : 'y';
	const across = level ? 'y' : 'x';
	const place = on.length > 0 ? most(on.map(({ at }) => at[across])) : mean(all.map(({ at }) => at[across]));
	const spread = all.map(({ at }) => at[axis]);
	const point = (along: number): Point => (level ? { x: along, y: place } : { x: place, y: along });
	return [{ members, from: point(Math.min(...spread)), to: point(Math.max(...spread)) }];
}

const isUpright = ({ side }: Terminal): boolean => side === 'north' || side === 'south';
const sameMost = (values: readonly number[]): number =>
	Math.max(0, ...values.map((value) => values.filter((other) => other === value).length));
const most = (values: readonly number[]): number =>
	values.toSorted((a, b) => values.filter((v) => v === b).length - values.filter((v) => v === a).length)[0]!;
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The point of the bar nearest to another. */
export const onBar = ({ from, to }: Bar, { x, y }: Point): Point => ({
	x: Math.min(Math.max(x, from.x), to.x),
	y: Math.min(Math.max(y, from.y), to.y)
});

export const drawBar = (bar: Bar, terminals: readonly Terminal[]): Primitive[] => [
	line(bar.from.x, bar.from.y, bar.to.x, bar.to.y, HEAVY),
	...terminals
		.filter(({ id }) => bar.members.has(id))
		.flatMap(({ at }) => {
			const foot = onBar(bar, at);
			return foot.x === at.x && foot.y === at.y ? [] : [lead(foot, at), joint(foot)];
		})
];
