import type { Point, Side } from '#core/geometry';
import { TERMINALS_PER_STUD, type ThreadId } from '#core/tables';
import type { Role, Terminal } from './define.ts';

/**
 * Seat to thread end in millimetres where the user gives none: common practice, no source. Inch threads take the
 * length of the nearest metric one.
 */
const USABLE_LENGTH_MM: Record<ThreadId, number> = {
	M4: 8,
	M5: 12,
	M6: 15,
	M8: 20,
	M10: 25,
	M12: 30,
	'#8': 8,
	'#10': 12,
	'1/4': 15,
	'5/16': 20,
	'3/8': 25,
	'1/2': 30
};

export const usableLengthMm = (thread: ThreadId): number => USABLE_LENGTH_MM[thread];

interface StudOptions {
	readonly thread: ThreadId;
	readonly role?: Role;
	readonly usableLengthMm?: number | null;
	readonly coverHeightMm?: number | null;
	readonly coverSlotMm?: number | null;
	readonly maxTerminals?: number;
	readonly ratedA?: number | null;
	readonly fuseInStack?: string;
	readonly mountingPlate?: boolean;
	readonly acceptsBlock?: boolean;
	readonly print?: Terminal['print'];
	readonly otherSides?: readonly Side[];
}

export function stud(id: string, label: string, at: Point, side: Side, options: StudOptions): Terminal {
	const { thread, fuseInStack, mountingPlate, acceptsBlock, print, otherSides } = options;
	return {
		id,
		label,
		kind: 'stud',
		at,
		side,
		role: options.role ?? 'either',
		thread,
		usableLengthMm: options.usableLengthMm ?? usableLengthMm(thread),
		coverHeightMm: options.coverHeightMm ?? null,
		coverSlotMm: options.coverSlotMm ?? null,
		maxTerminals: options.maxTerminals ?? TERMINALS_PER_STUD.value,
		ratedA: options.ratedA ?? null,
		...(fuseInStack !== undefined && { fuseInStack }),
		...(mountingPlate !== undefined && { mountingPlate }),
		...(acceptsBlock !== undefined && { acceptsBlock }),
		...(print !== undefined && { print }),
		...(otherSides !== undefined && { otherSides })
	};
}

interface ClampOptions {
	readonly role?: Role;
	readonly maxTerminals?: number;
	readonly ratedA?: number | null;
	readonly print?: Terminal['print'];
}

export const clamp = (id: string, label: string, at: Point, side: Side, options: ClampOptions = {}): Terminal => ({
	id,
	label,
	kind: 'clamp',
	at,
	side,
	role: options.role ?? 'either',
	thread: null,
	usableLengthMm: null,
	coverHeightMm: null,
	coverSlotMm: null,
	maxTerminals: options.maxTerminals ?? 1,
	ratedA: options.ratedA ?? null,
	acceptsBlock: false,
	...(options.print !== undefined && { print: options.print })
});
