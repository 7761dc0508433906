/**
 * The first guess for a new conductor: label, and a size that carries what the drawing already says will flow or
 * what protects it. A guess saves typing; the checker judges it like any other.
 */
import {
	addConductor,
	freshId,
	itemKey,
	newConductor,
	nextLabel,
	surroundingsOf,
	type Command,
	type Diagram,
	type Gauge,
	type ItemKey,
	type TerminalRef
} from '#core/diagram';
import { compareGauges, gaugeText, gaugesOf, thinnestGauge } from '#core/conductors';
import { describe, type Link } from '#core/parts';
import { profileOf } from '#core/profiles';
import { reader } from '#core/units';

/** Where nothing is known yet: stiff enough to be a feeder, thin enough to land on most studs. */
const UNKNOWN = { awg: { system: 'awg', size: '6' }, iec: { system: 'iec', size: '16' } } as const satisfies Record<string, Gauge>;

/** The system the reader buys in. */
const usualSystem = (): Gauge['system'] => reader().gauge ?? 'awg';

export interface Proposal {
	readonly command: Command;
	readonly key: ItemKey;
	readonly label: string;
	readonly size: string;
}

export function proposeConductor(diagram: Diagram, from: TerminalRef, to: TerminalRef): Proposal {
	const label = nextLabel(diagram, 'W');
	const id = Object.hasOwn(diagram.conductors, label) ? freshId(diagram.conductors, 'W') : label;
	const gauge = proposeGauge(diagram, from, to);
	return {
		command: addConductor({ id, conductor: { from, to, label, gauge } }),
		key: itemKey('conductor', id),
		label,
		size: gaugeText(gauge)
	};
}

export function proposeGauge(diagram: Diagram, from: TerminalRef, to: TerminalRef): Gauge {
	const amps = [from, to].flatMap((end) => currentsAt(diagram, end));
	if (amps.length > 0) {
		const partners = [from, to].flatMap((end) => partnersAt(diagram, end));
		return [smallestFor(diagram, from, to, Math.max(...amps)), ...partners].toSorted(compareGauges).at(-1)!;
	}
	const neighbours = Object.values(diagram.conductors)
		.filter((conductor) => [conductor.from.part, conductor.to.part].some((id) => id === from.part || id === to.part))
		.map(({ gauge }) => gauge);
	return neighbours.toSorted(compareGauges).at(-1) ?? UNKNOWN[usualSystem()];
}

/** Currents the links at this terminal call for: ratings of devices, draws of loads, outputs of sources, in amps. */
function currentsAt(diagram: Diagram, { part: id, terminal }: TerminalRef): number[] {
	const part = diagram.parts[id];
	if (!part) return [];
	return describe(part)
		.links.filter((link) => touches(link, terminal))
		.flatMap((link) => currentOf(link, diagram.system.nominalV));
}

/**
 * Sizes that already land on the other pole of the load or source here: a return must stand what its partner's fuse
 * lets through, not just what the load draws.
 */
function partnersAt(diagram: Diagram, { part: id, terminal }: TerminalRef): Gauge[] {
	const part = diagram.parts[id];
	if (!part) return [];
	const others = describe(part).links.flatMap((link) =>
		'between' in link || !touches(link, terminal) ? [] : [link.positive === terminal ? link.negative : link.positive]
	);
	return Object.values(diagram.conductors)
		.filter(({ from, to }) => [from, to].some((end) => end.part === id && others.includes(end.terminal)))
		.map(({ gauge }) => gauge);
}

const touches = (link: Link, terminal: string): boolean =>
	'between' in link ? link.between.includes(terminal) : link.positive === terminal || link.negative === terminal;

function currentOf(link: Link, nominalV: number): number[] {
	if (link.kind === 'protective') return [link.device.ratingA];
	if (link.kind === 'source') return [link.maxA];
	if (link.kind !== 'load') return [];
	const { draw } = link;
	if (draw.kind === 'power') return [draw.watts / nominalV];
	return [draw.kind === 'current' ? draw.amps : nominalV / draw.ohms];
}

/** The thinnest size whose amperage where it runs reaches this; the thickest when none does. */
function smallestFor(diagram: Diagram, from: TerminalRef, to: TerminalRef, amps: number): Gauge {
	const conductor = newConductor(from, to);
	const { environment, ambientC } = surroundingsOf(diagram, conductor);
	const { ampacity } = profileOf(diagram);
	const around = { outsideC: ambientC, engineSpaceC: ambientC };
	const carries = (gauge: Gauge) => ampacity({ ...conductor, gauge, environment }, diagram.system.nominalV, around).currentA >= amps;
	const sizes = gaugesOf(usualSystem());
	return thinnestGauge(sizes[0]!, carries) ?? sizes.at(-1)!;
}
