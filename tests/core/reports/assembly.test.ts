/** Order of work: common practice, no source: negatives and loads first while all is dead, batteries after, fuses last. */
import { describe, expect, test } from 'vitest';
import { unionFind } from '#core/network';
import { assemblyOrder, reportInput, type AssemblyStep } from '#core/reports';
import { example } from '../../support/examples/figures.ts';

const EXAMPLES = ['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]);
/** With a battery on whose post a conductor lands with no fuse between. */
const BARE_POSTS = ['pagemoor-before', 'otters-reach-before', 'otters-reach-after', 'skarv-fell-before'];

describe.each(EXAMPLES)('assembly of %s', (name) => {
	const input = reportInput(example(name));
	const steps = assemblyOrder(input);
	const stepOf = (key: string) => steps.findIndex(({ studs }) => studs.includes(key));
	const posts = input.study.parts.flatMap(({ id, links }) =>
		links.flatMap((link) => (link.kind === 'battery' ? [`${id}.${link.positive}`, `${id}.${link.negative}`] : []))
	);
	const landed = input.study.stacks.filter(({ terminal }) => terminal.mountingPlate !== true);
	const hasFuse = (key: string) => landed.find((stack) => stack.key === key)!.layers.some(({ item }) => item.kind === 'fuse');

	test('every stud and clamp with something on it is closed exactly once', () => {
		const closed = steps.flatMap(({ studs }) => studs);
		expect([...closed].sort()).toEqual(landed.map(({ key }) => key).sort());
	});
	test('battery posts come after everything that holds no fuse', () => {
		const others = landed.map(({ key }) => key).filter((key) => !posts.includes(key) && !hasFuse(key));
		const first = Math.min(...posts.filter((key) => stepOf(key) >= 0).map(stepOf));
		expect(Math.max(...others.map(stepOf))).toBeLessThan(first);
	});
	test('no fuse is fitted before the batteries are on', () => {
		const lastPost = Math.max(...posts.map(stepOf));
		const fuses = steps.flatMap(({ phase }, index) => (phase === 'fuses' ? [index] : []));
		expect(Math.min(...fuses)).toBeGreaterThan(lastPost);
		const devices = input.study.network.branches.filter(({ device }) => device?.kind === 'fuse').length;
		expect(steps.filter(({ phase }) => phase === 'fuses').length).toBe(devices);
	});
	test('of a battery’s posts the outermost negative is last where it is bonded, and the positives where both float', () => {
		const negatives = input.study.network.batteries
			.filter(({ negative }) => input.study.network.poles[negative] === 'negative')
			.map(({ part }) => `${part}.neg`);
		const positives = posts.filter((key) => !negatives.includes(key));
		const [first, last] = input.diagram.system.negative === 'bonded' ? [positives, negatives] : [negatives, positives];
		const plain = (keys: string[]) => keys.map(stepOf).filter((i) => i >= 0 && steps[i]!.phase === 'batteries');
		expect(Math.min(...plain(last), Infinity)).toBeGreaterThan(Math.max(...plain(first), -1));
	});
	/** Lugs that hang loose and live with no fuse or breaker between, after any step of an order. */
	function looseAndLive(order: readonly AssemblyStep[]): string[] {
		const { network } = input.study;
		const isPost = (key: string) => posts.includes(key);
		const closed = new Set<string>();
		const found: string[] = [];
		for (const step of order) {
			for (const key of step.studs) closed.add(key);
			// What is joined to a battery’s closed positive post with no fuse between, switches being open until “switch on”.
			const isLivePhase = step.phase === 'live';
			const conducts = network.branches.filter(({ origin, device, kind }) => {
				if (origin.kind === 'conductor') {
					const { from, to } = input.diagram.conductors[origin.id]!;
					return [from, to].every(({ part, terminal }) => closed.has(`${part}.${terminal}`));
				}
				return device === null && (isLivePhase || kind !== 'switch');
			});
			const live = unionFind(network.nodeCount);
			for (const { a, b } of conducts) live.union(a, b);
			const sources = network.batteries
				.filter(({ part }) => closed.has(`${part}.pos`) && network.poles[network.nodeOf.get(`${part}.neg`)!] === 'negative')
				.map(({ positive }) => positive);
			const isLive = (node: number | undefined) => node !== undefined && sources.some((source) => live.same(source, node));
			for (const [id, { from, to }] of Object.entries(input.diagram.conductors)) {
				const ends = network.nodeOfEnd.get(id);
				if (!ends) continue;
				const [near, far] = [from, to].map(({ part, terminal }) => `${part}.${terminal}`);
				// Links between posts of batteries: whichever end comes first, the other is live.
				if (isPost(near!) && isPost(far!)) continue;
				if (closed.has(near!) && isLive(ends.from) && !closed.has(far!)) found.push(`${id} at ${far} after ${step.text}`);
				if (closed.has(far!) && isLive(ends.to) && !closed.has(near!)) found.push(`${id} at ${near} after ${step.text}`);
			}
		}
		return found;
	}

	test('in every prefix no loose lug is live but through a fuse or breaker', () => {
		expect(looseAndLive(steps)).toEqual([]);
		expect(new Set(steps.flatMap(({ studs }) => studs)).size).toBe(landed.length);
	});
	if (BARE_POSTS.includes(name)) {
		test('an order that begins at the batteries would leave some so', () => {
			const atPosts = steps.filter(({ studs }) => studs.some((key) => posts.includes(key)));
			expect(looseAndLive([...atPosts, ...steps.filter((step) => !atPosts.includes(step))])).not.toEqual([]);
		});
	}
	test('steps have ids of their own, and studs their torque', () => {
		expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
		for (const { stack, torque } of steps) expect(torque === null).toBe(stack === null);
	});
});
