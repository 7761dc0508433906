/**
 * A legal order of assembly: nothing is live before what protects it is in place.
 *
 * Contract: every stud and clamp with something on it is in exactly one step; a stud with a fuse in its stack is
 * closed after the batteries are connected; battery posts come after everything else that carries no fuse; where the
 * negative is bonded, negative posts of batteries come last of the posts, so that a spanner from plus to metalwork
 * closes no circuit; where both poles float, positive posts come last, because the plus side has the disconnect and
 * the fuses that make closing it harmless (common practice, no source). Fuses that are merely plugged in come last,
 * those nearest to the batteries after all others; a solar array comes after its controller has its battery.
 */
import { terminalRef, type StudKey } from '#core/diagram';
import { deviceName, devicesOf, listed, partName, type Study } from '#core/rules';
import type { Stack } from '#core/studs';
import { ampsText, decimalText, voltsText } from '#core/units';
import type { ReportInput } from './input.ts';
import { TORQUE_SOURCE, torqueText } from './studs.ts';
import { handColumn, numberColumn, table, textColumn } from './table.ts';
import { naturally } from './words.ts';

export const PHASES = {
	prepare: 'Before the first conductor',
	negative: 'Negative side, without the batteries',
	positive: 'Positive side, loads first',
	other: 'Everything else that is not a battery post',
	dead: 'Measure while everything is dead',
	batteries: 'Battery posts',
	fuses: 'Fuses',
	live: 'Switch on'
} as const;
export type Phase = keyof typeof PHASES;

export interface AssemblyStep {
	/** Stays the same while what it is about does: progress is kept by it. */
	readonly id: string;
	readonly phase: Phase;
	readonly text: string;
	/** Stack sentence of the stud that is closed here. */
	readonly stack: string | null;
	/** "9 to 12 N·m (80 to 106 lbf·in)"; null where nothing is tightened to a torque. */
	readonly torque: string | null;
	/** What must be so before the next step. */
	readonly stop: string | null;
	/** Terminals that are closed in this step. */
	readonly studs: readonly StudKey[];
}

export function assemblyOrder(input: ReportInput): AssemblyStep[] {
	const { study } = input;
	if (study.parts.length === 0) return [];
	const posts = batteryPosts(study);
	const stacks = study.stacks.filter(({ terminal }) => terminal.mountingPlate !== true);
	const fused = stacks.filter(({ layers }) => layers.some(({ item }) => item.kind === 'fuse'));
	const atPosts = stacks.filter((stack) => posts.has(stack.key) && !fused.includes(stack));
	const free = stacks.filter((stack) => !posts.has(stack.key) && !fused.includes(stack));
	const hops = hopsFromBatteries(study);
	const poleOf = ({ key }: Stack): string => input.check.studPole[key] ?? 'floating';
	const farthestFirst = (a: Stack, b: Stack): number =>
		compare(hops.get(b.key) ?? Infinity, hops.get(a.key) ?? Infinity) || naturally(study.studName(a.key), study.studName(b.key));
	const ofPole = (test: (pole: string) => boolean): Stack[] => free.filter((stack) => test(poleOf(stack))).sort(farthestFirst);

	return [
		...prepare(study),
		...closeAll(
			study,
			'negative',
			ofPole((pole) => pole === 'negative')
		),
		...closeAll(
			study,
			'positive',
			ofPole((pole) => pole === 'positive')
		),
		...closeAll(
			study,
			'other',
			ofPole((pole) => pole !== 'negative' && pole !== 'positive')
		),
		...measureDead(study),
		...closeAll(study, 'batteries', byPost(atPosts, posts, study.diagram.system.negative)),
		...measurePosts(study),
		...fuseSteps(study, fused, hops),
		...switchOn(study)
	];
}

export function assemblyTable(input: ReportInput) {
	return table({
		id: 'assembly',
		title: 'Assembly order',
		lead: 'One step after the other. At a stop, measure, and go on only when it is right. Taken apart in the reverse order.',
		columns: [
			numberColumn('number', 'Step', '', { decimals: 0, weight: 0.5 }),
			textColumn('text', 'Do', 3),
			textColumn('stack', 'From the seat up', 3.6),
			textColumn('torque', 'Torque', 1.5),
			textColumn('stop', 'Stop until', 2.2),
			handColumn('done', 'Done, initials', 0.9)
		],
		rows: assemblyOrder(input).map(({ phase, text, stack, torque, stop }, index) => ({
			group: PHASES[phase],
			cells: { number: index + 1, text, stack, torque, stop, done: null }
		})),
		whenEmpty: 'The diagram has no parts.',
		notes: [
			`Torque: ${TORQUE_SOURCE}.`,
			'One legal order of several; instructions of the makers of inverters, controllers and batteries go first.'
		]
	});
}

/** Infinity less Infinity is no order. */
const compare = (a: number, b: number): number => (a === b ? 0 : a - b);

const step = (phase: Phase, id: string, text: string, rest: Partial<AssemblyStep> = {}): AssemblyStep => ({
	id: `${phase}:${id}`,
	phase,
	text,
	stack: null,
	torque: null,
	stop: null,
	studs: [],
	...rest
});

/** "positive" and "negative" ends of strings and "middle" between blocks in series. */
type Post = 'middle' | 'positive' | 'negative';

function batteryPosts({ parts, network }: Study): Map<StudKey, Post> {
	const ends = parts.flatMap(({ id, links }) =>
		links.flatMap((link) =>
			link.kind === 'battery'
				? [
						{ key: `${id}.${link.positive}`, pole: 'positive' as const },
						{ key: `${id}.${link.negative}`, pole: 'negative' as const }
					]
				: []
		)
	);
	return new Map(
		ends.map(({ key, pole }) => {
			const node = network.nodeOf.get(key);
			const isMiddle = node !== undefined && pole === 'negative' && network.poles[node] === 'positive';
			return [key, isMiddle ? 'middle' : pole];
		})
	);
}

const POST_ORDER: Readonly<Record<'bonded' | 'insulated', readonly Post[]>> = {
	bonded: ['middle', 'positive', 'negative'],
	insulated: ['middle', 'negative', 'positive']
};

function byPost(stacks: readonly Stack[], posts: ReadonlyMap<StudKey, Post>, system: 'bonded' | 'insulated'): Stack[] {
	const rank = ({ key }: Stack): number => POST_ORDER[system].indexOf(posts.get(key)!);
	return stacks.toSorted((a, b) => rank(a) - rank(b) || naturally(a.key, b.key));
}

/** Branches between each terminal and the nearest battery post. */
function hopsFromBatteries({ network }: Study): Map<StudKey, number> {
	const hops = new Map<number, number>();
	let edge = network.batteries.flatMap(({ positive, negative }) => [positive, negative]);
	for (const node of edge) hops.set(node, 0);
	for (let distance = 1; edge.length > 0; distance++) {
		const next: number[] = [];
		for (const node of edge)
			for (const index of network.branchesAt[node] ?? []) {
				const { a, b } = network.branches[index]!;
				const other = a === node ? b : a;
				if (hops.has(other)) continue;
				hops.set(other, distance);
				next.push(other);
			}
		edge = next;
	}
	return new Map([...network.nodeOf].flatMap(([key, node]) => (hops.has(node) ? [[key, hops.get(node)!] as const] : [])));
}

/** One step for each stud; the clamps of a part are one step. */
function closeAll(study: Study, phase: Phase, stacks: readonly Stack[]): AssemblyStep[] {
	const steps: AssemblyStep[] = [];
	const clamped = new Map<string, Stack[]>();
	for (const stack of stacks) {
		if (stack.terminal.kind === 'stud') {
			const { thread } = stack.terminal;
			steps.push(
				step(phase, stack.key, `Close ${study.studName(stack.key)}.`, {
					stack: stack.sentence,
					torque: thread === null ? null : torqueText(thread),
					studs: [stack.key]
				})
			);
			continue;
		}
		const { part } = terminalRef(stack.key);
		const known = clamped.get(part);
		if (known) known.push(stack);
		else {
			clamped.set(part, [stack]);
			// Its place among the steps; the text is known once all its clamps are.
			steps.push(step(phase, `${part} clamps`, part));
		}
	}
	return steps.map((made) => {
		const own = clamped.get(made.text);
		if (!own || made.studs.length > 0) return made;
		return {
			...made,
			text: `Clamp ${partName(study.part(made.text))}: ${own.map(({ terminal, layers }) => `${terminal.label}: ${layers.map(({ label }) => label).join(' and ')}`).join('; ')}.`,
			studs: own.map(({ key }) => key)
		};
	});
}

function prepare(study: Study): AssemblyStep[] {
	const switches = study.parts.filter(({ links }) => links.some(({ kind }) => kind === 'switch')).map(partName);
	const devices = devicesOf(study);
	const fuses = devices.filter(({ device }) => device.kind === 'fuse').length;
	const breakers = devices.filter(({ device }) => device.kind === 'breaker').map(({ origin }) => deviceName(study, origin));
	const batteries = study.network.batteries.map(({ part }) => partName(study.part(part)));
	return [
		step(
			'prepare',
			'batteries',
			`${batteries.length === 0 ? 'Keep every supply off' : `Leave ${listed(batteries)} unconnected, posts covered`}. Keep chargers off and solar arrays covered or unplugged.`
		),
		...(fuses > 0
			? [
					step(
						'prepare',
						'fuses',
						`Take out ${fuses === 1 ? 'the fuse' : `all ${fuses} fuses`} and keep ${fuses === 1 ? 'it' : 'them'} apart.`
					)
				]
			: []),
		...(switches.length + breakers.length > 0 ? [step('prepare', 'switches', `Open ${listed([...switches, ...breakers])}.`)] : []),
		step(
			'prepare',
			'fix',
			'Fix the parts, grommets and supports. Pull the conductors, labels and heat-shrink on them, and crimp their ends by the cut list.',
			{
				stop: 'every crimp holds a hard tug'
			}
		)
	];
}

const measureDead = (study: Study): AssemblyStep[] =>
	study.stacks.length === 0
		? []
		: [
				step('dead', 'insulation', 'Loads off, fuses out: measure between positive and negative, and from each to chassis or hull.', {
					stop:
						study.diagram.system.negative === 'bonded'
							? 'plus to minus above 10 kΩ; minus to chassis only through its bond'
							: 'all above 10 kΩ'
				}),
				step('dead', 'continuity', 'Measure every conductor from end to end, and read the label at both ends.', {
					stop: 'each arrives where its label says'
				})
			];

const measurePosts = ({ network, part }: Study): AssemblyStep[] =>
	network.batteries.length === 0
		? []
		: [
				step(
					'batteries',
					'polarity',
					`Measure each battery: ${network.batteries.map((battery) => `${partName(part(battery.part))} about ${voltsText(battery.emfV)}`).join(', ')}.`,
					{
						stop: `plus is plus everywhere, and strings differ by at most ${decimalText(0.05)} V`
					}
				)
			];

/** Fuses plugged in, and studs closed over theirs: the ones nearest to the batteries last, so that all others go in dead. */
function fuseSteps(study: Study, fused: readonly Stack[], hops: ReadonlyMap<StudKey, number>): AssemblyStep[] {
	const hopOf = new Map([...hops].map(([key, hop]) => [study.network.nodeOf.get(key)!, hop]));
	const inStacks = new Set(fused.map(({ key }) => terminalRef(key).part));
	const plugged = devicesOf(study)
		.filter(({ device, origin }) => device.kind === 'fuse' && !inStacks.has(origin.part))
		.map(({ a, b, device, origin }) => ({
			hop: Math.min(hopOf.get(a) ?? Infinity, hopOf.get(b) ?? Infinity),
			ratingA: device.ratingA,
			made: [step('fuses', `${origin.part}.${origin.link}`, `Fit ${deviceName(study, origin)}: ${ampsText(device.ratingA)}.`)]
		}));
	const stacked = fused.map((stack) => ({
		hop: (hops.get(stack.key) ?? Infinity) - 1,
		ratingA: 0,
		made: closeAll(study, 'fuses', [stack])
	}));
	return [...plugged, ...stacked].toSorted((x, y) => compare(y.hop, x.hop) || x.ratingA - y.ratingA).flatMap(({ made }) => made);
}

function switchOn(study: Study): AssemblyStep[] {
	const isSunFed = ({ links }: Study['parts'][number]) => links.some((link) => link.kind === 'source' && link.daily?.kind === 'sun');
	const arrays = study.parts.filter(isSunFed).map(partName);
	const switches = study.parts.filter(({ links }) => links.some(({ kind }) => kind === 'switch')).map(partName);
	return [
		...(switches.length > 0
			? [
					step('live', 'switches', `Close ${listed(switches)}, loads off. Pre-charge large inverters as their maker says.`, {
						stop: 'nothing warms, no fuse opens'
					})
				]
			: []),
		...(arrays.length > 0
			? [
					step('live', 'arrays', `Uncover or plug in the solar array of ${listed(arrays)}, now that it has its battery.`, {
						stop: 'each controller shows its battery’s volts'
					})
				]
			: []),
		step('live', 'test', 'Go through the commissioning sheet.', { stop: 'every reading is within what the model says' })
	];
}
