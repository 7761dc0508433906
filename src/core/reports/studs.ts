/** The stud schedule: what sits where, in which order, and how tight. */
import type { ConductorId } from '#core/diagram';
import { drawElevation } from '#core/elevation';
import { stackCurrents, type Study } from '#core/rules';
import { jointsOf, threadText, type Joint, type Stack } from '#core/studs';
import { thread, type ThreadId } from '#core/tables';
import { compactNumber } from '#core/units';
import type { ReportInput } from './input.ts';
import { insulationOf } from './conductors.ts';
import { handColumn, numberColumn, table, textColumn, type Figure } from './table.ts';
import { naturally } from './words.ts';

/** lbf·in in one newton metre: 1 lbf = 4.4482216 N, 1 in = 0.0254 m. */
const LBF_IN_PER_NM = 1 / (4.4482216152605 * 0.0254);

export const TORQUE_SOURCE = 'common practice, no source; what the maker of the part prints goes first';

/** Range for the thread: "9 to 12 N·m (80 to 106 lbf·in)". */
export function torqueText(id: ThreadId): string {
	const [least, greatest] = thread(id).torqueNm;
	const inches = (nm: number): number => Math.round(nm * LBF_IN_PER_NM);
	return `${compactNumber(least)} to ${compactNumber(greatest)} N·m (${inches(least)} to ${inches(greatest)} lbf·in)`;
}

/** Studs with something on them, in the order of their parts' designations. */
export const stacksInOrder = (study: Study): Stack[] =>
	study.stacks
		.filter(({ terminal }) => terminal.kind === 'stud' && terminal.mountingPlate !== true)
		.toSorted((a, b) => naturally(study.studName(a.key), study.studName(b.key)));

/** Where more than one thing is stacked the order matters, and a drawing shows it. */
const FIGURE_EM = { widthEm: 43, heightEm: 20 };

function figureOf(input: ReportInput, stack: Stack, joints: readonly Joint[]): Figure | null {
	const things = stack.layers.filter(({ item }) => item.kind === 'lug' || item.kind === 'block' || item.kind === 'fuse').length;
	if (things < 2) return null;
	const insulation = (id: ConductorId) => `conductor:${insulationOf(input, id)}` as const;
	const { box, primitives, textMm } = drawElevation({ diagram: input.diagram, stack, joints, marks: [], insulation }, FIGURE_EM);
	const { thread } = stack.terminal;
	const caption = [input.study.studName(stack.key), ...(thread === null ? [] : [torqueText(thread)])].join(': ');
	return { caption, box, primitives, textMm };
}

export function studSchedule(input: ReportInput) {
	const { study, check } = input;
	const rows = stacksInOrder(study).map((stack) => {
		const { key, terminal, terminalCount, heightMm, threadLeftMm } = stack;
		const joints = jointsOf(stack, stackCurrents(study, stack));
		const figure = figureOf(input, stack, joints);
		const hottest = joints.reduce((most, { currentA }) => Math.max(most, currentA), 0);
		return {
			cells: {
				stud: study.studName(key),
				thread: terminal.thread === null ? '' : threadText(terminal.thread),
				usable: terminal.usableLengthMm,
				stack: check.stacks[key] ?? stack.sentence,
				count: terminalCount,
				height: heightMm,
				left: threadLeftMm,
				current: hottest,
				torque: terminal.thread === null ? '' : torqueText(terminal.thread),
				done: null
			},
			...(figure ? { figure } : {})
		};
	});
	const assumed = stacksInOrder(study).filter(({ hardwareAssumed }) => hardwareAssumed).length;
	return table({
		id: 'stud-schedule',
		title: 'Stud schedule',
		lead: 'From the seat up. Nothing that carries no current lies between two things that do.',
		columns: [
			textColumn('stud', 'Stud', 1.2),
			textColumn('thread', 'Thread', 0.6),
			numberColumn('usable', 'Usable', 'mm', { decimals: 1, weight: 0.6 }),
			textColumn('stack', 'Stack', 4),
			numberColumn('count', 'Terminals', '', { decimals: 0, weight: 0.7 }),
			numberColumn('height', 'Height', 'mm', { decimals: 1, weight: 0.6 }),
			numberColumn('left', 'Thread left', 'mm', { decimals: 1, weight: 0.7 }),
			numberColumn('current', 'Greatest joint', 'A', { weight: 0.7 }),
			textColumn('torque', 'Torque', 1.3),
			handColumn('done', 'Done, initials', 0.8)
		],
		rows,
		whenEmpty: 'Nothing sits on a stud yet.',
		notes: [
			`Torque: ${TORQUE_SOURCE}. Mark each nut once it is tight.`,
			...(assumed > 0 ? [`On ${assumed} of them washer, lock washer and nut are not drawn and were assumed.`] : []),
			'Sizes of lugs, plates and hardware: common practice; measure what you bought. Negative thread left: the stud is too short.'
		]
	});
}
