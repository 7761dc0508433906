import { jointOhm } from '#core/conductors';
import { studKey, type CaseId, type Diagram, type PartId, type StudKey } from '#core/diagram';
import type { Branch, NodeIndex } from '#core/network';
import { deviceName, partName, type Study, type Subject } from '#core/rules';
import { studyOf } from './study-of.ts';
import { wayFrom, type Step, type Supply, type Way } from './way.ts';

export type RungKind = 'conductor' | 'joint' | 'fuse' | 'breaker' | 'switch' | 'shunt' | 'bar';

/** One element between battery and load. Plain data. */
export interface Rung {
	readonly what: RungKind;
	/** "C3+", "joint at D1 position 3", "FB1". */
	readonly name: string;
	/** What to select for it. */
	readonly subject: Subject;
	readonly side: 'positive' | 'return';
	readonly volts: number;
	/** Of all that is lost. */
	readonly sharePercent: number;
	/** Through it, everything that flows there included. */
	readonly amps: number;
	readonly ohms: number;
	readonly heatW: number;
}

/** Something that feeds the same nodes but is not on the way of the greatest current. */
export interface BesideWay {
	readonly name: string;
	readonly subject: Subject;
	readonly amps: number;
	/** Stud where it joins. */
	readonly at: string;
}

export interface VoltsLost {
	readonly ok: true;
	readonly load: string;
	/** Link of the load within its part. */
	readonly link: string;
	readonly caseName: string;
	/** "B1 +" and "B1 −": where the ladder begins and ends. */
	readonly from: string;
	readonly to: string;
	/** "source" where a converter or charger feeds it. */
	readonly fedBy: 'battery' | 'source';
	/** From the supply's + terminal to the load, and back to its − terminal. */
	readonly rungs: readonly Rung[];
	readonly totalV: number;
	readonly nominalV: number;
	readonly percentOfNominal: number;
	/** Volts between the terminals where the ladder begins and ends. */
	readonly batteryV: number;
	readonly loadV: number;
	readonly loadA: number;
	/** Battery volts less load volts less all rungs: rounding only. */
	readonly remainderV: number;
	readonly beside: readonly BesideWay[];
}

const NOMINAL_V = [12, 24, 48];

/**
 * Every element from the battery to a load and back with what it loses in a case. In a mesh the way of the greatest
 * current is taken, and `beside` names what joins it. `link` may be left out where a part has one load.
 */
export function voltsLost(
	of: Study | Diagram,
	loadPart: PartId,
	link: string | null,
	caseId: CaseId
): VoltsLost | { readonly ok: false; readonly why: string } {
	const study = studyOf(of);
	const { network } = study;
	const no = (why: string) => ({ ok: false as const, why });
	const load = network.loads.find((own) => own.part === loadPart && (link === null || own.link === link));
	if (!load) return no('This part draws nothing by itself.');
	const result = study.cases.find(({ id }) => id === caseId);
	if (!result) return no('There is no such operating case.');
	const { point, operatingCase } = result;
	const name = partName(study.part(loadPart));
	if (point.status !== 'solved') return no(`"${operatingCase.label}" has no operating point, so no currents are known.`);
	if (!point.loadFed[load.index]) return no(`${name} is not fed in "${operatingCase.label}".`);
	const loadA = point.loadA[load.index]!;
	if (!(loadA > 1e-9)) return no(`${name} draws nothing in "${operatingCase.label}".`);

	const there = wayFrom(network, point, load.positive, 'positive');
	const back = wayFrom(network, point, load.negative, 'negative');
	if (!there || !back) return no(`No way from a battery or source to ${name} could be followed.`);

	const batteryV = point.nodeV[there.supply.positive]! - point.nodeV[back.supply.negative]!;
	const loadV = point.loadV[load.index]!;
	const unshared = [
		// The way is followed from the load; the ladder runs from the supply.
		...[...there.steps].reverse().flatMap((step) => rungsOf(study, turned(step), 'positive')),
		...back.steps.flatMap((step) => rungsOf(study, step, 'return'))
	];
	const totalV = unshared.reduce((sum, { volts }) => sum + volts, 0);
	const nominalV = NOMINAL_V.reduce((best, volts) => (Math.abs(volts - batteryV) < Math.abs(best - batteryV) ? volts : best));
	return {
		ok: true,
		load: name,
		link: load.link,
		caseName: operatingCase.label.trim() || caseId,
		from: supplyPost(study, there.supply, 'positive'),
		to: supplyPost(study, back.supply, 'negative'),
		fedBy: there.supply.kind,
		rungs: unshared.map((rung) => ({ ...rung, sharePercent: totalV > 0 ? (100 * rung.volts) / totalV : 0 })),
		totalV,
		nominalV,
		percentOfNominal: (100 * totalV) / nominalV,
		batteryV,
		loadV,
		loadA,
		remainderV: batteryV - loadV - totalV,
		beside: [...besides(study, there), ...besides(study, back)]
	};
}

const turned = ({ branch, from, to, currentA }: Step): Step => ({ branch, from: to, to: from, currentA });

type UnsharedRung = Omit<Rung, 'sharePercent'>;

function rungsOf(study: Study, { branch, from, currentA }: Step, side: Rung['side']): UnsharedRung[] {
	const rung = (what: RungKind, name: string, subject: Subject, ohms: number): UnsharedRung => ({
		what,
		name,
		subject,
		side,
		volts: currentA * ohms,
		amps: currentA,
		ohms,
		heatW: currentA ** 2 * ohms
	});
	const { origin, resistanceOhm } = branch;
	if (origin.kind === 'link') {
		return [rung(kindOf(branch), deviceName(study, origin), { kind: 'part', id: origin.part }, resistanceOhm)];
	}
	const { conductor, name } = study.conductor(origin.id);
	const lugOhm = jointOhm(conductor.gauge);
	const joint = (key: StudKey) => rung('joint', `joint of ${name} at ${study.studName(key)}`, { kind: 'stud', id: key }, lugOhm);
	const ends = [joint(studKey(conductor.from)), joint(studKey(conductor.to))] as const;
	const [first, last] = branch.a === from ? ends : [ends[1], ends[0]];
	return [first, rung('conductor', name, { kind: 'conductor', id: origin.id }, resistanceOhm - 2 * lugOhm), last];
}

function kindOf({ kind, device }: Branch): RungKind {
	if (device) return device.kind;
	return kind === 'switch' || kind === 'shunt' ? kind : 'bar';
}

function supplyPost(study: Study, { part }: Supply, pole: 'positive' | 'negative'): string {
	const link = study.part(part).links.find(({ kind }) => kind === 'battery' || kind === 'source');
	return link && 'positive' in link ? study.studName(`${part}.${link[pole]}`) : partName(study.part(part));
}

function besides(study: Study, { beside }: Way): BesideWay[] {
	return beside.map((other) => {
		const at = nodeName(study, other.at);
		if ('supply' in other) {
			const { part } = other.supply;
			return { name: partName(study.part(part)), subject: { kind: 'part', id: part }, amps: other.currentA, at };
		}
		const { origin } = other.branch;
		const name = origin.kind === 'conductor' ? study.conductor(origin.id).name : deviceName(study, origin);
		const subject: Subject = origin.kind === 'conductor' ? { kind: 'conductor', id: origin.id } : { kind: 'part', id: origin.part };
		return { name, subject, amps: other.currentA, at };
	});
}

/** A stud at a node, by name. */
export function nodeName(study: Study, node: NodeIndex): string {
	for (const [key, at] of study.network.nodeOf) if (at === node && !key.includes('@')) return study.studName(key);
	return 'inside a part';
}
