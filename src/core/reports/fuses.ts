/** The fuse schedule: each fuse and breaker, what it guards, and what to fit when it has opened. */
import { areaMm2, gaugeText } from '#core/conductors';
import { openingAt } from '#core/faults';
import type { Link } from '#core/parts';
import { greatestDevice } from '#core/profiles';
import { breakingAmps, deviceKind, deviceName, devicesOf, isUnverified, listed, partName, ratedVolts } from '#core/rules';
import type { ConductorView, DeviceBranch, Study } from '#core/rules';
import { fuseFamily } from '#core/tables';
import { ampsText } from '#core/units';
import type { ReportInput } from './input.ts';
import { handColumn, numberColumn, table, textColumn } from './table.ts';
import { naturally, timeBandText } from './words.ts';

export function fuseSchedule({ study, diagram }: ReportInput) {
	const devices = devicesOf(study).toSorted((a, b) => naturally(deviceName(study, a.origin), deviceName(study, b.origin)));
	let unverified = false;
	const rows = devices.map((branch) => {
		const { device, origin } = branch;
		const behind = conductorsBehind(study, branch);
		const fault = study.faults.throughDevice(branch);
		const rated = ratedVolts(device);
		const breaking = breakingAmps(device, fault.openV > 0 ? fault.openV : diagram.system.nominalV);
		unverified ||= [rated, breaking].some((value) => value !== null && isUnverified(value));
		const load = study.branchCurrent(branch.index).currentA;
		const thinnest = thinnestOf(behind.map(({ view }) => view));
		const farthest = farthestShort(study, branch, behind);
		const opening = farthest && openingAt(device, farthest.currentA);
		return {
			cells: {
				id: deviceName(study, origin),
				serves: listed(partsServed(study, origin.part, behind), 4),
				family: device.family === null ? deviceKind(device) : `${deviceKind(device)} (${fuseFamily(device.family).standard})`,
				rating: device.ratingA,
				volts: rated?.value ?? 'not given',
				breaking: breaking ? breaking.value / 1000 : 'not known',
				prospective: fault.currentA > 0 ? fault.currentA / 1000 : null,
				load,
				loadPercent: (load / device.ratingA) * 100,
				smallest: thinnest && `${gaugeText(thinnest.conductor.gauge)}, ${thinnest.name}`,
				allowed: greatestAllowed(study, behind),
				farthest: farthest && `${ampsText(farthest.currentA)} at ${farthest.at}`,
				opens: opening ? timeBandText(opening.earliestS, opening.latestS) : device.family === null ? 'curve not known' : null,
				spares: device.kind === 'fuse' ? sparesOf(device.family) : null,
				fitted: null
			}
		};
	});
	return table({
		id: 'fuse-schedule',
		title: 'Fuse schedule',
		lead: 'Replace a fuse only by one of the same kind and rating, and only after the cause has been found.',
		columns: [
			textColumn('id', 'Fuse', 1.2),
			textColumn('serves', 'Serves', 1.6),
			textColumn('family', 'Kind (standard)', 1.9),
			numberColumn('rating', 'Rating', 'A', { weight: 0.7 }),
			numberColumn('volts', 'Up to', 'V', { weight: 0.7 }),
			numberColumn('breaking', 'Breaks', 'kA', { weight: 0.7 }),
			numberColumn('prospective', 'Short there', 'kA', { weight: 0.8 }),
			numberColumn('load', 'Load', 'A', { weight: 0.7 }),
			numberColumn('loadPercent', 'Load', '%', { decimals: 0, weight: 0.6 }),
			textColumn('smallest', 'Smallest conductor behind it', 1.4),
			numberColumn('allowed', 'Greatest allowed', 'A', { weight: 0.9 }),
			textColumn('farthest', 'Short at the far end', 1.5),
			textColumn('opens', 'Opens within', 1.2),
			numberColumn('spares', 'Spares', '', { decimals: 0, weight: 0.7 }),
			handColumn('fitted', 'Fitted', 0.7)
		],
		rows,
		whenEmpty: 'The diagram has no fuses or breakers.',
		notes: [
			'Short there: the greatest short-circuit current right behind the fuse, its own resistance not counted. Short at the far end: the least of those currents through this fuse at the ends of the conductors behind it, batteries fully charged.',
			'Opening times are bands, and their curves were not seen in a published table: unverified.',
			...(unverified
				? ['Some voltages and breaking capacities are from memory or common practice: compare with the marking on the fuse.']
				: []),
			'Greatest allowed: by the profile, for the smallest conductor that this fuse alone protects. Spares: two of each blade fuse, one of each other; common practice, no source.'
		]
	});
}

const FEW = 1;
const CHEAP = 2;

/** Spares to carry of one fuse: common practice, no source. */
export const sparesOf = (family: string | null): number => (family?.startsWith('blade') ? CHEAP : FEW);

interface Behind {
	readonly view: ConductorView;
	/** Nothing else limits a fault in it, at one end at least. */
	readonly alone: boolean;
}

/** Conductors in which a fault is limited by this device, alone or with others. */
function conductorsBehind(study: Study, { origin, a }: DeviceBranch): Behind[] {
	return study.conductors.flatMap((view) => {
		// Returns are limited by the same fuse, and are not what it feeds.
		if (view.pole !== study.network.poles[a]) return [];
		const { from, to } = study.protection(view.id);
		const limited = [from, to].filter(({ limitedBy }) => limitedBy.some(({ part, link }) => part === origin.part && link === origin.link));
		return limited.length === 0 ? [] : [{ view, alone: limited.some(({ limitedBy }) => limitedBy.length === 1) }];
	});
}

const thinnestOf = (views: readonly ConductorView[]): ConductorView | null =>
	views.reduce<ConductorView | null>(
		(thin, view) => (thin && areaMm2(thin.conductor.gauge) <= areaMm2(view.conductor.gauge) ? thin : view),
		null
	);

function partsServed(study: Study, own: string, behind: readonly Behind[]): string[] {
	const ids = behind.flatMap(({ view: { conductor } }) => [conductor.from.part, conductor.to.part]).filter((id) => id !== own);
	return [...new Set(ids)]
		.filter((id) => Object.hasOwn(study.diagram.parts, id))
		.map(study.part)
		.filter(({ links }) => !links.some(({ kind }) => kind === 'battery') && !isOnlyFuses(links))
		.map(partName);
}

/** A fuse beside this one, in another string. */
const isOnlyFuses = (links: readonly Link[]): boolean => links.length > 0 && links.every(({ kind }) => kind === 'protective');

function greatestAllowed(study: Study, behind: readonly Behind[]): number | null {
	const limits = behind
		.filter(({ alone, view }) => alone && view.conductor.use !== 'cranking')
		.map(({ view }) => greatestDevice(study.profile, view.ampacity, study.diagram.system.nominalV).currentA);
	return limits.length === 0 ? null : Math.min(...limits);
}

/** Of the shorts at the ends of the conductors behind a device, the one that drives least through it. */
function farthestShort({ faults, network, studName, diagram }: Study, branch: DeviceBranch, behind: readonly Behind[]) {
	let least: { readonly currentA: number; readonly at: string } | null = null;
	for (const { view } of behind) {
		const nodes = network.nodeOfEnd.get(view.id);
		if (!nodes) continue;
		for (const end of ['from', 'to'] as const) {
			const short = faults.short(nodes[end], 'greatest');
			if (!short || short.openV === 0) continue;
			const currentA = Math.abs(short.branchA(branch));
			if (currentA < branch.device.ratingA * LEAST_SHARE) continue;
			const { part, terminal } = diagram.conductors[view.id]![end];
			if (!least || currentA < least.currentA) least = { currentA, at: studName(`${part}.${terminal}`) };
		}
	}
	return least;
}

/** Less than this share of its rating through a device: the short is fed past it. */
const LEAST_SHARE = 1e-3;
