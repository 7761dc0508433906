/** A conductor's two ends as the bench needs them. */
import { areaMm2, cableDiameterMm, gaugeText, lugOf } from '#core/conductors';
import { studKey, type Conductor, type ConductorEnd, type ConductorId, type Gauge } from '#core/diagram';
import type { Terminal } from '#core/parts';
import type { Study } from '#core/rules';
import { LARGEST_RING_MM2, threadText } from '#core/studs';
import type { ThreadId } from '#core/tables';
import { decimalText } from '#core/units';

export interface End {
	/** "D end stud L". */
	readonly place: string;
	/** "D end stud L, 2nd from the seat"; as `place` where nothing else is there. */
	readonly placeInStack: string;
	readonly terminal: Terminal | null;
	readonly fitting: Fitting | null;
	/** Clamped in a distribution panel. */
	readonly inPanel: boolean;
}

/** What is crimped on: its name has the gauge, and the hole where it has one. */
export interface Fitting {
	readonly kind: 'lug' | 'ring' | 'ferrule';
	readonly gauge: Gauge;
	readonly hole: ThreadId | null;
	readonly text: string;
}

export function endOf(study: Study, id: ConductorId, end: ConductorEnd): End {
	const conductor = study.diagram.conductors[id]!;
	const ref = conductor[end];
	const key = studKey(ref);
	const part = Object.hasOwn(study.diagram.parts, ref.part) ? study.part(ref.part) : null;
	const terminal = part?.terminal(ref.terminal) ?? null;
	const place = study.studName(key);
	const stack = study.stack(key);
	const landed = stack?.layers.filter(({ item }) => item.kind === 'lug' || item.kind === 'block') ?? [];
	const height = landed.findIndex(({ item }) => item.kind === 'lug' && item.conductor === id && item.end === end);
	return {
		place,
		placeInStack: landed.length < 2 || height < 0 || terminal?.kind !== 'stud' ? place : `${place}, ${ordinal(height + 1)} from the seat`,
		terminal,
		fitting: terminal && fittingFor(conductor, terminal),
		inPanel: terminal?.kind === 'clamp' && part?.definition?.group === 'distribution'
	};
}

export function fittingFor({ gauge }: Pick<Conductor, 'gauge'>, { kind, thread }: Terminal): Fitting {
	const size = gaugeText(gauge);
	if (kind === 'clamp') return { kind: 'ferrule', gauge, hole: null, text: `${size} ferrule` };
	const word = areaMm2(gauge) <= LARGEST_RING_MM2 ? 'ring' : 'lug';
	return { kind: word, gauge, hole: thread, text: thread === null ? `${size} ${word}` : `${size} ${word}, ${threadText(thread)} hole` };
}

const ordinal = (n: number): string => (n === 1 ? 'lowest' : `${n}${n === 2 ? 'nd' : n === 3 ? 'rd' : 'th'}`);

/** Adhesive-lined 3 : 1 tubing: width before and after shrinking, mm. Common practice, no source. */
const TUBING: readonly (readonly [suppliedMm: number, shrunkMm: number])[] = [
	[3, 1],
	[6, 2],
	[9, 3],
	[12, 4],
	[18, 6],
	[24, 8],
	[39, 13]
];
/** It has to slide over the barrel. */
const OVER_BARREL = 1.15;
const STEP_MM = 5;

export interface HeatShrink {
	readonly tubing: string;
	readonly suppliedMm: number;
	/** Of one piece. */
	readonly lengthMm: number;
}

/** Over the barrel and two cable diameters beyond it. */
export function heatShrinkFor(gauge: Gauge): HeatShrink {
	const cableMm = cableDiameterMm(gauge);
	const [suppliedMm, shrunkMm] = TUBING.find(([supplied]) => supplied >= cableMm * OVER_BARREL) ?? TUBING.at(-1)!;
	const { lengthMm, padWidthMm } = lugOf(gauge);
	const barrelMm = lengthMm - padWidthMm / 2;
	return {
		tubing: `${decimalText(suppliedMm)}/${decimalText(shrunkMm)} mm`,
		suppliedMm,
		lengthMm: Math.ceil((barrelMm + 2 * cableMm) / STEP_MM) * STEP_MM
	};
}
