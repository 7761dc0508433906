/** Why what is on a stud cannot stay on it, in whatever order. */
import { cableDiameterMm } from '#core/conductors';
import type { Diagram } from '#core/diagram';
import { thread, type ThreadId } from '#core/tables';
import { millimetresText } from '#core/units';
import { COVER_AIR_MM } from './cover.ts';
import { blockFit } from './hole.ts';
import { isHardware } from './order.ts';
import type { Layer, Stack } from './types.ts';

export interface Obstacle {
	readonly kind: 'thread-too-short' | 'too-many' | 'cover-does-not-close' | 'cable-too-thick' | 'plate-does-not-fit';
	/** By how much: millimetres, or terminals beyond the limit. */
	readonly excess: number;
	readonly message: string;
}

/** Threads that show beyond a full nut: common practice, no source. */
const THREADS_BEYOND = 1.5;

/** A full nut and one and a half turns beyond it, mm. */
export const threadNeededMm = (id: ThreadId): number => thread(id).nutHeightMm + THREADS_BEYOND * thread(id).pitchMm;

const ROUNDING_MM = 1e-6;

/** Obstacles of a stack with some of its layers taken away; none depends on the order. */
export function obstaclesOf(
	diagram: Diagram,
	{ terminal, layers }: Pick<Stack, 'terminal' | 'layers'>,
	without = new Set<Layer>()
): Obstacle[] {
	const left = layers.filter((layer) => !without.has(layer));
	const terminals = left.filter(({ item }) => item.kind === 'lug' || item.kind === 'block');
	const obstacles: Obstacle[] = [];
	const add = (kind: Obstacle['kind'], excess: number, message: string) => obstacles.push({ kind, excess, message });

	const more = terminals.length - terminal.maxTerminals;
	if (more > 0) add('too-many', more, `${terminals.length} terminals where ${terminal.maxTerminals} are allowed.`);
	if (terminal.thread === null) return obstacles;

	const nut = left.findLast(({ item }) => item.kind === 'nut');
	const heightMm = left.reduce((sum, layer) => sum + layer.thicknessMm, 0) - (nut?.thicknessMm ?? 0);
	if (terminal.usableLengthMm !== null) {
		const shortMm = heightMm + threadNeededMm(terminal.thread) - terminal.usableLengthMm;
		if (shortMm > ROUNDING_MM) add('thread-too-short', shortMm, `The thread is too short by ${mm(shortMm)}.`);
	}
	if (terminal.coverHeightMm !== null) {
		const overMm = heightMm + (nut?.thicknessMm ?? 0) + COVER_AIR_MM - terminal.coverHeightMm;
		if (overMm > ROUNDING_MM) add('cover-does-not-close', overMm, `The cover does not close: ${mm(overMm)} are missing.`);
	}
	for (const { item, label } of left.filter((layer) => !isHardware(layer.item))) {
		if (item.kind === 'lug' && terminal.coverSlotMm !== null) {
			const overMm = cableDiameterMm(diagram.conductors[item.conductor]!.gauge) - terminal.coverSlotMm;
			if (overMm > 0) add('cable-too-thick', overMm, `The cable of the ${label} is ${mm(overMm)} too thick for the cover's slot.`);
		}
		if (item.kind === 'block') {
			const fit = blockFit(diagram, item.block, terminal);
			if (fit && fit.verdict !== 'fits') add('plate-does-not-fit', Math.abs(fit.slackMm), `The plate of ${label} does not fit this stud.`);
		}
	}
	return obstacles;
}

const mm = (value: number): string => millimetresText(value, 2);
