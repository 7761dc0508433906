/** The steps of each guided start: what is pointed at, and by what the drawing shows that it is done. The words are in texts.ts. */
import { itemKey, studKey, type Diagram, type ItemKey, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';
import { isOpen } from '#core/rules';
import type { Workbench } from '../context.ts';
import { fusedBuses } from '../full-bus/fused-buses.ts';
import type { StartId } from './guide.svelte.ts';

/** What there was when the step began. */
export interface Before {
	readonly parts: number;
	readonly conductors: number;
	readonly open: number;
}

export interface Step {
	/** Its words: texts.steps[start][id]. */
	readonly id: string;
	/** Controls to point at, the first that can be seen; or things on the drawing. */
	readonly at: readonly string[] | ((diagram: Diagram) => readonly ItemKey[]);
	/** Left out where only the reader can say. */
	readonly done?: (workbench: Workbench, before: Before) => boolean;
}

export const countsOf = ({ editor }: Workbench): Before => ({
	parts: Object.keys(editor.diagram.parts).length,
	conductors: Object.keys(editor.diagram.conductors).length,
	open: editor.check?.findings.filter(isOpen).length ?? 0
});

const ofKind = ({ parts }: Diagram, kind: string): readonly string[] => Object.keys(parts).filter((id) => parts[id]!.kind === kind);

/** Ends of all parts of a kind: "battery" and "pos". */
const ends = (diagram: Diagram, [kind, terminal]: readonly [string, string]): readonly TerminalRef[] =>
	ofKind(diagram, kind)
		.filter((part) => describe(diagram.parts[part]!).terminal(terminal) !== undefined)
		.map((part) => ({ part, terminal }));

type End = readonly [kind: string, terminal: string];

const isAt = (ref: TerminalRef, places: readonly TerminalRef[]): boolean =>
	places.some(({ part, terminal }) => part === ref.part && terminal === ref.terminal);

/** Whether a conductor joins any of some ends to any of others. */
function joined(diagram: Diagram, some: readonly End[], others: readonly End[]): boolean {
	const [a, b] = [some, others].map((kinds) => kinds.flatMap((kind) => ends(diagram, kind))) as [TerminalRef[], TerminalRef[]];
	return Object.values(diagram.conductors).some(({ from, to }) => (isAt(from, a) && isAt(to, b)) || (isAt(from, b) && isAt(to, a)));
}

/** Takes a part of this kind from the shelf. */
const place = (id: string, kind: string): Step => ({
	id,
	at: [`[data-kind="${kind}"]`, '[data-panel="shelf"]'],
	done: ({ editor }) => ofKind(editor.diagram, kind).length > 0
});

const connect = (id: string, some: readonly End[], others: readonly End[]): Step => ({
	id,
	at: (diagram) =>
		[some, others].flatMap((kinds) => kinds.flatMap((kind) => ends(diagram, kind).map((ref) => itemKey('stud', studKey(ref))))),
	done: ({ editor }) => joined(editor.diagram, some, others)
});

const FUSE_ENDS: readonly End[] = [
	['inline-fuse', 'in'],
	['inline-fuse', 'out']
];

export const STEPS: Readonly<Record<StartId, readonly Step[]>> = {
	circuit: [
		place('battery', 'battery'),
		place('fuse', 'inline-fuse'),
		place('light', 'load'),
		connect('feed', [['battery', 'pos']], FUSE_ENDS),
		connect('on', FUSE_ENDS, [['load', 'pos']]),
		connect('back', [['load', 'neg']], [['battery', 'neg']]),
		{
			id: 'lengths',
			at: ({ conductors }) =>
				Object.keys(conductors)
					.filter((id) => conductors[id]!.lengthM === null)
					.map((id) => itemKey('conductor', id)),
			done: ({ editor: { diagram } }) => Object.values(diagram.conductors).every(({ lengthM }) => lengthM !== null)
		},
		{ id: 'finding', at: ['[data-finding-head]', '[data-panel="findings"]'], done: ({ editor }) => editor.focusedFinding !== null }
	],
	bus: [
		{ id: 'open', at: [], done: ({ editor }) => fusedBuses(editor.diagram).length > 0 },
		{
			id: 'select',
			at: (diagram) => fusedBuses(diagram).map((id) => itemKey('part', id)),
			done: ({ editor, view }) =>
				view.dialog === 'full-bus' || fusedBuses(editor.diagram).some((id) => editor.selection.has(itemKey('part', id)))
		},
		{ id: 'ask', at: ['[data-guide="full-bus"]', '[data-panel="inspector"]'], done: ({ view }) => view.dialog === 'full-bus' },
		{ id: 'fill', at: [], done: ({ view }) => view.fullBus.complete },
		{ id: 'take', at: [], done: (workbench, before) => countsOf(workbench).conductors > before.conductors },
		{ id: 'undo', at: ['[data-group="history"] button'] }
	],
	handover: [
		{ id: 'read', at: ['[data-finding-head]', '[data-panel="findings"]'], done: ({ editor }) => editor.focusedFinding !== null },
		{
			id: 'mend',
			at: ['[data-guide="mend"]', '[data-finding-head]'],
			done: (workbench, before) => workbench.editor.checkIsCurrent && countsOf(workbench).open < before.open
		},
		{
			id: 'block',
			at: ['[data-guide="title-block"]', '[data-panel="inspector"]'],
			done: ({ editor: { diagram } }) => diagram.titleBlock.title.trim() !== '' && diagram.titleBlock.creator.trim() !== ''
		},
		{ id: 'packet', at: ['[data-guide="hand-over"]'], done: ({ view }) => view.dialog === 'handoff' },
		{ id: 'save', at: [], done: ({ view }) => view.dialog === null }
	]
};
