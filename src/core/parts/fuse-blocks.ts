/** What single and twin terminal-mounted fuse blocks have in common. */
import type { FuseFamilyId } from '#core/tables';
import type { Primitive } from '#core/graphics';
import { fuseFamily, optionalAmount, thread } from './fields.ts';
import { cartridgeFuse, cubeFuse, fittedText, stripFuse } from './sketch.ts';
import { stud } from './terminals.ts';
import type { Mounting, Terminal } from './define.ts';
import { decimalText } from '#core/units';

/** Seat to thread end of an insulated post, the fuse's own height included: common practice, no source. */
const POST_USABLE_MM = 30;

/** Metal under a block: common practice, no source. */
const PLATE_MM = 3;

/** How both kinds sit on a stud. */
export const MOUNTED: Mounting<{ readonly plateMm: number | null }> = { noun: 'fuse block', plateMm: ({ plateMm }) => plateMm ?? PLATE_MM };

/** Parameters shared by both kinds. */
export const blockFields = () => ({
	family: fuseFamily('Fuse type', 'cube', ['cube', 'class-t', 'strip-sf30', 'strip-sf51', 'limiter']),
	plateHole: thread('Plate fits stud', 'M8'),
	postThread: thread('Post thread', 'M8'),
	postUsableMm: optionalAmount('Usable post length', 'mm', {
		max: 100,
		whenEmpty: 'usual for the thread',
		hint: 'seat to thread end, fuse included'
	}),
	plateMm: optionalAmount('Plate thickness', 'mm', { max: 30, whenEmpty: 'usual, 3 mm' }),
	fuseRatedV: optionalAmount('Fuse usable up to', 'V', { max: 1000, whenEmpty: 'as the fuse type' }),
	fuseBreakingA: optionalAmount('Breaking capacity of the fuse', 'A', { max: 200_000, whenEmpty: 'as the fuse type' })
});

/** The underside: it lands on another part's stud. It has no thread length of its own to fill. */
export const plate = (y: number, block: { plateHole: Terminal['thread'] & string }, ratedA: number): Terminal =>
	stud('plate', 'plate', { x: 0, y }, 'north', {
		thread: block.plateHole,
		role: 'positive',
		maxTerminals: 1,
		ratedA,
		mountingPlate: true,
		acceptsBlock: false
	});

/** A cube fuse sits on its post, insulated from it by its foot; any other type bridges the plate and a post of its own. */
export const post = (
	id: string,
	label: string,
	x: number,
	y: number,
	block: { family: FuseFamilyId; postThread: Terminal['thread'] & string; postUsableMm: number | null },
	fuse: string,
	ratedA: number | null
): Terminal =>
	stud(id, label, { x, y }, 'south', {
		thread: block.postThread,
		role: 'positive',
		usableLengthMm: block.postUsableMm ?? POST_USABLE_MM,
		maxTerminals: 2,
		ratedA,
		...(block.family === 'cube' && { fuseInStack: fuse }),
		acceptsBlock: false
	});

/** Room for the rating under a cube fuse. */
const RATING_MM = 17;

/** The fuse as it is seen: on its post, or between plate and post. */
export function blockFuse(family: FuseFamilyId, x: number, postY: number, ratingA: number | null, widthMm: number): Primitive[] {
	if (family !== 'cube') return (family === 'class-t' ? cartridgeFuse : stripFuse)(x, PLATE_EDGE_MM, x, postY, ratingA);
	return [
		...cubeFuse(x, postY, ratingA),
		fittedText(x, postY + RATING_MM, ratingA === null ? '' : decimalText(ratingA), 6.5, widthMm, { bold: true })
	];
}

const PLATE_EDGE_MM = 12;
