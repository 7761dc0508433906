/** Order of work: common practice, no source: negatives and loads first while all is dead, batteries after, fuses last. */
import { describe, expect, test } from 'vitest';
import { assemblyOrder, reportInput } from '#core/reports';
import { example } from '../../support/examples/figures.ts';

const EXAMPLES = ['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]);

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
	test('of a battery’s posts the outermost negative is last', () => {
		const negatives = input.study.network.batteries
			.filter(({ negative }) => input.study.network.poles[negative] === 'negative')
			.map(({ part }) => `${part}.neg`);
		const positives = posts.filter((key) => !negatives.includes(key));
		expect(Math.min(...negatives.map(stepOf).filter((i) => i >= 0))).toBeGreaterThan(Math.max(...positives.map(stepOf)));
	});
	test('steps have ids of their own, and studs their torque', () => {
		expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
		for (const { stack, torque } of steps) expect(torque === null).toBe(stack === null);
	});
});
