import { openingAt, selectivity, type Opening } from '#core/faults';
import type { NodeIndex } from '#core/network';
import { ampsText } from '#core/units';
import { defineRule } from './define.ts';
import { deviceNames, devicesOf, type DeviceBranch } from './device-limits.ts';
import { greatest, least } from './extremes.ts';
import { secondsText } from './fault-words.ts';
import { groupBy } from './group-by.ts';
import { exceeds, sources } from './conductor-words.ts';
import { partSubject, subjects } from './subjects.ts';
import { derived, derivedOf, gathered, ofForm } from './watch.ts';
import { deviceZones } from './wiring.ts';
import { capital } from './words.ts';

interface Data {
	readonly upstream: string;
	readonly isOneUpstream: boolean;
	readonly upA: number;
	readonly upS: number;
	readonly nearer: string;
	readonly isOneNearer: boolean;
	readonly downS: number;
	readonly faultA: number;
}

interface Lost {
	readonly nearer: DeviceBranch;
	/** Upstream devices that may open first; the quickest of them leads. */
	readonly upstream: readonly { readonly branch: DeviceBranch; readonly opening: Opening; readonly amps: number }[];
	readonly opening: Opening;
	/** Of the short at the end of the circuit. */
	readonly faultA: number;
}

/** Below this share of a fault a device is one of several that feed it side by side. */
const CARRIES_ALL = 0.9;

const through = ({ upA, isOneUpstream }: Data): string => `${ampsText(upA)} through ${isOneUpstream ? 'it' : 'each'}`;

const darkness = ({ isOneUpstream }: Data): string =>
	`Everything behind ${isOneUpstream ? 'it' : 'them'} goes dark with the faulty circuit.`;

const remedy = ({ upstream, nearer }: Data): string =>
	`Choose a larger or slower type for ${upstream}, as far as the conductors allow, or a smaller or faster one for ${nearer}.`;

const SOURCE = 'common practice, no source';

export const selectivityLost = defineRule({
	meta: {
		id: 'selectivity-lost',
		title: 'Of two devices in series the nearer to the fault opens first',
		severity: 'warning',
		group: 'protection',
		why: 'If the fuse at the bank opens before the one of the circuit, a fault in one lamp puts everything out, radio and pumps too.',
		source: { default: SOURCE }
	},

	messages: {
		may: (data: Data) => ({
			message: `${capital(data.upstream)} may open before ${data.nearer}. A short at the end of the circuit draws ${ampsText(data.faultA)}, ${through(data)}: ${data.isOneUpstream ? 'it' : 'they'} may be open after ${secondsText(data.upS)}, while ${data.isOneNearer ? 'the nearer one' : 'the slowest of the nearer ones'} may take ${secondsText(data.downS)}. ${darkness(data)}`,
			remedy: `${remedy(data)} Twice the rating of the same type is usually enough.`
		}),
		will: (data: Data) => ({
			message: `${capital(data.upstream)} ${data.isOneUpstream ? 'opens' : 'open'} before ${data.nearer} ${data.isOneNearer ? 'does' : 'do'}. A short at the end of the circuit draws ${ampsText(data.faultA)}, ${through(data)}. ${darkness(data)}`,
			remedy: remedy(data)
		})
	},

	/** One report for each set of upstream devices. */
	*check(study) {
		const lost = lostOf(study);
		for (const alike of groupBy(lost, ({ upstream }) =>
			upstream
				.map(({ branch }) => branch.index)
				.sort()
				.join()
		).values()) {
			const worst = greatest(alike, margin)!;
			const quickest = worst.upstream[0]!;
			const all = worst.upstream.map(({ branch }) => branch).sort((a, b) => a.index - b.index);
			const nearer = alike.map((item) => item.nearer);
			const parts = [...all, ...nearer].map(({ origin }) => origin.part);
			yield {
				message: selectivity(worst.opening, quickest.opening) === 'not-selective' ? 'will' : 'may',
				data: {
					upstream: deviceNames(study, all),
					isOneUpstream: all.length === 1,
					upA: quickest.amps,
					upS: quickest.opening.earliestS,
					nearer: deviceNames(study, nearer),
					isOneNearer: nearer.length === 1,
					downS: worst.opening.latestS,
					faultA: worst.faultA
				},
				at: subjects([...new Set(parts)].map(partSubject)),
				source: sources(SOURCE, worst.opening.source, quickest.opening.source),
				unverified: true
			};
		}
	}
});

const margin = ({ opening, upstream }: Lost): number => opening.latestS / upstream[0]!.opening.earliestS;

/** The side of a device that greater currents come from. */
const fedFrom = derivedOf((study, index: number): NodeIndex => study.faults.throughDevice(study.form.branches[index]!).from);

const directedDevices = derived((study): readonly Directed[] => {
	const zone = deviceZones(study);
	return devicesOf(study).map((branch) => {
		const from = fedFrom(study, branch.index);
		return { branch, from: zone.find(from), into: zone.find(branch.a === from ? branch.b : branch.a) };
	});
});

const upstreamDevices = derived((study) => upstreams(groupBy(directedDevices(study), ({ into }) => into)));

/** Loads and sources, and whether a battery's post is there, by zone. */
const zoneEnds = ofForm((study) => {
	const { form } = study;
	const zone = deviceZones(study);
	return {
		ends: groupBy([...form.loads, ...form.sources], ({ positive }) => zone.find(positive)),
		posts: new Set(form.batteries.map(({ positive }) => zone.find(positive)))
	};
});

const lostOf = gathered(directedDevices, (study, { branch, from, into }): readonly Lost[] => {
	const { faults } = study;
	const { ends, posts } = zoneEnds(study);
	if (from === into || posts.has(into)) return [];
	const shorts = (ends.get(into) ?? []).flatMap(({ positive }) => faults.short(positive, 'greatest') ?? []);
	const short = least(shorts, ({ currentA }) => currentA);
	if (!short) return [];
	const amps = Math.abs(short.branchA(branch));
	const opening = openingAt(branch.device, amps);
	if (exceeds(CARRIES_ALL * short.currentA, amps) || !opening || opening.latestS === Infinity) return [];
	// No more than the whole short adds to what flows without it: most types are slow enough even for that.
	const isQuick = ({ branch: other }: Directed): boolean => {
		const most = openingAt(other.device, (Math.abs(faults.atRestA(other, 'greatest')) + short.currentA) * (1 + 1e-9));
		return most !== null && selectivity(opening, most) !== 'selective';
	};
	const upstream = upstreamDevices(study)(from)
		.filter((other) => other.branch !== branch && isQuick(other))
		.flatMap((other) => {
			const upA = Math.abs(short.branchA(other.branch));
			const upOpening = openingAt(other.branch.device, upA);
			return upOpening && selectivity(opening, upOpening) !== 'selective' ? [{ branch: other.branch, opening: upOpening, amps: upA }] : [];
		})
		.sort((a, b) => a.opening.earliestS - b.opening.earliestS);
	return upstream.length === 0 ? [] : [{ nearer: branch, upstream, opening, faultA: short.currentA }];
});

interface Directed {
	readonly branch: DeviceBranch;
	readonly from: number;
	readonly into: number;
}

/** By zone: devices through which it is fed, and those that feed their zones in turn. */
function upstreams(feeders: ReadonlyMap<number, readonly Directed[]>): (zone: number) => readonly Directed[] {
	const known = new Map<number, readonly Directed[]>();
	const find = (zone: number): Directed[] => {
		const zones = new Set([zone]);
		const found: Directed[] = [];
		for (const each of zones) {
			for (const feeder of feeders.get(each) ?? []) {
				found.push(feeder);
				zones.add(feeder.from);
			}
		}
		return found;
	};
	return (zone) => {
		if (!known.has(zone)) known.set(zone, find(zone));
		return known.get(zone)!;
	};
}
