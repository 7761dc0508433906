/** Drawings to route, made by rule from a seed; shared by the tests and the bench. */
import { rotatePoint, rotateSide, type Box, type Point, type QuarterTurn, type Side } from '#core/geometry';
import type { Obstacle, RouteRequest } from '#core/routing';

export interface Case {
	readonly name: string;
	readonly requests: readonly RouteRequest[];
	readonly obstacles: readonly Obstacle[];
}

/** Numbers from 0 to 1 that are the same on every run (mulberry32, public domain). */
export function numbersFrom(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = state;
		t = Math.imul(t ^ (t >>> 15), t | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
	};
}

export interface End {
	readonly at: Point;
	readonly side: Side;
}

/** A part with studs a little inside its sides, spread evenly. */
export class SamplePart {
	readonly box: Box;
	readonly id: string;
	readonly #at: Point;
	readonly #size: readonly [number, number];
	readonly #turn: QuarterTurn;

	constructor(id: string, at: Point, size: readonly [number, number], turn: QuarterTurn = 0) {
		this.id = id;
		this.#at = at;
		this.#size = size;
		this.#turn = turn;
		const [w, h] = turn % 180 === 0 ? size : [size[1], size[0]];
		this.box = { minX: at.x - w / 2, minY: at.y - h / 2, maxX: at.x + w / 2, maxY: at.y + h / 2 };
	}

	get obstacle(): Obstacle {
		return { id: this.id, box: this.box };
	}

	/** Stud `index` of `count` on a side; `inset` from the edge. */
	stud(side: Side, index: number, count: number, inset = 10): End {
		const [w, h] = this.#size;
		const share = (index + 1) / (count + 1) - 0.5;
		const across = side === 'north' || side === 'south';
		const depth = (across ? h : w) / 2 - inset;
		const sign = side === 'north' || side === 'west' ? -1 : 1;
		const local = across ? { x: share * w, y: sign * depth } : { x: sign * depth, y: share * h };
		const turned = rotatePoint(local, this.#turn);
		return { at: { x: this.#at.x + turned.x, y: this.#at.y + turned.y }, side: rotateSide(side, this.#turn) };
	}
}

export const request = (id: string, from: End, to: End, widthMm = 10, bends: readonly Point[] | null = null): RouteRequest => ({
	id,
	from,
	to,
	bends,
	widthMm
});

const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

/** Parts of many sizes on a jittered grid, conductors mostly to neighbours. Studs hold at most two conductors. */
export function scattered(conductors: number, seed: number): Case {
	const random = numbersFrom(seed);
	const count = Math.max(2, Math.ceil(conductors / 1.5));
	const columns = Math.ceil(Math.sqrt(count));
	const parts: SamplePart[] = [];
	for (let i = 0; i < count; i++) {
		const size = [60 + Math.round(random() * 120), 50 + Math.round(random() * 90)] as const;
		const at = {
			x: (i % columns) * 320 + Math.round(random() * 80),
			y: Math.floor(i / columns) * 260 + Math.round(random() * 60)
		};
		parts.push(new SamplePart(`P${i}`, at, size, ((Math.floor(random() * 4) * 90) % 360) as QuarterTurn));
	}
	const requests: RouteRequest[] = [];
	const used = new Map<string, number>();
	while (requests.length < conductors) {
		const a = Math.floor(random() * count);
		const near = random() < 0.8;
		const step = near ? [1, columns, columns + 1, columns - 1, 2][Math.floor(random() * 5)]! : Math.floor(random() * count);
		const b = near ? a + step : step;
		if (b >= count || a === b) continue;
		const ends = [parts[a]!, parts[b]!].map((part) => {
			const side = SIDES[Math.floor(random() * 4)]!;
			const index = Math.floor(random() * 3);
			return { key: `${part.id}${side}${index}`, end: part.stud(side, index, 3) };
		});
		if (ends.some(({ key }) => (used.get(key) ?? 0) >= 2)) continue;
		for (const { key } of ends) used.set(key, (used.get(key) ?? 0) + 1);
		requests.push(request(`C${requests.length}`, ends[0]!.end, ends[1]!.end, 3 + Math.round(random() * 12)));
	}
	return { name: `scattered ${conductors}`, requests, obstacles: parts.map((part) => part.obstacle) };
}

/** A small system as it would be drawn: battery, disconnect, shunt, bus bars, panel, inverter and loads. */
export function smallSystem(): Case {
	const battery = new SamplePart('battery', { x: 200, y: 700 }, [330, 170]);
	const disconnect = new SamplePart('disconnect', { x: 150, y: 450 }, [80, 80]);
	const shunt = new SamplePart('shunt', { x: 480, y: 450 }, [120, 60]);
	const bus = new SamplePart('bus', { x: 300, y: 230 }, [260, 70]);
	const negative = new SamplePart('negative', { x: 760, y: 300 }, [260, 60]);
	const inverter = new SamplePart('inverter', { x: 900, y: 620 }, [300, 200]);
	const panel = new SamplePart('panel', { x: 700, y: 60 }, [160, 120]);
	const loads = [0, 1, 2, 3].map((i) => new SamplePart(`load${i}`, { x: 1150, y: -80 + i * 110 }, [100, 60]));
	const busStud = (i: number) => bus.stud('north', i, 6, 35);
	const negativeStud = (i: number) => negative.stud('south', i, 8, 30);
	const requests = [
		request('B+', battery.stud('north', 0, 4), disconnect.stud('south', 0, 1), 18),
		request('B-', battery.stud('north', 3, 4), shunt.stud('west', 0, 1), 18),
		request('D', disconnect.stud('north', 0, 1), bus.stud('west', 0, 1, 25), 18),
		request('S', shunt.stud('east', 0, 1), negative.stud('west', 0, 1, 15), 18),
		request('I+', bus.stud('east', 0, 1, 25), inverter.stud('west', 0, 2), 16),
		request('I-', negativeStud(0), inverter.stud('west', 1, 2), 16),
		request('P+', busStud(4), panel.stud('west', 0, 2), 9),
		request('P-', negativeStud(1), panel.stud('west', 1, 2), 9),
		...loads.flatMap((load, i) => [
			request(`L${i}+`, panel.stud('east', i, 4), load.stud('west', 0, 2), 5),
			request(`L${i}-`, negative.stud('north', 4 + i, 8, 30), load.stud('west', 1, 2), 5)
		]),
		request('Q1', busStud(1), { at: { x: 60, y: 20 }, side: 'south' }, 8),
		request('Q2', busStud(2), { at: { x: 90, y: 20 }, side: 'south' }, 8),
		request('Q3', busStud(3), { at: { x: 120, y: 20 }, side: 'south' }, 8)
	];
	const box = new SamplePart('charger', { x: 90, y: 0 }, [120, 60]);
	const obstacles = [battery, disconnect, shunt, bus, negative, inverter, panel, box, ...loads].map((part) => part.obstacle);
	return { name: 'small system', requests, obstacles };
}

/** Six conductors on one stud, and pairs that run side by side for a long way. */
export function crowdedStud(): Case {
	const block = new SamplePart('block', { x: 0, y: 0 }, [100, 60]);
	const stud = block.stud('south', 0, 1, 20);
	const loads = [0, 1, 2, 3, 4, 5].map((i) => new SamplePart(`load${i}`, { x: -400 + i * 160, y: 320 }, [90, 60]));
	const left = new SamplePart('left', { x: -700, y: 0 }, [120, 160]);
	const right = new SamplePart('right', { x: 700, y: 60 }, [120, 160]);
	const pairs = [0, 1, 2, 3].map((i) => request(`pair${i}`, left.stud('east', i, 4), right.stud('west', i, 4), 8));
	const straight = [0, 1, 2].map((i) => request(`twin${i}`, left.stud('south', 0, 1), loads[0]!.stud('west', 0, 1), 8 + 0 * i));
	return {
		name: 'crowded stud',
		requests: [...loads.map((load, i) => request(`L${i}`, stud, load.stud('north', 0, 1), 7)), ...pairs, ...straight],
		obstacles: [block, left, right, ...loads].map((part) => part.obstacle)
	};
}
