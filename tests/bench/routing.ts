/**
 * Times routing: `npx tsx tests/bench/routing.ts`. The yardstick is a plain A* on a regular grid, written here, that
 * knows bodies and bends but neither crossings nor lanes. Ratios inside one run are what to trust.
 */
import { boxOfPoints, inflateBox, type Point } from '#core/geometry';
import { createRouter, previewRoute, routeConductors, type Obstacle, type RouteRequest } from '#core/routing';
import { conductorPoles, composeScene, sceneComposer } from '#core/drawing';
import { buildNetwork } from '#core/network';
import { scattered } from '../core/routing/cases.ts';
import { field } from './canvas/field.ts';

const PITCH_MM = 10;
const BEND_MM = 40;
const STEPS = [
	[0, -1],
	[1, 0],
	[0, 1],
	[-1, 0]
] as const;

/** Processor time in milliseconds, which a busy machine disturbs less than the clock. */
function median(run: () => void, times: number): number {
	const samples: number[] = [];
	for (let i = 0; i < times; i++) {
		const start = process.cpuUsage();
		run();
		samples.push(process.cpuUsage(start).user / 1000);
	}
	return samples.sort((a, b) => a - b)[times >> 1]!;
}

/** Cost of the cheapest path on a regular grid, or Infinity. */
function plainGrid({ from, to }: RouteRequest, obstacles: readonly Obstacle[]): number {
	const window = inflateBox(boxOfPoints([from.at, to.at]), 300);
	const columns = Math.ceil((window.maxX - window.minX) / PITCH_MM) + 1;
	const rows = Math.ceil((window.maxY - window.minY) / PITCH_MM) + 1;
	const nodeOf = ({ x, y }: Point): number => Math.round((y - window.minY) / PITCH_MM) * columns + Math.round((x - window.minX) / PITCH_MM);
	const blocked = new Uint8Array(columns * rows);
	for (const { box } of obstacles) {
		if ([from.at, to.at].some((p) => p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY)) continue;
		for (
			let row = Math.max(0, Math.ceil((box.minY - window.minY) / PITCH_MM));
			row < rows && window.minY + row * PITCH_MM <= box.maxY;
			row++
		) {
			for (
				let c = Math.max(0, Math.ceil((box.minX - window.minX) / PITCH_MM));
				c < columns && window.minX + c * PITCH_MM <= box.maxX;
				c++
			) {
				blocked[row * columns + c] = 1;
			}
		}
	}
	const goal = nodeOf(to.at);
	const best = new Float64Array(columns * rows * 4).fill(Infinity);
	const left = (node: number): number =>
		PITCH_MM * (Math.abs((node % columns) - (goal % columns)) + Math.abs(Math.floor(node / columns) - Math.floor(goal / columns)));
	const heap: [number, number][] = [];
	const push = (cost: number, state: number): void => {
		let at = heap.push([cost, state]) - 1;
		while (at > 0 && heap[(at - 1) >> 1]![0] > cost) {
			heap[at] = heap[(at - 1) >> 1]!;
			at = (at - 1) >> 1;
		}
		heap[at] = [cost, state];
	};
	const pop = (): number => {
		const top = heap[0]!;
		const last = heap.pop()!;
		for (let at = 0; heap.length > 0;) {
			let child = 2 * at + 1;
			if (child + 1 < heap.length && heap[child + 1]![0] < heap[child]![0]) child++;
			if (child >= heap.length || heap[child]![0] >= last[0]) {
				heap[at] = last;
				break;
			}
			heap[at] = heap[child]!;
			at = child;
		}
		return top[1];
	};
	for (let direction = 0; direction < 4; direction++) {
		best[nodeOf(from.at) * 4 + direction] = 0;
		push(left(nodeOf(from.at)), nodeOf(from.at) * 4 + direction);
	}
	const closed = new Uint8Array(best.length);
	while (heap.length > 0) {
		const state = pop();
		if (closed[state]) continue;
		closed[state] = 1;
		const node = state >> 2;
		if (node === goal) return best[state]!;
		STEPS.forEach(([dx, dy], direction) => {
			const column = (node % columns) + dx;
			const row = Math.floor(node / columns) + dy;
			if (column < 0 || row < 0 || column >= columns || row >= rows) return;
			const next = row * columns + column;
			if (blocked[next]) return;
			const cost = best[state]! + PITCH_MM + (direction === (state & 3) ? 0 : BEND_MM);
			if (cost >= best[next * 4 + direction]!) return;
			best[next * 4 + direction] = cost;
			push(cost + left(next), next * 4 + direction);
		});
	}
	return Infinity;
}

/** One part with about six conductors, moved to and fro. */
function incremental(
	requests: readonly RouteRequest[],
	obstacles: readonly Obstacle[],
	times: number
): { ms: number; rerouted: number; conductors: number } {
	const attached = (box: Obstacle['box']): RouteRequest[] =>
		requests.filter((r) => [r.from.at, r.to.at].some((p) => p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY));
	const busiest = [...obstacles].sort((a, b) => attached(b.box).length - attached(a.box).length)[0]!;
	const mine = new Set(attached(busiest.box).slice(0, 6));
	const shift = (p: Point, by: number): Point => ({ x: p.x + by, y: p.y });
	const inBox = (p: Point): boolean =>
		p.x >= busiest.box.minX && p.x <= busiest.box.maxX && p.y >= busiest.box.minY && p.y <= busiest.box.maxY;
	const moved = (by: number) => ({
		requests: requests.map((r) =>
			mine.has(r)
				? {
						...r,
						from: inBox(r.from.at) ? { ...r.from, at: shift(r.from.at, by) } : r.from,
						to: inBox(r.to.at) ? { ...r.to, at: shift(r.to.at, by) } : r.to
					}
				: r
		),
		obstacles: obstacles.map((o) => (o === busiest ? { ...o, box: { ...o.box, minX: o.box.minX + by, maxX: o.box.maxX + by } } : o))
	});
	const router = createRouter();
	let before = router.update(requests, obstacles);
	let step = 0;
	let rerouted = 0;
	const ms = median(() => {
		const next = moved(5 * (1 + (step++ % 4)));
		const after = router.update(next.requests, next.obstacles);
		for (const [id, route] of after) if (route !== before.get(id)) rerouted++;
		before = after;
	}, times);
	return { ms, rerouted: rerouted / times, conductors: mine.size };
}

console.log('conductors  full ms  plain grid ms  ratio   6 conductors ms (attached, changed)   preview ms each');
for (const count of process.argv.includes('--quick') ? [50, 200] : [50, 200, 1000]) {
	const { requests, obstacles } = scattered(count, 7);
	const times = count > 500 ? 1 : 7;
	const full = median(() => void routeConductors(requests, obstacles), times);
	// The yardstick is timed on a share of a large drawing and scaled up.
	const share = requests.filter((_, i) => i % Math.ceil(count / 40) === 0);
	const plain = (median(() => share.forEach((r) => plainGrid(r, obstacles)), 1) * count) / share.length;
	const few = incremental(requests, obstacles, 12);
	const preview = median(() => requests.slice(0, 50).forEach((r) => previewRoute(r, obstacles)), 5) / 50;
	console.log(
		`${String(count).padStart(10)} ${full.toFixed(1).padStart(8)} ${plain.toFixed(1).padStart(14)} ${(plain / full).toFixed(1).padStart(6)}   ` +
			`${few.ms.toFixed(2).padStart(8)} (${few.conductors}, ${few.rerouted.toFixed(1)})${preview.toFixed(3).padStart(30)}`
	);
}

/** One part after another moved a little in a drawing of neighbours joined up: routes, tags, items. */
function drop(count: number): { ms: number; afresh: number; conductors: number } {
	let diagram = field(count);
	const poles = conductorPoles(diagram, buildNetwork(diagram));
	const compose = sceneComposer();
	compose(diagram, { poles });
	const ids = Object.keys(diagram.parts);
	let step = 0;
	const move = (): void => {
		const id = ids[(step++ * 37) % ids.length]!;
		const part = diagram.parts[id]!;
		diagram = { ...diagram, parts: { ...diagram.parts, [id]: { ...part, at: { x: part.at.x + 20, y: part.at.y + 10 } } } };
	};
	const once = (): void => {
		move();
		compose(diagram, { poles });
	};
	// The first few moves compile the code.
	for (let i = 0; i < 10; i++) once();
	const ms = median(once, 25);
	const afresh = median(() => void composeScene(structuredClone(diagram), { poles }), 3);
	return { ms, afresh, conductors: Object.keys(diagram.conductors).length };
}

console.log('\nparts  conductors  drop ms  whole scene from nothing ms  ratio');
for (const count of process.argv.includes('--quick') ? [200] : [200, 1000]) {
	const { ms, afresh, conductors } = drop(count);
	console.log(
		`${String(count).padStart(5)} ${String(conductors).padStart(11)} ${ms.toFixed(1).padStart(8)} ${afresh.toFixed(1).padStart(28)} ${(afresh / ms).toFixed(1).padStart(6)}`
	);
}
