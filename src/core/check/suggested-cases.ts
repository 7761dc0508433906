import type { CaseId, Diagram, OperatingCase, PartId } from '#core/diagram';
import { describe, type Link } from '#core/parts';

export interface SuggestedCase {
	readonly id: CaseId;
	readonly case: OperatingCase;
	/** Why it is worth having, in a sentence. */
	readonly why: string;
}

type Load = Extract<Link, { kind: 'load' }> & { readonly part: PartId; readonly label: string };

/**
 * Cases that show what the diagram's own do not: everything drawing, everything charging, batteries nearly empty, the
 * load with the largest start, each starter motor. Ids are free in the diagram; orders follow its last case.
 */
export function suggestedCases(diagram: Diagram): SuggestedCase[] {
	const loads = loadsOf(diagram);
	const cranking = loads.filter(({ hoursPerDay, followsSource }) => hoursPerDay === undefined && followsSource === null);
	const resting = Object.fromEntries(cranking.map(({ part }) => [part, 0]));
	const cases = Object.values(diagram.cases);
	const has = (test: (operatingCase: OperatingCase) => boolean): boolean => cases.some(test);
	const wanted: SuggestedCase[] = [];
	const suggest = (id: CaseId, why: string, operatingCase: Omit<OperatingCase, 'order'>) =>
		wanted.push({ id: freeId(diagram, id), why, case: { ...operatingCase, order: lastOrder(cases) + wanted.length + 1 } });

	if (!has(({ duration, loads, sources, battery }) => duration === 'continuous' && loads >= 1 && sources === 0 && battery !== 'low'))
		suggest('peak', 'Everything draws at once and nothing charges: most conductors are sized by it.', {
			label: 'Peak, no charging',
			duration: 'continuous',
			loads: 1,
			sources: 0,
			levels: resting
		});
	if (hasSources(diagram) && !has(({ duration, sources }) => duration === 'continuous' && sources >= 1))
		suggest('charging', 'Everything charges and nothing draws: conductors of chargers are sized by it.', {
			label: 'Charging, no loads',
			duration: 'continuous',
			loads: 0,
			sources: 1,
			levels: {}
		});
	if (loads.some(({ draw }) => draw.kind === 'power') && !has(({ battery }) => battery === 'low'))
		suggest('nearly-empty', 'Loads of constant power draw more as the batteries run down.', {
			label: 'Batteries nearly empty',
			duration: 'continuous',
			loads: 1,
			sources: 0,
			levels: resting,
			battery: 'low'
		});
	const starter = largestStart(loads);
	if (starter && !has(({ duration, starting }) => duration === 'surge' && Object.hasOwn(starting ?? {}, starter.part)))
		suggest(`start-${starter.part}`, `${starter.label} draws several times its rated current for a moment while the rest is on.`, {
			label: `${starter.label} starts`,
			duration: 'surge',
			loads: 1,
			sources: 0,
			levels: resting,
			starting: { [starter.part]: true }
		});
	for (const { part, label } of cranking) {
		if (has(({ duration, levels }) => duration === 'surge' && Object.hasOwn(levels, part) && levels[part]! > 0)) continue;
		suggest(`crank-${part}`, `${label} takes hundreds of amps for seconds.`, {
			label: `${label} cranks`,
			duration: 'surge',
			loads: 0,
			sources: 0,
			levels: { [part]: 1 }
		});
	}
	return wanted;
}

const loadsOf = ({ parts }: Diagram): Load[] =>
	Object.entries(parts).flatMap(([part, value]) =>
		describe(value).links.flatMap((link) => (link.kind === 'load' ? [{ ...link, part, label: value.label.trim() || part }] : []))
	);

const hasSources = ({ parts }: Diagram): boolean =>
	Object.values(parts).some((part) => describe(part).links.some((link) => link.kind === 'source' && !link.alwaysOn));

/** The load that draws most beyond its rating while it starts, compared at one voltage; null when none does. */
function largestStart(loads: readonly Load[]): Load | null {
	const beyond = ({ draw, starting }: Load): number => {
		const rated = draw.kind === 'power' ? draw.watts / 12 : draw.kind === 'current' ? draw.amps : 12 / draw.ohms;
		return rated * ((starting?.times ?? 1) - 1);
	};
	const most = loads.reduce<Load | null>((best, load) => (best && beyond(best) >= beyond(load) ? best : load), null);
	return most && beyond(most) > 0 ? most : null;
}

const lastOrder = (cases: readonly OperatingCase[]): number => Math.max(0, ...cases.map(({ order }) => order));

function freeId({ cases }: Diagram, wanted: CaseId): CaseId {
	const id = wanted.slice(0, 60);
	let free = id;
	for (let number = 2; Object.hasOwn(cases, free); number++) free = `${id}${number}`;
	return free;
}
