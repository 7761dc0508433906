/** What single and twin terminal-mounted fuse blocks have in common. */
import { optionalAmount, thread } from './fields.ts';
import { stud } from './terminals.ts';
import type { Terminal } from './define.ts';

/** Seat to thread end of an insulated post, the fuse's own height included: common practice, no source. */
const POST_USABLE_MM = 30;

/** Parameters shared by both kinds. */
export const blockFields = () => ({
	plateHole: thread('Plate fits stud', 'M8'),
	postThread: thread('Post thread', 'M8'),
	postUsableMm: optionalAmount('Usable post length', 'mm', {
		max: 100,
		whenEmpty: 'usual for the thread',
		hint: 'seat to thread end, fuse included'
	}),
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

/** An insulated post: current reaches its lug through the fuse only. */
export const post = (
	id: string,
	label: string,
	x: number,
	y: number,
	block: { postThread: Terminal['thread'] & string; postUsableMm: number | null },
	fuse: string,
	ratedA: number | null
): Terminal =>
	stud(id, label, { x, y }, 'south', {
		thread: block.postThread,
		role: 'positive',
		usableLengthMm: block.postUsableMm ?? POST_USABLE_MM,
		maxTerminals: 2,
		ratedA,
		fuseInStack: fuse,
		acceptsBlock: false
	});
