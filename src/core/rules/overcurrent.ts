/**
 * How each positive conductor is protected, judged once for all rules about it, so that one fault is one finding:
 * a conductor has at most one fault, and conductors further along with the same fault are counted with the first.
 */
import type { ConductorEnd, ConductorId, StudKey } from '#core/diagram';
import type { Wire } from '#core/network';
import type { GreatestDevice } from '#core/profiles';
import { unprotectedRun, type LetThrough, type UnprotectedRun } from '#core/protection';
import type { Sourced } from '#core/tables';
import { exceeds } from './conductor-words.ts';
import { deviceFree, endKey, otherEnd, walk, type DeviceFree } from './device-free.ts';
import { greatest, least } from './extremes.ts';
import type { ConductorView, Study } from './study.ts';
import { derived, gathered } from './watch.ts';

/** Where the current that is too large for a conductor comes from, and how far it runs unprotected. */
interface Run {
	/** Stud where it begins: a battery's post, or where the conductor branches off. */
	readonly origin: StudKey;
	readonly fromBattery: boolean;
	/** From the origin to the conductor's near end, metres. */
	readonly upstreamM: number;
	/** Conductors on that way, the origin's first. */
	readonly way: readonly ConductorId[];
	readonly allowed: Sourced<number>;
}

export interface OvercurrentFault {
	/**
	 * "oversized": the device is there but too large, or several add up. "too-far": the device is there but too far
	 * along. "two-source": one end is protected and the other, fed as well, is not. "unprotected": none of these.
	 */
	readonly kind: 'oversized' | 'too-far' | 'two-source' | 'unprotected';
	readonly view: ConductorView;
	readonly limit: GreatestDevice;
	/** End through which too much can come. */
	readonly end: ConductorEnd;
	readonly letThrough: LetThrough;
	readonly opposite: LetThrough;
	readonly run: Run;
	/** The one device at the far side, and the unprotected length up to it. */
	readonly device: { readonly branch: Wire; readonly lengthM: number } | null;
	/** Conductors beyond this one that the same repair protects. */
	readonly alike: readonly ConductorId[];
}

/** Faults of positive conductors other than cranking supplies (33 CFR 183.455(e)), in the diagram's order. */
export const overcurrentFaults = derived((study): readonly OvercurrentFault[] => withFollowers(faultsAlone(study)));

type Fault = Omit<OvercurrentFault, 'alike'>;

const faultsAlone = gathered(
	(study) => study.conductors,
	(study, view): readonly Fault[] => {
		if (view.pole !== 'positive' || view.conductor.use === 'cranking') return [];
		// The quick bound clears most conductors of a large diagram.
		return exceeds(study.letThroughBound(view.id), view.limit.currentA) ? faultOf(study, view) : [];
	}
);

function faultOf(study: Study, view: ConductorView): readonly Fault[] {
	const metal = deviceFree(study);
	const isOverfed = (end: ConductorEnd): boolean => exceeds(study.protection(view.id)[end].currentA, view.limit.currentA);
	const faulty = (['from', 'to'] as const).flatMap((end) => {
		if (!isOverfed(end)) return [];
		const run = runTo(study, metal, view, end);
		const reaches = !exceeds(run.upstreamM + view.lengthM, run.allowed.value) && !endsOpen(metal, view, otherEnd(end));
		return reaches ? [] : [{ end, run }];
	});
	if (faulty.length === 0) return [];
	const { from, to } = study.protection(view.id);
	const worst = least(faulty, ({ run }) => run.upstreamM)!;
	const [letThrough, opposite] = worst.end === 'from' ? [from, to] : [to, from];
	const device = onlyDeviceBeyond(metal, view, otherEnd(worst.end));
	const fault = { view, limit: view.limit, ...worst, letThrough, opposite, device };
	if (faulty.length === 2)
		return [{ ...fault, kind: from.currentA === Infinity || to.currentA === Infinity ? 'unprotected' : 'oversized' }];
	return [{ ...fault, kind: kindOf(study, metal, fault) }];
}

function kindOf(study: Study, metal: DeviceFree, { view, limit, end, letThrough, opposite, device }: Omit<Fault, 'kind'>): Fault['kind'] {
	const [own, ...more] = letThrough.limitedBy.map(({ part, link }) => study.form.branchOfLink.get(`${part}.${link}`));
	const near = metal.metalOfEnd(view, end);
	if (own !== undefined && more.length === 0 && metal.devicesAt(near).some(({ index }) => index === own)) return 'oversized';

	const far = metal.metalOfEnd(view, otherEnd(end));
	const deviceKey = device?.branch.origin.kind === 'link' ? `${device.branch.origin.part}.${device.branch.origin.link}` : null;
	const isFedThroughDevice =
		opposite.limitedBy.some(({ part, link }) => `${part}.${link}` === deviceKey) ||
		(device !== null && isOnlySources(metal, device.branch, far));
	if (opposite.currentA > 0 && !exceeds(opposite.currentA, limit.currentA) && (isFedThroughDevice || metal.hasSource(far)))
		return 'two-source';

	if (device) return 'too-far';
	return letThrough.currentA === Infinity ? 'unprotected' : 'oversized';
}

/** Beyond a device lie chargers or converter outputs and no load: it is their device, not one for loads further on. */
function isOnlySources(metal: DeviceFree, device: Wire, nearSide: number): boolean {
	const beyond = [device.a, device.b].map(metal.metalOf).find((side) => side !== nearSide)!;
	const reached = [...walk(metal, beyond, () => true)].map(({ metal: at }) => at);
	return (
		!reached.includes(nearSide) &&
		reached.some(metal.hasSource) &&
		!reached.some((at) => metal.hasLoad(at) || metal.devicesAt(at).length > 1)
	);
}

/** A load draws through the conductor there, or nothing is joined to it at all: no device can follow. */
const endsOpen = (metal: DeviceFree, view: ConductorView, end: ConductorEnd): boolean => {
	const at = metal.metalOfEnd(view, end);
	if (metal.hasLoad(at)) return true;
	return metal.devicesAt(at).length === 0 && metal.batteryAt(at) === null && metal.conductorsAt(at).every(({ id }) => id === view.id);
};

/**
 * Where the run begins and how long it is. A conductor tapped off a cranking supply may have its device near the
 * tap or, counting the cranking supply, near the battery: whichever leaves more room.
 */
function runTo(study: Study, metal: DeviceFree, view: ConductorView, end: ConductorEnd): Run {
	const isUnlimited = study.protection(view.id)[end].currentA === Infinity;
	const own = view.limit.currentA;
	const isCrankingDrawn = cranking(study);
	const runs = (isCrankingDrawn ? [Infinity, 0] : [0]).flatMap((crankingLimitA) => {
		const limitA = (other: ConductorView) => {
			if (other.conductor.use === 'cranking') return crankingLimitA;
			// A conductor that steps down begins where it does, whatever is wrong with the thicker one.
			const stepsDown = !isUnlimited && exceeds(other.limit.currentA, own);
			return stepsDown ? Infinity : other.limit.currentA * (1 + 1e-6);
		};
		const measured = unprotectedRun(study.form, view.id, end, {
			lengthM: (id) => study.conductor(id).lengthM,
			limitA: (id) => limitA(study.conductor(id))
		});
		return measured ? [runFrom(study, metal, view, end, measured, limitA)] : [];
	});
	const roomM = (run: Run) => run.allowed.value - run.upstreamM;
	const best = greatest(runs, roomM)!;
	if (roomM(best) > 0) return best;
	// What lies upstream is at fault already; this one can only be protected where it begins.
	return { ...best, origin: endKey(view, end), fromBattery: false, upstreamM: 0, allowed: tapAllowance(study, [view]) };
}

const cranking = derived(({ conductors }) => conductors.some(({ conductor }) => conductor.use === 'cranking'));

const tapAllowance = ({ profile: { overcurrent } }: Study, views: readonly ConductorView[]): Sourced<number> =>
	views.every(({ conductor }) => conductor.sheathed) ? overcurrent.sheathedM : overcurrent.unsheathedM;

function runFrom(
	study: Study,
	metal: DeviceFree,
	view: ConductorView,
	end: ConductorEnd,
	{ startsAt, startNode, lengthM }: UnprotectedRun,
	limitA: (view: ConductorView) => number
): Run {
	const passes = (other: ConductorView, near: ConductorEnd) =>
		other.id !== view.id && study.protection(other.id)[otherEnd(near)].currentA > limitA(other);
	const goal = metal.metalOf(startNode);
	const way = [...walk(metal, metal.metalOfEnd(view, end), passes)].find((reached) => reached.metal === goal)?.way ?? [];
	const fromOrigin = [...way].reverse();
	const first = fromOrigin[0] === undefined ? view : study.conductor(fromOrigin[0]);
	const firstEnd = fromOrigin[0] === undefined ? end : metal.metalOfEnd(first, 'from') === goal ? 'from' : 'to';
	const fromBattery = startsAt === 'battery';
	return {
		origin: (fromBattery ? metal.batteryAt(goal) : null) ?? endKey(first, firstEnd),
		fromBattery,
		upstreamM: lengthM - view.lengthM,
		way: fromOrigin,
		allowed: fromBattery ? study.profile.overcurrent.batteryM : tapAllowance(study, [view, ...way.map(study.conductor)])
	};
}

/** The device that every way beyond the conductor's far end leads to, if it is a single one; loads and dead ends do not count. */
function onlyDeviceBeyond(metal: DeviceFree, view: ConductorView, end: ConductorEnd): Fault['device'] {
	const origin = metal.metalOfEnd(view, otherEnd(end));
	let found: Fault['device'] = null;
	const passes = (other: ConductorView) => other.id !== view.id && other.conductor.use !== 'cranking';
	for (const { metal: at, distanceM } of walk(metal, metal.metalOfEnd(view, end), passes)) {
		if (at === origin || metal.hasLoad(at) || metal.batteryAt(at) !== null) return null;
		for (const branch of metal.devicesAt(at)) {
			if (found && found.branch !== branch) return null;
			found ??= { branch, lengthM: view.lengthM + distanceM };
		}
	}
	return found;
}

/** A fault further along the same way is the same fault if what repairs the first repairs it too. */
function withFollowers(faults: readonly Fault[]): OvercurrentFault[] {
	const byId = new Map(faults.map((fault) => [fault.view.id, fault]));
	const leaderOf = ({ run, limit }: Fault): ConductorId | undefined =>
		run.way.find((id) => byId.has(id) && !exceeds(byId.get(id)!.limit.currentA, limit.currentA));
	const followers = new Map<ConductorId, ConductorId[]>();
	for (const fault of faults) {
		const leader = leaderOf(fault);
		if (leader !== undefined) followers.set(leader, [...(followers.get(leader) ?? []), fault.view.id]);
	}
	return faults.filter((fault) => leaderOf(fault) === undefined).map((fault) => ({ ...fault, alike: followers.get(fault.view.id) ?? [] }));
}
