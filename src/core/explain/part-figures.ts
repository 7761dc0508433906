/** The figures of a part that the program works out, each with what it opens by. */
import type { PartId } from '#core/diagram';
import { deviceName, type Study } from '#core/rules';
import type { Link } from '#core/parts';
import { compactNumber } from '#core/units';
import { caseLabel } from './branch.ts';
import { explain } from './explain.ts';
import type { FigureId, LinkRef } from './figure-id.ts';
import { startOf, type StartDevice, type StartVerdict } from './start.ts';
import { voltsLost } from './volts-lost.ts';

/** One line: name, value as shown, and its explanation. Plain data. */
export interface FigureRow {
	readonly name: string;
	readonly text: string;
	/** "in “Peak”", "for 2 s". Empty for none. */
	readonly note: string;
	readonly figure: FigureId;
	/** Over what it may be. */
	readonly isOver: boolean;
	/** A number behind it was not seen in a source. */
	readonly unverified: boolean;
}

export interface FigureGroup {
	/** "position 3"; empty where the part has one thing to say. */
	readonly title: string;
	readonly rows: readonly FigureRow[];
	/** What follows from them, in a sentence. */
	readonly says: readonly string[];
}

export function partFigures(study: Study, part: PartId): readonly FigureGroup[] {
	const { links } = study.part(part);
	const devices = links.filter(({ kind }) => kind === 'protective');
	const groups = links.flatMap((link): FigureGroup[] => {
		const ref = { part, link: link.id };
		if (link.kind === 'protective') {
			const title = devices.length > 1 ? deviceName(study, ref) : '';
			return [{ title, rows: deviceRows(study, ref), says: [] }];
		}
		if (link.kind === 'load') return loadGroups(study, ref);
		if (link.kind === 'battery' || link.kind === 'source') return [{ title: '', rows: supplyRows(study, ref, link), says: [] }];
		return [];
	});
	const bars = barRows(study, part, links);
	return [...groups, ...(bars.length > 0 ? [{ title: '', rows: bars, says: [] }] : [])].filter(({ rows }) => rows.length > 0);
}

function row(study: Study, name: string, figure: FigureId, more: Partial<FigureRow> = {}): FigureRow[] {
	const found = explain(study, figure);
	if (!found) return [];
	const note = found.caseName === null ? '' : `in “${found.caseName}”`;
	return [{ name, text: found.text, note, figure, isOver: false, unverified: found.confidence === 'memory', ...more }];
}

function deviceRows(study: Study, ref: LinkRef): FigureRow[] {
	const of = (figure: Extract<FigureId, { of: 'device' }>['figure']): FigureId => ({ of: 'device', ...ref, figure });
	const loading = explain(study, of('loading'));
	const fault = explain(study, of('fault-current'));
	const breaking = explain(study, of('breaking'));
	const isFed = fault !== null && fault.value !== 0;
	return [
		...row(study, 'Worst continuous current', of('current')),
		...row(study, 'Share of its rating', of('loading'), { note: '', isOver: (loading?.value ?? 0) > 100 * (1 + 1e-6) }),
		...(isFed ? row(study, 'Short-circuit current it has to break', of('fault-current')) : []),
		...row(study, 'What it can break', of('breaking'), { isOver: isFed && breaking !== null && breaking.value! < fault.value! }),
		...(isFed ? row(study, 'Then opens after', of('opens-from'), { note: 'at the earliest' }) : []),
		...(isFed ? row(study, 'And has opened by', of('opens-by'), { note: 'at the latest' }) : [])
	];
}

/** Cases with an operating point, by their ids. */
const solvedCases = (study: Study) => study.cases.filter(({ point }) => point.status === 'solved');

function supplyRows(study: Study, ref: LinkRef, { kind }: Link): FigureRow[] {
	const { network } = study;
	const same = (other: LinkRef) => other.part === ref.part && other.link === ref.link;
	const battery = network.batteries.find(same);
	const source = network.sources.find(same);
	const supply = battery ?? source;
	if (!supply) return [];
	const amps = solvedCases(study).map(({ id, point }) => ({ id, amps: (battery ? point.batteryA : point.sourceA)[supply.index]!, point }));
	const most = greatest(amps, ({ amps }) => amps);
	const charged = greatest(amps, ({ amps }) => -amps);
	const lowest = greatest(amps, ({ point }) => point.nodeV[supply.negative]! - point.nodeV[supply.positive]!);
	const of = (caseId: string, figure: 'current' | 'volts'): FigureId => ({ of: 'supply', ...ref, caseId, figure });
	if (kind === 'source') return most && most.amps > 0 ? row(study, 'Greatest output', of(most.id, 'current')) : [];
	const post = `${ref.part}.${positiveOf(study, ref)}`;
	return [
		...(most && most.amps > 0 ? row(study, 'Greatest current out', of(most.id, 'current')) : []),
		...(charged && charged.amps < 0 ? row(study, 'Greatest current in', of(charged.id, 'current')) : []),
		...(lowest ? row(study, 'Least volts at its terminals', of(lowest.id, 'volts')) : []),
		...row(study, 'Short-circuit current at its + terminal', { of: 'stud', key: post, figure: 'fault-current' }),
		...row(study, 'May be used each day', { of: 'energy-battery', part: ref.part, unit: 'Ah' })
	];
}

function positiveOf(study: Study, { part, link }: LinkRef): string {
	const found = study.part(part).links.find(({ id }) => id === link);
	return found && 'positive' in found ? found.positive : '';
}

function loadGroups(study: Study, ref: LinkRef): FigureGroup[] {
	const load = study.network.loads.find(({ part, link }) => part === ref.part && link === ref.link);
	if (!load) return [];
	const drawing = solvedCases(study).flatMap(({ id, point }) =>
		point.loadA[load.index]! > 1e-9 ? [{ id, amps: point.loadA[load.index]!, volts: point.loadV[load.index]! }] : []
	);
	const most = greatest(drawing, ({ amps }) => amps);
	const lowest = greatest(drawing, ({ volts }) => -volts);
	const lost = greatest(
		drawing.flatMap(({ id }) => {
			const found = voltsLost(study, ref.part, ref.link, id);
			return found.ok ? [{ id, volts: found.totalV }] : [];
		}),
		({ volts }) => volts
	);
	const rows = [
		...(most ? row(study, 'Greatest current', { of: 'load', ...ref, caseId: most.id, figure: 'current' }) : []),
		...(lowest ? row(study, 'Least volts at its terminals', { of: 'load', ...ref, caseId: lowest.id, figure: 'volts' }) : []),
		...(lost ? row(study, 'Most volts lost, there and back', { of: 'ladder', load: ref.part, caseId: lost.id, figure: 'total' }) : []),
		...row(study, 'Used in a day', { of: 'energy-load', part: ref.part, unit: 'Ah' })
	];
	return [{ title: '', rows, says: [] }, ...startGroup(study, ref)];
}

function startGroup(study: Study, ref: LinkRef): FigureGroup[] {
	const start = startOf(study, ref);
	if (!start) return [];
	const lasts = start.seconds === null ? 'how long is not given' : `for ${compactNumber(start.seconds)} s`;
	const of = (figure: Extract<FigureId, { of: 'start' }>['figure']): FigureId => ({ of: 'start', ...ref, figure });
	return [
		{
			title: 'While it starts',
			rows: [
				...row(study, 'Starting current', of('current'), { note: `${lasts}, ${inCase(study, start.before.point.caseId)}` }),
				...row(study, 'Volts at its terminals', of('volts'), { note: '' }),
				...row(study, 'Dip', of('dip'), { note: 'below what it runs on' }),
				...start.devices.flatMap((device) => startDeviceRows(study, ref, device))
			],
			says: start.devices.map((device) => saysOf(device, start.seconds))
		}
	];
}

const inCase = (study: Study, id: string): string => `from “${caseLabel(study, id)}”`;

function startDeviceRows(study: Study, ref: LinkRef, { ref: device, name, opening, verdict }: StartDevice): FigureRow[] {
	const of = (figure: Extract<FigureId, { of: 'start-device' }>['figure']): FigureId => ({ of: 'start-device', ...ref, device, figure });
	const isOver = verdict === 'opens';
	return [
		...row(study, `Current in ${name}`, of('current'), { note: '' }),
		...(opening ? row(study, `${name} may open after`, of('opens-from'), { note: '', isOver }) : []),
		...(opening && opening.earliestS !== Infinity ? row(study, `${name} has opened by`, of('opens-by'), { note: '', isOver }) : [])
	];
}

const VERDICTS: Readonly<Record<StartVerdict, (name: string) => string>> = {
	holds: (name) => `${name} holds through the start.`,
	'may-open': (name) => `${name} may open before the start is over, or may not: the start lies within its band.`,
	opens: (name) => `${name} opens before the start is over.`
};

function saysOf({ name, opening, verdict }: StartDevice, seconds: number | null): string {
	if (verdict) return VERDICTS[verdict](name);
	if (!opening) return `When ${name} opens is not known: it has no published curve here.`;
	return seconds === null ? `Whether ${name} holds depends on how long the start lasts: give it under “Start lasts”.` : '';
}

/** Bars, switches and shunts: the piece that carries most. */
function barRows(study: Study, part: PartId, links: readonly Link[]): FigureRow[] {
	const pieces = links.flatMap(({ kind, id }) => {
		const index = study.network.branchOfLink.get(`${part}.${id}`);
		if (index === undefined || !['segment', 'switch', 'shunt'].includes(kind)) return [];
		return [{ link: id, amps: study.branchCurrent(index).currentA }];
	});
	const most = greatest(pieces, ({ amps }) => amps);
	if (!most) return [];
	const ref = { part, link: most.link };
	const loading = explain(study, { of: 'device', ...ref, figure: 'loading' });
	return [
		...row(study, 'Worst continuous current', { of: 'device', ...ref, figure: 'current' }),
		...row(
			study,
			'Share of its rating',
			{ of: 'device', ...ref, figure: 'loading' },
			{ note: '', isOver: (loading?.value ?? 0) > 100 * (1 + 1e-6) }
		)
	];
}

function greatest<Item>(items: readonly Item[], of: (item: Item) => number): Item | null {
	return items.reduce<Item | null>((best, item) => (best === null || of(item) > of(best) ? item : best), null);
}
