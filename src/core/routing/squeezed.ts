/** Conductors that lie too close to others after their lanes were spread: their track had no room for them. */
import { piecesAcross, sharesStud, type Piece, type Run } from './run.ts';
import { laneSpacingMm } from './settings.ts';

/** Share of the proper spacing that still looks tidy, and the overlap that does not matter. */
const TIDY = 0.8;
const SHORT_MM = 8;

export interface Squeeze {
	/** Ids of conductors to route anew: one of each pair that is too close. */
	readonly ids: ReadonlySet<string>;
	/** Length that lies too close, weighted by how much; for comparing two drawings. */
	readonly badness: number;
}

export function squeezedIn(runs: readonly Run[]): Squeeze {
	const ids = new Set<string>();
	let badness = 0;
	const widest = Math.max(0, ...runs.map((run) => run.widthMm));
	for (const axis of ['x', 'y'] as const) {
		const pieces = runs.flatMap((run) => piecesAcross(run, axis)).sort((a, b) => a.at - b.at);
		for (let i = 0; i < pieces.length; i++) {
			const a = pieces[i]!;
			const reach = laneSpacingMm(a.run.widthMm, widest) * TIDY;
			for (let j = i + 1; j < pieces.length && pieces[j]!.at - a.at < reach; j++) {
				const b = pieces[j]!;
				const overlap = overlapOf(a, b);
				const proper = laneSpacingMm(a.run.widthMm, b.run.widthMm) * TIDY;
				if (overlap < SHORT_MM || b.at - a.at >= proper) continue;
				badness += overlap * (1 - (b.at - a.at) / proper);
				if (ids.has(a.run.id) || ids.has(b.run.id)) continue;
				const chosen = chooseOf(a, b);
				if (chosen) ids.add(chosen.id);
			}
		}
	}
	return { ids, badness };
}

/** Length over which two pieces lie beside each other; stubs on a shared stud do not count. */
function overlapOf(a: Piece, b: Piece): number {
	if (a.run === b.run || (a.held && b.held && sharesStud(a.run, b.run))) return 0;
	return Math.min(a.to, b.to) - Math.max(a.from, b.from);
}

/** The one that may move and whose piece its terminal does not hold; null when neither may. */
function chooseOf(a: Piece, b: Piece): Run | null {
	const free = [a, b].filter(({ run }) => run.hold === 'free');
	return (free.find((piece) => !piece.held) ?? free[0])?.run ?? null;
}
