/** A stud seen from above: which way cables leave, what they need, and whether they get it. */
import { cableDiameterMm, lugOf } from '#core/conductors';
import { studKey, terminalRef, type ConductorEnd, type ConductorId, type Diagram, type StudKey } from '#core/diagram';
import type { Side } from '#core/geometry';
import { placedTerminal, sideToward } from '#core/layout';
import { describe } from '#core/parts';
import { COVER_AIR_MM } from './cover.ts';
import { blockFit, type HoleFit } from './hole.ts';
import { landings } from './order.ts';
import type { Layer, Stack } from './types.ts';

export interface PlanLug {
	readonly layer: Layer;
	/** Of the layer. */
	readonly index: number;
	readonly conductor: ConductorId;
	readonly end: ConductorEnd;
	/** Side of the drawing by which it leaves. */
	readonly side: Side;
	readonly padWidthMm: number;
	readonly lengthMm: number;
	readonly cableMm: number;
	/** Least radius inside the bend. */
	readonly bendRadiusMm: number;
	/** From the stud's centre straight on to a wall across its way: lug, straight run, bend. */
	readonly roomMm: number;
	/** Null where no cover slot is given. */
	readonly passesSlot: boolean | null;
}

export interface PlanBlock {
	readonly layer: Layer;
	/** Null where the block or its thread is not known. */
	readonly hole: HoleFit | null;
}

export interface Neighbour {
	readonly stud: StudKey;
	readonly pitchMm: number;
	/** Half of the widest pad here and half of the widest there. */
	readonly padsMm: number;
	/** Between the pads when they lie straight beside each other; negative where they would overlap. */
	readonly gapMm: number;
}

export interface PlanView {
	readonly lugs: readonly PlanLug[];
	readonly blocks: readonly PlanBlock[];
	/** Angle between two lugs that leave by one side, so that their barrels clear each other, degrees; null where none do. */
	readonly fanDeg: number | null;
	/** Studs of the same part with something on them, nearest first. */
	readonly neighbours: readonly Neighbour[];
	/** Null where no cover is given. */
	readonly cover: {
		readonly closes: boolean;
		readonly topMm: number;
		readonly heightMm: number | null;
		readonly slotMm: number | null;
	} | null;
}

/** Bend radius inside, in cable diameters, of fine-stranded battery cable and of sheathed cable: common practice, no source. */
const BEND_DIAMETERS = { open: 4, sheathed: 6 };
/** The barrel's crimp is not to be levered: common practice, no source. */
const STRAIGHT_RUN_MM = 20;
/** Crimped length of a barrel: common practice, no source. */
const BARREL_MM = 15;

export function planView(diagram: Diagram, stack: Stack, landed = landings(diagram)): PlanView {
	const lugs = stack.layers.flatMap((layer, index) => planLug(diagram, stack, layer, index));
	const blocks = stack.layers.flatMap((layer) =>
		layer.item.kind === 'block' ? [{ layer, hole: blockFit(diagram, layer.item.block, stack.terminal) }] : []
	);
	return { lugs, blocks, fanDeg: fanDeg(lugs), neighbours: neighboursOf(diagram, stack, landed), cover: coverOf(stack, lugs) };
}

function planLug(diagram: Diagram, { key, terminal }: Stack, layer: Layer, index: number): PlanLug[] {
	if (layer.item.kind !== 'lug') return [];
	const { conductor, end } = layer.item;
	const { gauge, sheathed, bends, ...ends } = diagram.conductors[conductor]!;
	const { padWidthMm, lengthMm } = lugOf(gauge);
	const cableMm = cableDiameterMm(gauge);
	const bendRadiusMm = cableMm * (sheathed ? BEND_DIAMETERS.sheathed : BEND_DIAMETERS.open);
	const here = placedTerminal(diagram, terminalRef(key));
	const toward = bends?.at(end === 'from' ? 0 : -1) ?? placedTerminal(diagram, ends[end === 'from' ? 'to' : 'from'])?.at;
	return [
		{
			layer,
			index,
			conductor,
			end,
			side: here && toward ? sideToward(here, toward) : (here?.side ?? terminal.side),
			padWidthMm,
			lengthMm,
			cableMm,
			bendRadiusMm,
			roomMm: lengthMm + Math.max(STRAIGHT_RUN_MM, cableMm) + bendRadiusMm,
			passesSlot: terminal.coverSlotMm === null ? null : cableMm <= terminal.coverSlotMm
		}
	];
}

/** The widest pad at its barrel's near end decides; as for two lugs that leave by the side where there is least room. */
function fanDeg(lugs: readonly PlanLug[]): number | null {
	const angles = [...new Set(lugs.map(({ side }) => side))]
		.map((side) => lugs.filter((lug) => lug.side === side))
		.filter((beside) => beside.length > 1)
		.map((beside) => {
			const widest = beside.reduce((a, b) => (b.padWidthMm > a.padWidthMm ? b : a));
			const reachMm = Math.max(widest.padWidthMm / 2, widest.lengthMm - BARREL_MM);
			return (2 * Math.asin(widest.padWidthMm / 2 / reachMm) * 180) / Math.PI;
		});
	return angles.length === 0 ? null : Math.max(...angles);
}

function neighboursOf(diagram: Diagram, { key, terminal, layers }: Stack, landed: ReturnType<typeof landings>): Neighbour[] {
	const { part } = terminalRef(key);
	const widest = Math.max(0, ...layers.flatMap(({ item, widthMm }) => (item.kind === 'lug' ? [widthMm] : [])));
	return describe(diagram.parts[part]!)
		.terminals.filter(({ id, kind }) => kind === 'stud' && id !== terminal.id)
		.flatMap(({ id, at }) => {
			const stud = studKey({ part, terminal: id });
			const widths = (landed.get(stud) ?? []).flatMap((item) =>
				item.kind === 'lug' ? [lugOf(diagram.conductors[item.conductor]!.gauge).padWidthMm] : []
			);
			if (widths.length === 0 || widest === 0) return [];
			const pitchMm = Math.hypot(at.x - terminal.at.x, at.y - terminal.at.y);
			const padsMm = (widest + Math.max(...widths)) / 2;
			return [{ stud, pitchMm, padsMm, gapMm: pitchMm - padsMm }];
		})
		.sort((a, b) => a.pitchMm - b.pitchMm);
}

function coverOf({ terminal, layers, heightMm }: Stack, lugs: readonly PlanLug[]): PlanView['cover'] {
	const { coverHeightMm, coverSlotMm } = terminal;
	if (coverHeightMm === null && coverSlotMm === null) return null;
	const topMm = heightMm + (layers.findLast(({ item }) => item.kind === 'nut')?.thicknessMm ?? 0);
	const isLowEnough = coverHeightMm === null || topMm + COVER_AIR_MM <= coverHeightMm;
	return {
		closes: isLowEnough && lugs.every(({ passesSlot }) => passesSlot !== false),
		topMm,
		heightMm: coverHeightMm,
		slotMm: coverSlotMm
	};
}
