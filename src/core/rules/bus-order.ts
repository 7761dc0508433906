import type { Link } from '#core/parts';
import { ampsText, percentText } from '#core/units';
import { continuousCases } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import type { PartView, Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { conductorsByNode } from './wiring.ts';
import { listed, partName } from './words.ts';

/** What changing places must save of the bar’s heat, and how full the bar must be: common practice, no source. */
const SAVED_SHARE = 0.25;
const LOADED_SHARE = 0.3;
/** More positions than this have too many orders to try them all. */
const MOST_POSITIONS = 7;

export const busOrder = defineRule({
	meta: {
		id: 'bus-order',
		title: 'Heavy circuits sit next to the feed of a bus',
		severity: 'note',
		group: 'studs',
		why: 'What passes along the bar heats every stud on the way. Side by side, a charger and an inverter cancel each other; at opposite ends they load the whole bar.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		better: ({ name, nowA, savedPercent, order }: { name: string; nowA: number; savedPercent: number; order: string }) => ({
			message: `Up to ${ampsText(nowA)} passes along ${name}; in another order of its circuits its bar makes ${percentText(savedPercent)} less heat.`,
			remedy: `From the first position on: ${order}.`
		})
	},

	*check(study) {
		for (const part of study.parts) {
			const bar = barOf(study, part);
			if (!bar || bar.places.length < 2 || bar.places.length > MOST_POSITIONS) continue;
			const { largestA: nowA, heat: now } = loadingOf(bar, bar.places);
			if (exceeds(LOADED_SHARE * bar.ratedA, nowA)) continue;
			const best = bestOrder(bar);
			if (exceeds(best.heat, (1 - SAVED_SHARE) * now)) continue;
			const order = listed(
				best.places.map((place) => bar.names[place]!),
				MOST_POSITIONS
			);
			const data = { name: partName(part), nowA, savedPercent: 100 * (1 - best.heat / now), order };
			yield { message: 'better', data, at: [partSubject(part.id)] };
		}
	}
});

interface Bar {
	readonly ratedA: number;
	/** Nodes of the bar in a row. */
	readonly row: readonly number[];
	/** Places in the row with a fuse of the bar’s own: their circuits may change places. */
	readonly places: readonly number[];
	/** By place: what is on it. */
	readonly names: Readonly<Record<number, string>>;
	/** By case, by place: amps brought to the bar there. */
	readonly broughtA: readonly (readonly number[])[];
}

/** Bars with fused positions only: on plain studs lugs of different sizes do not simply change places. */
function barOf(study: Study, part: PartView): Bar | null {
	const { form } = study;
	const node = (end: string): number => form.nodeOf.get(`${part.id}.${end}`)!;
	const bars = part.links.filter(({ kind }) => kind === 'segment');
	const fuses = part.links.filter(({ kind }) => kind === 'protective');
	if (part.definition?.group !== 'distribution' || bars.length < 2 || fuses.length < 2 || !isChain(bars)) return null;
	const row = bars.flatMap((link, index) => ('between' in link ? (index === 0 ? link.between : [link.between[1]]) : [])).map(node);
	const branchOf = (id: string) => form.branches[form.branchOfLink.get(`${part.id}.${id}`)!]!;
	const names: Record<number, string> = {};
	const places = fuses.flatMap(({ id }) => {
		const { a, b } = branchOf(id);
		const place = row.findIndex((on) => on === a || on === b);
		const outer = row[place] === a ? b : a;
		const lands = (conductorsByNode(study).get(outer) ?? []).map(study.conductor);
		if (place < 0 || lands.length === 0) return [];
		names[place] = lands.map(({ name }) => name).join(' with ');
		return [place];
	});
	const ownBranches = new Set(bars.map(({ id }) => branchOf(id).index));
	const broughtA = continuousCases(study).map(({ point }) =>
		row.map((on) =>
			form.branchesAt[on]!.reduce((sum, index) => {
				if (ownBranches.has(index)) return sum;
				return sum + (form.branches[index]!.b === on ? point.branchA[index]! : -point.branchA[index]!);
			}, 0)
		)
	);
	const [first] = bars;
	const ratedA = first && 'ratedA' in first ? (first.ratedA ?? Infinity) : Infinity;
	return { ratedA, row, places, names, broughtA };
}

/** One bar in a row, not strips beside each other. */
const isChain = (bars: readonly Link[]): boolean =>
	bars.every((bar, index) => {
		const before = bars[index - 1];
		return !before || ('between' in before && 'between' in bar && before.between[1] === bar.between[0]);
	});

/** With the circuits of `order` on the bar’s places, in the worst case: largest current, and the sum of its squares along the bar. */
function loadingOf({ places, broughtA }: Bar, order: readonly number[]): { readonly largestA: number; readonly heat: number } {
	let [largestA, worstHeat] = [0, 0];
	for (const brought of broughtA) {
		const placed = [...brought];
		places.forEach((place, index) => (placed[place] = brought[order[index]!]!));
		let [along, heat] = [0, 0];
		for (const amps of placed.slice(0, -1)) {
			along += amps;
			heat += along ** 2;
			largestA = Math.max(largestA, Math.abs(along));
		}
		worstHeat = Math.max(worstHeat, heat);
	}
	return { largestA, heat: worstHeat };
}

/** The best of all orders; of equally good ones the first, which changes least. */
function bestOrder(bar: Bar): { readonly places: readonly number[]; readonly heat: number } {
	let best = { places: bar.places, heat: loadingOf(bar, bar.places).heat };
	for (const places of permutations(bar.places)) {
		const { heat } = loadingOf(bar, places);
		if (exceeds(best.heat, heat)) best = { places, heat };
	}
	return best;
}

function* permutations<Item>(items: readonly Item[]): Generator<Item[]> {
	if (items.length < 2) {
		yield [...items];
		return;
	}
	for (const [index, first] of items.entries()) {
		for (const rest of permutations(items.toSpliced(index, 1))) yield [first, ...rest];
	}
}
