/** What is open on the screen, and the way to the canvas. Nothing here is part of the diagram. */
import { tick } from 'svelte';
import { MediaQuery } from 'svelte/reactivity';
import type { Canvas } from '#canvas';
import type { CaseId, ItemKey, PartId } from '#core/diagram';
import type { PartSymbols } from '#core/drawing';
import type { LensId } from '#core/explain';
import type { CompareAsk, Comparison } from '#editor';
import type { Point } from '#core/geometry';
import { Coverage } from './coverage.ts';
import { FullBusForm } from './full-bus/form.svelte.ts';
import { AidsChoice } from './drawing/aids.svelte.ts';
import { Guide } from './guide/guide.svelte.ts';
import { Theme } from './theme.svelte.ts';

export type LowerPanel = 'findings' | 'remarks' | 'changes';
export type PanelName = 'shelf' | 'outline' | 'inspector' | LowerPanel;
export type DialogName =
	| 'help'
	| 'about'
	| 'language'
	| 'starts'
	| 'cautions'
	| 'examples'
	| 'full-bus'
	| 'positions'
	| 'sizing'
	| 'diagrams'
	| 'cases'
	| 'energy'
	| 'handoff'
	| 'part-maker'
	| 'find'
	| 'drawing'
	| 'arrange'
	| 'scale'
	| 'revisions'
	| 'short'
	| 'assembly'
	| 'readings';

export interface Question {
	readonly title: string;
	readonly text: string;
	readonly yes: string;
	/** Left out when there is nothing to choose. */
	readonly no?: string;
	/** A third way, answered with "also". */
	readonly also?: string;
}

export interface Making {
	readonly params: object | null;
	readonly shelfId: string | null;
	readonly part: PartId | null;
}

export type Answer = boolean | 'also';

/** Below this width panels are sheets that rise from the bottom edge. */
const NARROW = '(max-width: 1023px)';
/** A small screen that lies on its side, or a large one much enlarged: there sheets stand at the right. */
const SIDEWAYS = '(min-width: 600px) and (max-width: 1023px) and (max-height: 560px)';

export class View {
	readonly theme = new Theme();
	readonly guide = new Guide();
	readonly aids = new AidsChoice();
	readonly coverage = new Coverage();
	readonly #narrow = new MediaQuery(NARROW);
	readonly #sideways = new MediaQuery(SIDEWAYS);
	/** Null until the canvas is mounted. */
	canvas = $state.raw<Canvas | null>(null);
	left = $state<'shelf' | 'outline'>('shelf');
	/** What shares the place below the details. */
	lower = $state<LowerPanel>('findings');
	/** Which states of the diagram are compared; null when none are. */
	comparing = $state.raw<CompareAsk | null>(null);
	/** How they differ; null until it is known. */
	comparison = $state.raw<Comparison | null>(null);
	compareFault = $state<string | null>(null);
	/** The issued revision that is on the sheet; null while it is what is edited. */
	looking = $state<string | null>(null);
	dock = $state<'right' | 'bottom'>('right');
	/** Set by hand; null until then. */
	#split = $state<number | null>(null);
	/** The panel that was just asked for, which takes the focus and shows that it has. */
	pointed = $state<PanelName | null>(null);
	/** The one sheet that is up on a small screen; null shows the whole canvas. */
	sheet = $state<PanelName | null>('findings');
	dialog = $state<DialogName | null>(null);
	/** What was last asked of the full bus. */
	readonly fullBus = new FullBusForm();
	/** What the part maker opens with: a part of the shelf or of the sheet; all null for a new one. */
	making = $state.raw<Making>({ params: null, shelfId: null, part: null });
	/** Where a short was dropped last. */
	shortAt = $state.raw<ItemKey | null>(null);
	/** Case whose readings were looked at last, and how far the meter wanders. */
	readonly readings = $state<{ caseId: CaseId | null; noiseMv: number }>({ caseId: null, noiseMv: 5 });
	/** Two points that were marked on a picture, in drawing coordinates. */
	marked = $state.raw<{ readonly underlay: string; readonly from: Point; readonly to: Point } | null>(null);
	menu = $state.raw<{ readonly at: Point; readonly key: ItemKey | null } | null>(null);
	zoom = $state(1);
	/** What the drawing is coloured by, until it is switched off. */
	lens = $state<LensId | null>(null);
	/** Those that wait until the one before is answered. */
	readonly #questions: (() => void)[] = [];
	/** How parts are drawn as symbols; null while they are outlines to scale. */
	symbols = $state.raw<PartSymbols | null>(null);
	question = $state.raw<(Question & { answer(answer: Answer): void }) | null>(null);

	get narrow(): boolean {
		return this.#narrow.current;
	}

	/** Share of the right side that details take above the findings: more when there is something to see in them. */
	split(selected: boolean): number {
		return this.#split ?? (selected ? 0.62 : 0.4);
	}

	setSplit(share: number): void {
		this.#split = share;
	}

	/** Opens a panel and leads the eye and the keyboard to it. */
	point(panel: PanelName): void {
		this.open(panel);
		this.pointed = panel;
	}

	/** Where a sheet of a small screen lies. */
	get sheetEdge(): 'bottom' | 'right' {
		return this.#sideways.current ? 'right' : 'bottom';
	}

	shows(panel: PanelName): boolean {
		if (this.narrow) return this.sheet === panel;
		if (panel === 'shelf' || panel === 'outline') return this.left === panel;
		return panel === 'inspector' || this.lower === panel;
	}

	open(panel: PanelName): void {
		if (panel === 'shelf' || panel === 'outline') this.left = panel;
		else if (panel !== 'inspector') this.lower = panel;
		this.sheet = panel;
	}

	/** Asks something in a dialog; false when it is closed without an answer. One question at a time, in their order. */
	ask(question: Question): Promise<Answer> {
		return new Promise((resolve) => {
			let isAnswered = false;
			const put = () => {
				this.question = {
					...question,
					answer: (answer) => {
						if (isAnswered) return;
						isAnswered = true;
						this.question = null;
						resolve(answer);
						// The next comes in a window of its own, when this one's is gone.
						void tick().then(() => !this.question && this.#questions.shift()?.());
					}
				};
			};
			if (this.question) this.#questions.push(put);
			else put();
		});
	}

	/** Shows the whole diagram once the canvas has been given it. */
	fitSoon(): void {
		void tick().then(() => this.canvas?.fit('at once'));
	}

	toggleSheet(panel: PanelName): void {
		if (this.sheet === panel) this.sheet = null;
		else this.open(panel);
	}
}
