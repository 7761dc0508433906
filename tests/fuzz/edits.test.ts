/**
 * Random edits, one after another: each leaves a diagram that keeps to the schema, is undone and redone exactly, has
 * finite currents, and whose drawing, made from the one before, is what it would be made afresh along the same routes
 * (routes themselves stay where they are while they can, so that a drawing does not jump). 2,000 edits; 1,000,000 with
 * LONG=1 (EDITS=n for another number). One run again: SEED=n.
 */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { DiagramSchema, parseDiagram, redo, run, start, undo, type Diagram, type History } from '#core/diagram';
import { composeScene, routeRequests, sceneComposer } from '#core/drawing';
import { EXAMPLES } from '#core/examples';
import { buildNetwork } from '#core/network';
import { createRouter } from '#core/routing';
import { solveCases } from '#core/solver';
import { commandOf, PLAN_KINDS } from '../support/arbitrary-command.ts';
import { below, oneOf, randomFrom, type Random } from '../support/random.ts';
import { smallDiagram } from '../support/small-diagram.ts';

const LONG = process.env.LONG === '1';
const EDITS = Number(process.env.EDITS ?? (LONG ? 1_000_000 : 2_000));
const FIRST = Number(process.env.SEED ?? 1);
/** Edits from one beginning; then another diagram is begun with. */
const RUN = 150;
/**
 * Share of the edits after which it is drawn, so that one drawing follows another by one edit or by several. Drawing
 * takes most of the time: in the long form every twentieth edit is drawn.
 */
const DRAWN = Number(process.env.DRAWN ?? (LONG ? 0.05 : 0.3));
const RUNS = process.env.SEED === undefined ? Math.ceil(EDITS / RUN) : 1;

const begins: readonly Diagram[] = [
	...EXAMPLES.map(({ file }) => {
		const read = parseDiagram(readFileSync(new URL(`../../static/examples/${file}`, import.meta.url), 'utf8'));
		if (!read.ok) throw new Error(file);
		return read.diagram;
	}),
	smallDiagram()
];

/** Draws one diagram after another as the canvas does, and throws where that differs from drawing it for the first time. */
function drawer(): (diagram: Diagram) => void {
	const compose = sceneComposer();
	const router = createRouter();
	return (diagram) => {
		const scene = compose(diagram);
		const { requests, obstacles } = routeRequests(diagram);
		const routes = router.update(requests, obstacles);
		for (const { id, from, to } of requests) {
			const route = routes.get(id)!;
			expectFinite(route, `route of ${id}`);
			if (!isDeepStrictEqual([route[0], route.at(-1)], [from.at, to.at])) throw new Error(`route of ${id} does not lead to its ends`);
		}
		const afresh = composeScene(diagram, { routes });
		if (!isDeepStrictEqual(scene.order, afresh.order)) throw new Error('scene: order');
		if (!isDeepStrictEqual(scene.bounds, afresh.bounds)) throw new Error('scene: bounds');
		for (const [key, item] of afresh.items)
			if (!isDeepStrictEqual(scene.items.get(key), item)) throw new Error(`scene: ${key} is drawn otherwise than afresh`);
	};
}

/** Throws with the name of what is not as it should be. */
function expectSound(before: History, after: History, draw: ((diagram: Diagram) => void) | null): void {
	const { diagram } = after;
	const read = DiagramSchema.safeParse(diagram);
	if (!read.success) throw new Error(`schema: ${read.error.issues[0]?.path.map(String).join('.')} ${read.error.issues[0]?.message}`);
	if (after !== before && after.done.length > 0) {
		const undone = undo(after);
		if (!isDeepStrictEqual(undone.diagram, before.diagram)) throw new Error('undo is not exact');
		if (!isDeepStrictEqual(redo(undone).diagram, diagram)) throw new Error('redo is not exact');
	}
	for (const point of solveCases(buildNetwork(diagram), diagram.cases)) expectFinite(point, 'solver');
	draw?.(diagram);
}

function expectFinite(value: unknown, path: string): void {
	if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`);
	if (value instanceof Map) for (const [key, inner] of value) expectFinite(inner, `${path}.${String(key)}`);
	else if (ArrayBuffer.isView(value)) for (const inner of value as Float64Array) expectFinite(inner, path);
	else if (typeof value === 'object' && value !== null)
		for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
}

/** How many edits were made and how many refused. */
function edit(begin: Diagram, random: Random): { made: number; refused: number } {
	let history = start(begin);
	let refused = 0;
	const draw = drawer();
	const story: string[] = [];
	for (let number = 0; number < RUN; number += 1) {
		const before = history;
		const chance = random();
		if (chance < 0.08) history = undo(history);
		else if (chance < 0.13) history = redo(history);
		else {
			const command = commandOf(history.diagram, {
				kind: oneOf(random, PLAN_KINDS),
				a: below(random, 60),
				b: below(random, 60),
				c: below(random, 60)
			});
			if (!command || command.refuse(history.diagram) !== null) {
				refused += 1;
				continue;
			}
			story.push(String(command));
			history = run(history, command);
			try {
				expectSound(before, history, random() < DRAWN ? draw : null);
			} catch (error) {
				throw new Error(`edit ${number}: ${(error as Error).message}\n${story.slice(-5).join('\n')}`, { cause: error });
			}
			continue;
		}
		if (random() < DRAWN) draw(history.diagram);
	}
	let back = history;
	while (back.done.length > 0) back = undo(back);
	expect(isDeepStrictEqual(back.diagram, begin), 'undone to the beginning').toBe(true);
	return { made: RUN - refused, refused };
}

test(`${RUNS * RUN} random edits from seed ${FIRST} on`, { timeout: EDITS > 2_000 ? 86_400_000 : 600_000 }, () => {
	let [made, refused] = [0, 0];
	const before = process.cpuUsage();
	for (let seed = FIRST; seed < FIRST + RUNS; seed += 1) {
		const random = randomFrom(seed);
		try {
			const counts = edit(random() < 0.5 ? smallDiagram() : oneOf(random, begins), random);
			made += counts.made;
			refused += counts.refused;
		} catch (error) {
			throw new Error(`again with SEED=${seed}: ${(error as Error).message}`, { cause: error });
		}
		if (LONG && (seed - FIRST + 1) % 200 === 0) console.log(`${made + refused} of ${RUNS * RUN} edits`);
	}
	const { user, system } = process.cpuUsage(before);
	console.log(
		`${made} random edits made, ${refused} refused; ${Math.round((made + refused) / ((user + system) / 1e6))} a second of processor time`
	);
	expect(made).toBeGreaterThan(refused / 2);
});
