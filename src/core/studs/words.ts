import { areaMm2, gaugeText } from '#core/conductors';
import type { Conductor, Diagram, StackItem } from '#core/diagram';
import { describe, type Terminal } from '#core/parts';
import { thread } from '#core/tables';
import { decimalText, millimetresText } from '#core/units';
import type { Stack } from './types.ts';

/** Insulated rings are made up to 10 AWG; above that terminals are tube lugs. */
export const LARGEST_RING_MM2 = 6;

const HARDWARE = { washer: 'washer', 'lock-washer': 'lock washer', nut: 'nut', fuse: 'fuse' } as const;

/** "4/0 AWG lug of W4", "12 AWG ring of W3", "fuse block F7", "washer". */
export function itemLabel({ conductors, parts }: Diagram, on: Terminal['kind'], item: StackItem): string {
	if (item.kind === 'lug') {
		const conductor = conductors[item.conductor]!;
		const name = conductor.label.trim() || 'unlabelled conductor';
		if (on === 'clamp') return `${gaugeText(conductor.gauge)} of ${name}`;
		return `${gaugeText(conductor.gauge)} ${terminalWord(conductor)} of ${name}`;
	}
	if (item.kind === 'block') {
		const block = Object.hasOwn(parts, item.block) ? parts[item.block]! : null;
		const noun = (block && describe(block).definition?.mounts?.noun) ?? 'fuse block';
		const label = block?.label.trim() ?? '';
		return label ? `${noun} ${label}` : `unlabelled ${noun}`;
	}
	return HARDWARE[item.kind];
}

const terminalWord = ({ gauge }: Conductor): string => (areaMm2(gauge) <= LARGEST_RING_MM2 ? 'ring' : 'lug');

/** "5/16 in" for an inch thread, "M8" and "#10" as they are. */
export const threadText = (thread: string): string => (/^\d/.test(thread) ? `${thread} in` : thread);

/** "M8 end stud L, from the seat: 4/0 AWG lug of W4; washer; lock washer; nut; torque 9 to 12 N·m; thread left 3.1 mm". */
export function stackSentence({ terminal, layers, threadLeftMm }: Omit<Stack, 'sentence'>): string {
	const things = layers.map(({ label }) => label).join('; ');
	if (terminal.kind === 'clamp') return `Clamp ${terminal.label}: ${things}`;
	return `${studText(terminal)}, from the seat: ${things}${torqueText(terminal)}${threadLeftText(threadLeftMm)}`;
}

function studText({ thread: id, label }: Terminal): string {
	const size = id === null ? '' : `${threadText(id)} `;
	return /stud|post/i.test(label) ? `${size}${label}` : `${size}stud (${label})`;
}

/** The usual range for its thread: common practice, no source. */
function torqueText({ thread: id }: Terminal): string {
	if (id === null) return '';
	const [least, greatest] = thread(id).torqueNm;
	return `; torque ${decimalText(least)} to ${decimalText(greatest)} N·m`;
}

function threadLeftText(threadLeftMm: number | null): string {
	if (threadLeftMm === null) return '';
	return threadLeftMm >= 0
		? `; thread left ${millimetresText(threadLeftMm, 2)}`
		: `; thread ends ${millimetresText(-threadLeftMm, 2)} below the top of the nut`;
}
