/** A bus seen as a ladder: slots in a row, bar between them, and what each slot takes from it. */
import type { CaseId, Diagram, PartId } from '#core/diagram';
import { describe, type Link } from '#core/parts';
import type { Study } from '#core/rules';

export interface Slot {
	/** Terminal conductors land on. */
	readonly terminal: string;
	/** True for a position behind a fuse of the bus. */
	readonly fused: boolean;
}

export interface Bar {
	readonly slots: readonly Slot[];
	/** Link ids of the bar between neighbouring slots. */
	readonly segments: readonly string[];
	readonly segmentOhm: readonly number[];
	readonly ratedA: number | null;
}

type Segment = Extract<Link, { kind: 'segment' }>;

/** Null where the part is no row of studs on one bar. */
export function barOf({ parts }: Diagram, id: PartId): Bar | null {
	if (!Object.hasOwn(parts, id)) return null;
	const { links, terminals } = describe(parts[id]!);
	const segments = links.filter((link): link is Segment => link.kind === 'segment');
	const isRow =
		segments.length > 0 && segments.every(({ between }, index) => index === 0 || segments[index - 1]!.between[1] === between[0]);
	if (!isRow) return null;
	const ends = [segments[0]!.between[0], ...segments.map(({ between }) => between[1])];
	const slots = ends.map((end): Slot | null => {
		if (terminals.some((terminal) => terminal.id === end)) return { terminal: end, fused: false };
		const terminal = end.slice(1);
		return terminals.some((other) => other.id === terminal) ? { terminal, fused: true } : null;
	});
	if (slots.some((slot) => slot === null)) return null;
	return {
		slots: slots as Slot[],
		segments: segments.map(({ id }) => id),
		segmentOhm: segments.map(({ resistanceOhm }) => resistanceOhm),
		ratedA: segments[0]!.ratedA
	};
}

export interface BarCase {
	readonly caseId: CaseId;
	/** Amps each slot takes from the bar; negative for what feeds it. They add up to nothing. */
	readonly drawnA: readonly number[];
}

/** In every continuous case that has currents. */
export function barCases({ network, cases }: Study, part: PartId, { segments }: Bar): BarCase[] {
	const indices = segments.map((link) => network.branchOfLink.get(`${part}.${link}`)!);
	return cases
		.filter(({ point, operatingCase }) => point.status === 'solved' && operatingCase.duration === 'continuous')
		.map(({ id, point }) => {
			const along = indices.map((index) => point.branchA[index]!);
			return { caseId: id, drawnA: [...along, 0].map((outA, slot) => (along[slot - 1] ?? 0) - outA) };
		});
}

export interface BarFigures {
	/** Greatest current of any segment in any case, amps. */
	readonly greatestA: number;
	readonly caseId: CaseId | null;
	/** Which segment: 0 lies between the first two slots. */
	readonly segment: number;
	/** Σ I²R of the bar over all cases, watts. */
	readonly heatW: number;
	/** Greatest magnitude in any case, for each segment, amps. */
	readonly segmentA: readonly number[];
	/** Σ I² of its segments in each case, A². */
	readonly squaresA2: readonly { readonly caseId: CaseId; readonly sum: number }[];
}

/** What flows along a bar whose slots take these currents, by Kirchhoff from its first slot. */
export function barFigures(cases: readonly BarCase[], segmentOhm: readonly number[]): BarFigures {
	let greatest = { greatestA: 0, caseId: null as CaseId | null, segment: 0 };
	let heatW = 0;
	const segmentA = segmentOhm.map(() => 0);
	const squaresA2 = cases.map(({ caseId, drawnA }) => {
		let currentA = 0;
		let sum = 0;
		for (const [segment, ohm] of segmentOhm.entries()) {
			currentA -= drawnA[segment]!;
			segmentA[segment] = Math.max(segmentA[segment]!, Math.abs(currentA));
			sum += currentA ** 2;
			heatW += currentA ** 2 * ohm;
			if (Math.abs(currentA) > greatest.greatestA) greatest = { greatestA: Math.abs(currentA), caseId, segment };
		}
		return { caseId, sum };
	});
	return { ...greatest, heatW, segmentA, squaresA2 };
}
