/** Keys of the window. Each does what a button does as well. */
import type { AlignTo } from '#core/geometry';
import {
	align,
	deleteSelection,
	duplicate,
	GRID_MM,
	group,
	nudge,
	repeatLast,
	reroute,
	SELECT,
	selectAll,
	toggleLock,
	turn,
	ungroup
} from '#editor';
import type { Workbench } from './context.ts';
import { openFullBus } from './full-bus/fused-buses.ts';
import { fullBusTexts, sizingTexts } from './full-bus-texts.ts';
import { handoffTexts } from './handoff-texts.ts';
import { onSiteTexts, shortTexts } from './on-site-texts.ts';
import { openShort } from './site/open-short.ts';
import { drawingKeyTexts } from './drawing/key-texts.ts';
import { toggleSymbols } from './symbol-view.ts';
import { texts } from './texts.ts';
import { dropDraft, hasDraft, isTyping } from './typing.ts';
import { viewsTexts } from './views-texts.ts';

/** As shown in the help. */
export const shortcutList = (): readonly { readonly keys: readonly string[]; readonly text: string }[] => [
	{ keys: ['Ctrl Z'], text: texts.edit.undo },
	{ keys: ['Ctrl Shift Z', 'Ctrl Y'], text: texts.edit.redo },
	{ keys: ['Ctrl S'], text: texts.file.save },
	{ keys: ['Ctrl O'], text: texts.file.open },
	{ keys: ['Ctrl P'], text: handoffTexts.open },
	{ keys: ['Ctrl C', 'Ctrl X', 'Ctrl V'], text: `${texts.edit.copy}, ${texts.edit.cut}, ${texts.edit.paste}` },
	{ keys: ['Ctrl D'], text: texts.edit.duplicate },
	{ keys: ['Ctrl A'], text: texts.edit.selectAll },
	{ keys: ['Delete', 'Backspace'], text: texts.edit.delete },
	{ keys: ['R', 'Shift R'], text: texts.help.turn },
	{ keys: ['←', '→', '↑', '↓'], text: texts.help.nudge(GRID_MM, 10 * GRID_MM) },
	{ keys: ['Alt ←', 'Alt →', 'Alt ↑', 'Alt ↓'], text: texts.help.nudgeFromOutline },
	{ keys: ['Ctrl Shift ←', '→', '↑', '↓'], text: drawingKeyTexts.alignKey },
	{ keys: ['Ctrl G', 'Ctrl Shift G'], text: drawingKeyTexts.groupKey },
	{ keys: ['Ctrl L'], text: drawingKeyTexts.lockKey },
	{ keys: ['.'], text: drawingKeyTexts.repeatKey },
	{ keys: ['N'], text: drawingKeyTexts.noteKey },
	{ keys: ['A'], text: drawingKeyTexts.areaKey },
	{ keys: ['T'], text: drawingKeyTexts.rerouteKey },
	{ keys: ['D'], text: drawingKeyTexts.openKey },
	{ keys: ['G', 'Shift G'], text: drawingKeyTexts.gridKey },
	{ keys: ['V', 'C', 'H'], text: `${texts.tools.select}, ${texts.tools.connect}, ${texts.tools.pan}` },
	{ keys: ['F'], text: texts.view.fit },
	{ keys: ['L'], text: fullBusTexts.key },
	{ keys: ['S'], text: sizingTexts.key },
	{ keys: ['X'], text: shortTexts.key },
	{ keys: ['O'], text: onSiteTexts.key },
	{ keys: ['/', 'Ctrl F'], text: viewsTexts.findHint },
	{ keys: ['I'], text: viewsTexts.symbolsHint },
	{ keys: ['+', '−'], text: `${texts.view.zoomIn}, ${texts.view.zoomOut}` },
	{ keys: ['Esc'], text: texts.help.escape },
	{ keys: ['?'], text: texts.help.title }
];

const ARROWS: Readonly<Record<string, { x: number; y: number }>> = {
	ArrowLeft: { x: -1, y: 0 },
	ArrowRight: { x: 1, y: 0 },
	ArrowUp: { x: 0, y: -1 },
	ArrowDown: { x: 0, y: 1 }
};

/** With Ctrl and Shift. */
const SIDES: Readonly<Record<string, AlignTo>> = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'top', ArrowDown: 'bottom' };

/** Roles whose arrow keys walk inside them. */
const ARROW_WALKERS = '[role=tree], [role=tablist], [role=menu], summary, .body';

/** Meant even while a field has the focus: to save, to open, and steps of the diagram once the field has none of its own. */
const STEPS = ['z', 'y'];
const WHILE_TYPING = ['s', 'o', 'p', ...STEPS];

const EDITING: readonly string[] = ['cases', 'energy', 'readings'];

/** Where the keys that delete mean the selection: on the sheet and in its list, not on some button that has the focus. */
const DELETES = ['delete', 'backspace'];
const DELETES_IN = '[data-sheet], [role=tree]';

export function shortcutHandler(workbench: Workbench): (event: KeyboardEvent) => void {
	const { editor, view, files } = workbench;

	const withCtrl: Readonly<Record<string, (event: KeyboardEvent) => void>> = {
		z: (event) => (event.shiftKey ? editor.redo() : editor.undo()),
		y: () => editor.redo(),
		s: () => void files.save(),
		o: () => void files.open(),
		p: () => (view.dialog = 'handoff'),
		d: () => duplicate(editor),
		f: () => (view.dialog = 'find'),
		a: () => selectAll(editor),
		g: (event) => (event.shiftKey ? ungroup(editor) : group(editor)),
		l: () => toggleLock(editor)
	};

	const plain: Readonly<Record<string, (event: KeyboardEvent) => void>> = {
		delete: () => deleteSelection(editor),
		backspace: () => deleteSelection(editor),
		r: (event) => turn(editor, event.shiftKey ? -1 : 1),
		v: () => editor.setTool(SELECT),
		c: () => editor.setTool({ kind: 'connect', from: null }),
		h: () => editor.setTool({ kind: 'pan' }),
		a: () => editor.setTool({ kind: 'area', like: { label: '', spaces: [], ambientC: null } }),
		n: () => editor.setTool({ kind: 'note' }),
		t: () => reroute(editor),
		d: () => (view.dialog = 'drawing'),
		'.': () => repeatLast(editor),
		g: (event) => toggleAid(event.shiftKey ? 'guides' : 'grid'),
		f: () => view.canvas?.fit(),
		l: () => openFullBus(workbench),
		s: () => (view.dialog = 'sizing'),
		x: () => openShort(workbench),
		o: () => (view.dialog = 'assembly'),
		'/': () => (view.dialog = 'find'),
		i: () => void toggleSymbols(workbench),
		'+': () => view.canvas?.zoomBy(1.25),
		'-': () => view.canvas?.zoomBy(1 / 1.25),
		'?': () => (view.dialog = 'help'),
		escape
	};

	function toggleAid(aid: 'grid' | 'guides'): void {
		editor.announce(drawingKeyTexts[aid](view.aids.toggle(aid)));
	}

	/** Back to the sheet; what was typed and not stored is dropped. */
	function leaveField(event: KeyboardEvent): void {
		dropDraft(event.target);
		view.canvas?.focus();
		event.preventDefault();
	}

	function escape(): void {
		view.canvas?.cancelGesture();
		if (editor.tool.kind !== 'select') editor.setTool(SELECT);
		else editor.select([]);
	}

	return (event) => {
		if (event.defaultPrevented || view.question) return;
		const isStep = (event.ctrlKey || event.metaKey) && STEPS.includes(event.key.toLowerCase());
		// In the table of cases the diagram is edited too: there steps can be taken back.
		if (view.dialog && !(isStep && EDITING.includes(view.dialog))) return;
		const target = event.target as Element | null;
		const key = event.key.toLowerCase();
		const ctrl = event.ctrlKey || event.metaKey;
		const arrow = ctrl ? undefined : ARROWS[event.key];
		// A dialog over the sheet has the keys to itself, but for those that undo and do again.
		if (target?.closest?.('dialog') && !(ctrl && STEPS.includes(key))) return;
		// The tree walks by arrows; with Alt they move the part.
		const movesFromTree = event.altKey && arrow !== undefined && target?.closest?.('[role=tree]');
		if (event.altKey && !movesFromTree) return;
		if (isTyping(target)) {
			if (!ctrl && key === 'escape') return leaveField(event);
			if (!ctrl || !WHILE_TYPING.includes(key)) return;
			if (STEPS.includes(key) && hasDraft(target)) return;
		}
		if (DELETES.includes(key) && !ctrl && target !== document.body && !target?.closest?.(DELETES_IN)) return;
		const side = ctrl && event.shiftKey ? SIDES[event.key] : undefined;
		const run = side ? () => align(editor, side) : ctrl ? withCtrl[key] : plain[key];
		if (arrow) {
			const walks = !movesFromTree && target?.closest?.(ARROW_WALKERS);
			if (walks || editor.selection.size === 0) return;
			nudge(editor, arrow, event.shiftKey ? 10 * GRID_MM : GRID_MM);
		} else if (run) run(event);
		else return;
		event.preventDefault();
	};
}
