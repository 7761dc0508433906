import { usableLengthMm } from '#core/parts';
import { threadNeededMm, threadText } from '#core/studs';
import { thread, type ThreadId } from '#core/tables';
import { millimetresText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { studSubject } from './subjects.ts';

/** Share of the nut below which the joint cannot be trusted: common practice, no source. */
const LEAST_OF_NUT = 0.8;

export const studTooShort = defineRuleForEach('stacks', {
	meta: {
		id: 'stud-too-short',
		title: 'The thread fills the nut and shows one and a half turns beyond it',
		severity: 'error',
		group: 'studs',
		why: 'A nut that is not filled strips or works loose, and a loose joint on a battery stud burns.',
		source: { default: 'common practice, no source; nut heights by ISO 4032 and ASME B18.2.2' }
	},

	messages: {
		short: ({ name, usableMm, heightMm, neededMm, thread }: Measures) => ({
			message: `The thread of ${name} is too short. The stack takes ${mm(heightMm)} of its ${mm(usableMm)} (${thread}). The nut needs ${mm(neededMm)}; ${left(usableMm - heightMm)}, ${mm(heightMm + neededMm - usableMm)} too little.`,
			remedy: 'Move a terminal to another stud, or use a part with a longer stud.'
		})
	},

	*checkOne({ key, terminal, heightMm, threadLeftMm, hardwareAssumed }, study) {
		if (terminal.thread === null || terminal.usableLengthMm === null || threadLeftMm === null) return;
		const { nutHeightMm } = thread(terminal.thread);
		const neededMm = threadNeededMm(terminal.thread);
		const engagedMm = terminal.usableLengthMm - heightMm;
		if (!exceeds(neededMm, engagedMm)) return;
		yield {
			message: 'short',
			data: { name: study.studName(key), usableMm: terminal.usableLengthMm, heightMm, neededMm, thread: threadText(terminal.thread) },
			at: [studSubject(key)],
			severity: exceeds(LEAST_OF_NUT * nutHeightMm, engagedMm) ? 'error' : 'warning',
			assumptions: assumptions(terminal.thread, terminal.usableLengthMm, hardwareAssumed)
		};
	}
});

function assumptions(id: ThreadId, lengthMm: number, hardwareAssumed: boolean): string[] {
	return [
		...(hardwareAssumed ? ['A flat washer, a lock washer and a nut close the stack.'] : []),
		...(lengthMm === usableLengthMm(id)
			? [`${mm(lengthMm)} of usable thread, usual for ${threadText(id)}, where it was not measured.`]
			: [])
	];
}

interface Measures {
	name: string;
	usableMm: number;
	heightMm: number;
	neededMm: number;
	thread: string;
}

/** What the stack leaves for the nut, mm. */
const left = (leftMm: number): string => (leftMm > 0 ? `${mm(leftMm)} of thread are left` : 'no thread is left');
const mm = (value: number): string => millimetresText(value);
