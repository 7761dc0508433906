/** Studs nearer to the batteries than the bus, with no fuse between: a circuit may have its fuse there and only its return at the bus. */
import { studKey, terminalRef, type Diagram, type PartId, type StudKey, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import { barOf } from '#core/bars';

export interface UpstreamStud extends TerminalRef {
	/** The switch the circuit would by-pass; null where it lies behind all of them. */
	readonly before: PartId | null;
}

/** A block's plate and what is there already: common practice, no source. */
const MOST_ON_STUD = 3;

/** Nearest first. */
export function upstreamStuds(diagram: Diagram, bus: PartId): UpstreamStud[] {
	const landed = landings(diagram);
	const links = neighbours(diagram, bus);
	const start = (barOf(diagram, bus)?.slots ?? []).filter(({ fused }) => !fused).map(({ terminal }) => studKey({ part: bus, terminal }));
	const reached = new Map<StudKey, PartId | null>(start.map((key) => [key, null]));
	const found: UpstreamStud[] = [];
	for (const [key, before] of reached) {
		for (const { to, by } of links.get(key) ?? []) if (!reached.has(to)) reached.set(to, before ?? by);
		const { part, terminal: id } = terminalRef(key);
		const terminal = part === bus ? undefined : describe(diagram.parts[part]!).terminal(id);
		if (!terminal || terminal.kind !== 'stud' || terminal.role === 'negative' || terminal.mountingPlate || terminal.acceptsBlock === false)
			continue;
		if ((landed.get(key)?.length ?? 0) < Math.min(terminal.maxTerminals, MOST_ON_STUD)) found.push({ part, terminal: id, before });
	}
	return found;
}

interface Way {
	readonly to: StudKey;
	/** The switch on the way. */
	readonly by: PartId | null;
}

/** Conductors, bars and switches between studs; fuses end the way. */
function neighbours({ conductors, parts }: Diagram, bus: PartId): Map<StudKey, Way[]> {
	const ways = new Map<StudKey, Way[]>();
	const join = (a: StudKey, b: StudKey, by: PartId | null) => {
		for (const [from, to] of [
			[a, b],
			[b, a]
		] as const)
			ways.set(from, [...(ways.get(from) ?? []), { to, by }]);
	};
	for (const { from, to } of Object.values(conductors)) join(studKey(from), studKey(to), null);
	for (const [part, value] of Object.entries(parts)) {
		if (part === bus) continue;
		for (const link of describe(value).links) {
			if (link.kind !== 'segment' && link.kind !== 'switch') continue;
			const [a, b] = link.between.map((end) => `${part}.${end}`) as [StudKey, StudKey];
			join(a, b, link.kind === 'switch' ? part : null);
		}
	}
	return ways;
}
