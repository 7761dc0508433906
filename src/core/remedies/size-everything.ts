/** The least copper, and the fuses to go with it, that pass. */
import { areaMm2, compareGauges, gaugesOf, nextGaugeUp } from '#core/conductors';
import { compose, editConductors, setParams, type Command, type ConductorId, type Diagram, type Gauge, type PartId } from '#core/diagram';
import { usedLengthM } from '#core/network';
import { amperageAs, isOpen, type ConductorView, type Finding, type Study } from '#core/rules';
import { devicesIn, ratingsOf, withRating, type DevicePlace } from './device-rating.ts';
import { applied, difference, findingsOf, studyOf } from './findings.ts';
import { deviceText } from './other-fuse.ts';
import { BY_COPPER, BY_FUSE, toMend } from './size-findings.ts';
import { thickenCommands } from './thicker-conductor.ts';
import type { Difference } from './types.ts';
import { whyNoThinner, whyThisFuse } from './why-sized.ts';

export interface SizeOptions {
	/** Conductors that keep their size. */
	readonly conductors?: readonly ConductorId[];
	/** Fuses that keep their rating, as "part.link"; a part's id stands for all of its fuses. */
	readonly fuses?: readonly string[];
}

export interface SizedConductor {
	readonly id: ConductorId;
	readonly from: Gauge;
	readonly to: Gauge;
	/** Why no thinner: what would be found, or what it carries. */
	readonly why: string;
}

export interface SizedFuse {
	readonly part: PartId;
	readonly link: string;
	readonly fromA: number;
	readonly toA: number;
	/** "F3", or "D position 2" where the part has several. */
	readonly name: string;
	readonly why: string;
}

export interface Sizing {
	readonly conductors: readonly SizedConductor[];
	readonly fuses: readonly SizedFuse[];
	/** What is pinned and was left alone. */
	readonly kept: { readonly conductors: readonly ConductorId[]; readonly parts: readonly PartId[] };
	/** Mass of copper in all conductors, kg. */
	readonly copperKgBefore: number;
	readonly copperKgAfter: number;
	/** Errors that are left, and why size does not mend them. */
	readonly left: readonly { readonly finding: Finding; readonly why: string }[];
	/** All of it as one undo step; null where everything has its size already. */
	readonly command: Command | null;
	preview(): Difference & { readonly diagram: Diagram };
}

/** Of continuous current, the share of its amperage a conductor is sized for: common practice, no source. */
const CLOSE = 0.9;
const COPPER_KG_PER_M_MM2 = 8.96e-3;
const MOST_ROUNDS = 60;
const ROUNDING = 1e-6;

export function sizeEverything(diagram: Diagram, { pinned = {} }: { readonly pinned?: SizeOptions } = {}): Sizing {
	const free = freeThings(diagram, pinned);
	let current = fusesSized(diagram, free.fuses);
	current = startingSizes(current, free.conductors);
	current = thickened(current, free);
	current = trimmed(current, free.conductors);

	const conductors = free.conductors
		.map((id) => ({ id, from: diagram.conductors[id]!.gauge, to: current.conductors[id]!.gauge }))
		.filter(({ from, to }) => compareGauges(from, to) !== 0)
		.map((sized) => ({ ...sized, why: whyNoThinner(current, sized.id) }));
	const fuses = free.fuses.flatMap(({ part, link, device }): SizedFuse[] => {
		const toA = ratingIn(current, part, link);
		const name = deviceText(studyOf(diagram), part, link);
		return toA === device.ratingA ? [] : [{ part, link, fromA: device.ratingA, toA, name, why: whyThisFuse(current, part, link, toA) }];
	});
	const commands = [...fuseCommands(diagram, current, fuses), ...thickenCommands(new Map(conductors.map(({ id, to }) => [id, to])))];
	const after = applied(diagram, commands) ?? diagram;
	return {
		conductors,
		fuses,
		kept: pinnedIn(diagram),
		copperKgBefore: copperKg(diagram),
		copperKgAfter: copperKg(after),
		left: whatIsLeft(after, free),
		command: commands.length > 0 ? compose('size conductors and fuses', commands) : null,
		preview: () => ({ ...difference(findingsOf(diagram), findingsOf(after)), diagram: after })
	};
}

interface Free {
	readonly conductors: readonly ConductorId[];
	readonly fuses: readonly DevicePlace[];
}

/** What carries current in some case and is not pinned. Cranking supplies, spares and bonds are sized by other rules. */
function freeThings(diagram: Diagram, { conductors = [], fuses = [] }: SizeOptions): Free {
	const study = studyOf(diagram);
	const kept = pinnedIn(diagram);
	const pinned = new Set([...conductors, ...kept.conductors]);
	const pinnedFuses = new Set([...fuses, ...kept.parts]);
	const isUsed = ({ id, conductor, surge }: ConductorView) => conductor.use === 'ordinary' && surge.currentA > 0 && !pinned.has(id);
	return {
		conductors: study.conductors.filter(isUsed).map(({ id }) => id),
		fuses: devicesIn(diagram, Object.keys(diagram.parts)).filter(
			({ part, link, device }) =>
				device.kind === 'fuse' && !pinnedFuses.has(part) && !pinnedFuses.has(`${part}.${link}`) && currentsOf(study, part, link).surgeA > 0
		)
	};
}

const pinnedIn = ({ conductors, parts }: Diagram): Sizing['kept'] => {
	const pinned = (record: Readonly<Record<string, { readonly pinned?: boolean }>>) =>
		Object.keys(record).filter((id) => record[id]!.pinned);
	return { conductors: pinned(conductors), parts: pinned(parts) };
};

function currentsOf(study: Study, part: string, link: string): { continuousA: number; surgeA: number } {
	const index = study.network.branchOfLink.get(`${part}.${link}`);
	if (index === undefined) return { continuousA: 0, surgeA: 0 };
	const amps = study.cases.filter(({ point }) => point.status === 'solved').map(({ point }) => Math.abs(point.branchA[index]!));
	return { continuousA: study.branchCurrent(index).currentA, surgeA: Math.max(0, ...amps) };
}

/** Each fuse carries its continuous current with room to spare, and any surge; twins in parallel stay twins. */
function fusesSized(diagram: Diagram, fuses: readonly DevicePlace[]): Diagram {
	const study = studyOf(diagram);
	const neededA = new Map<string, number>(
		fuses.map(({ part, link }) => {
			const { continuousA, surgeA } = currentsOf(study, part, link);
			return [`${part}.${link}`, Math.max(continuousA / study.profile.fuseLoadShare.value, surgeA)] as const;
		})
	);
	const twins = twinsOf(study, fuses);
	return fuses.reduce((current, { part, link, device }) => {
		const wantedA = Math.max(...twins(`${part}.${link}`).map((twin) => neededA.get(twin)!)) * (1 - ROUNDING);
		const ratingA = ratingsOf(device).find((rating) => rating >= wantedA);
		return ratingA === undefined ? current : rated(current, part, link, ratingA);
	}, diagram);
}

/** Fuses of one kind and rating that feed some conductor together, such as those of parallel strings. */
function twinsOf(study: Study, fuses: readonly DevicePlace[]): (key: string) => string[] {
	const own = new Map(fuses.map((fuse) => [`${fuse.part}.${fuse.link}`, fuse]));
	const together = study.conductors.flatMap(({ id }) => {
		const { from, to } = study.protection(id);
		return [from, to].map(({ limitedBy }) => limitedBy.map(({ part, link }) => `${part}.${link}`));
	});
	return (key) => {
		const { part, device } = own.get(key)!;
		const isAlike = (other: DevicePlace) =>
			other.device.ratingA === device.ratingA && study.diagram.parts[other.part]!.kind === study.diagram.parts[part]!.kind;
		const beside = together.filter((keys) => keys.includes(key)).flat();
		return [key, ...beside.filter((other) => own.has(other) && isAlike(own.get(other)!))];
	};
}

function rated(diagram: Diagram, part: string, link: string, ratingA: number): Diagram {
	const params = withRating(diagram.parts[part]!, link, ratingA);
	return (params && applied(diagram, [setParams({ parts: [part], params })])) ?? diagram;
}

const ratingIn = (diagram: Diagram, part: string, link: string): number =>
	devicesIn(diagram, [part]).find((device) => device.link === link)!.device.ratingA;

/** One command for each part. */
function fuseCommands(diagram: Diagram, sized: Diagram, fuses: Sizing['fuses']): Command[] {
	return [...new Set(fuses.map(({ part }) => part))].map((part) => {
		const { params } = sized.parts[part]!;
		const changed = Object.entries(params).filter(
			([name, value]) => JSON.stringify(diagram.parts[part]!.params[name]) !== JSON.stringify(value)
		);
		return setParams({ parts: [part], params: Object.fromEntries(changed) });
	});
}

/** The thinnest size that carries the current. What fuses and drops ask for on top is found by the rules. */
function startingSizes(diagram: Diagram, ids: readonly ConductorId[]): Diagram {
	const study = studyOf(diagram);
	const sizes = ids.map((id) => {
		const view = study.conductor(id);
		const { conductor, continuous } = view;
		const sizes = gaugesOf(conductor.gauge.system);
		const carries = (gauge: Gauge) => CLOSE * amperageAs(study, view, { gauge }).currentA >= continuous.currentA;
		return [id, sizes.find(carries) ?? sizes.at(-1)!] as const;
	});
	return applied(diagram, thickenCommands(new Map(sizes)))!;
}

/** Size by size for as long as something is found that size may mend. */
function thickened(diagram: Diagram, free: Free): Diagram {
	let current = diagram;
	const own = new Set(free.conductors);
	for (let round = 0; round < MOST_ROUNDS; round++) {
		const findings = toMend(current);
		const ids = new Set(
			findings.flatMap(({ subjects }) => subjects.flatMap(({ kind, id }) => (kind === 'conductor' && own.has(id) ? [id] : [])))
		);
		const thicken = new Map<ConductorId, Gauge>();
		for (const id of ids) {
			const thicker = nextGaugeUp(current.conductors[id]!.gauge);
			if (thicker) thicken.set(id, thicker);
		}
		const parts = new Set(findings.filter(({ rule }) => rule === BY_FUSE).flatMap(({ subjects }) => subjects.map(({ id }) => id)));
		let next = applied(current, thickenCommands(thicken))!;
		for (const { part, link, device } of free.fuses.filter(({ part }) => parts.has(part))) {
			const now = ratingIn(next, part, link);
			const { continuousA } = currentsOf(studyOf(current), part, link);
			const larger = ratingsOf(device).find((rating) => rating > now);
			if (larger !== undefined && continuousA > studyOf(current).profile.fuseLoadShare.value * now) next = rated(next, part, link, larger);
		}
		if (next === current) break;
		current = next;
	}
	return current;
}

/** Sizes down wherever nothing is found for it: two conductors of one path need not both have grown. */
function trimmed(diagram: Diagram, ids: readonly ConductorId[]): Diagram {
	const massOf = (id: ConductorId) => areaMm2(diagram.conductors[id]!.gauge) * usedLengthM(diagram.conductors[id]!).lengthM;
	const keys = (of: Diagram) => new Set(toMend(of).map(({ severity, key }) => `${severity} ${key}`));
	let current = diagram;
	let known = keys(current);
	for (const id of ids.toSorted((a, b) => massOf(b) - massOf(a))) {
		const { gauge } = current.conductors[id]!;
		for (const thinner of gaugesOf(gauge.system)
			.filter((other) => compareGauges(other, gauge) < 0)
			.toReversed()) {
			const next = applied(current, [editConductors({ conductors: [id], set: { gauge: thinner } })])!;
			const found = keys(next);
			if ([...found].some((key) => !known.has(key))) break;
			current = next;
			known = found;
		}
	}
	return current;
}

const copperKg = ({ conductors }: Diagram): number =>
	Object.values(conductors).reduce(
		(sum, conductor) => sum + COPPER_KG_PER_M_MM2 * areaMm2(conductor.gauge) * usedLengthM(conductor).lengthM,
		0
	);

function whatIsLeft(diagram: Diagram, free: Free): Sizing['left'] {
	const own = new Set(free.conductors);
	return findingsOf(diagram)
		.filter((finding) => (finding.severity === 'error' || finding.severity === 'fatal') && isOpen(finding))
		.map((finding) => {
			if (!BY_COPPER.includes(finding.rule) && finding.rule !== BY_FUSE)
				return { finding, why: 'No size of conductor or fuse mends this.' };
			const conductors = finding.subjects.filter(({ kind }) => kind === 'conductor');
			return {
				finding,
				why:
					conductors.length > 0 && conductors.every(({ id }) => !own.has(id))
						? 'What it is about keeps its size.'
						: 'The largest size or rating of its kind is not enough.'
			};
		});
}
