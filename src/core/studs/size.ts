import { lugOf } from '#core/conductors';
import type { Diagram, Part, StackItem } from '#core/diagram';
import { describe, type Terminal } from '#core/parts';
import { thread, type Thread } from '#core/tables';

/** Metal plate under a fuse block, its height where the block is not known: common practice, no source. */
const BLOCK_PLATE = { thicknessMm: 3, widthMm: 25 };

/** Terminal-mounted cube fuse with its insulating foot: common practice, no source. */
const CUBE_FUSE = { thicknessMm: 10, widthMm: 16 };

interface LayerSize {
	readonly thicknessMm: number;
	readonly widthMm: number;
}

/** Height and diameter of one thing on a terminal. In a clamp nothing is stacked: heights are zero there. */
export function layerSize(diagram: Diagram, terminal: Terminal, item: StackItem): LayerSize {
	const hardware = terminal.thread === null ? null : thread(terminal.thread);
	const size = sizeOnStud(diagram, hardware, item);
	return hardware ? size : { ...size, thicknessMm: 0 };
}

function sizeOnStud({ conductors, parts }: Diagram, hardware: Thread | null, item: StackItem): LayerSize {
	switch (item.kind) {
		case 'lug': {
			const { thicknessMm, padWidthMm } = lugOf(conductors[item.conductor]!.gauge);
			return { thicknessMm, widthMm: padWidthMm };
		}
		case 'block':
			return plateSize(Object.hasOwn(parts, item.block) ? parts[item.block]! : null);
		case 'fuse':
			return CUBE_FUSE;
		case 'washer':
			return { thicknessMm: hardware?.washerThicknessMm ?? 0, widthMm: hardware?.washerDiameterMm ?? 0 };
		case 'lock-washer':
			return { thicknessMm: hardware?.lockWasherThicknessMm ?? 0, widthMm: hardware?.lockWasherDiameterMm ?? 0 };
		case 'nut':
			return { thicknessMm: hardware?.nutHeightMm ?? 0, widthMm: hardware?.nutAcrossFlatsMm ?? 0 };
	}
}

function plateSize(block: Part | null): LayerSize {
	if (!block) return BLOCK_PLATE;
	const { definition, params } = describe(block);
	return definition?.mounts ? { ...BLOCK_PLATE, thicknessMm: definition.mounts.plateMm(params as never) } : BLOCK_PLATE;
}
