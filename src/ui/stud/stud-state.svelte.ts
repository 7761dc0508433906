/** What a view of one stud shows: the stud as it is or as a hand is about to leave it, and what the worker says of it. */
import { change, reorderStack, type CaseId, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import { insulationColour } from '#core/drawing';
import { drawElevation, layersConcerned, type Elevation, type ElevationRoom, type LayerMark } from '#core/elevation';
import type { Paint } from '#core/graphics';
import type { Difference } from '#core/remedies';
import type { Finding } from '#core/rules';
import { jointsIn, jointsOf, orderFaults, stackOf, type Joint, type OrderFault, type Stack } from '#core/studs';
import type { Asker, Editor } from '#editor';
import { Question } from '../question.svelte.ts';
import { drawnLayers, sameOrder } from './order.ts';

export interface NumberedFinding {
	readonly number: number;
	readonly finding: Finding;
	readonly layers: readonly number[];
}

const PAINT: Readonly<Record<Finding['severity'], LayerMark['paint']>> = {
	fatal: 'error',
	error: 'error',
	warning: 'warning',
	note: 'note'
};

export class StudState {
	readonly #editor: Editor;
	readonly #stud: () => StudKey;
	/** Order a hand is about to leave it in; null while none does. */
	preview = $state.raw<readonly StackItem[] | null>(null);
	/** Case whose currents are shown; null: each joint in its hottest. */
	caseId = $state<CaseId | null>(null);
	readonly question: Question<'stud'>;

	constructor(editor: Editor, asker: Asker, stud: () => StudKey) {
		this.#editor = editor;
		this.#stud = stud;
		this.question = new Question(asker, 'stud', () => ({ diagram: editor.diagram, ask: { stud: stud(), order: this.preview } }));
	}

	get stud(): StudKey {
		return this.#stud();
	}

	/** With the order tried. */
	readonly diagram: Diagram = $derived.by(() => {
		const { diagram } = this.#editor;
		if (this.preview === null) return diagram;
		const command = reorderStack({ stud: this.#stud(), stack: [...this.preview] });
		return command.refuse(diagram) === null ? change(diagram, command).diagram : diagram;
	});

	readonly stack: Stack | undefined = $derived.by(() => stackOf(this.diagram, this.#stud()));

	/** From the seat up, without what is only assumed. */
	readonly order: readonly StackItem[] = $derived.by(() =>
		this.stack ? drawnLayers(this.diagram, this.stack).map(({ item }) => item) : []
	);

	readonly faults: readonly OrderFault[] = $derived.by(() => orderFaults(this.diagram, this.#stud(), this.order));

	/** The worker's answer where it is about what is shown. */
	readonly #trial = $derived.by(() => {
		const answer = this.question.answer;
		if (!answer || answer.of !== this.#editor.diagram || !answer.is.trial) return null;
		const asked = answer.is.order;
		const isShown = this.preview === null ? asked === null : asked !== null && sameOrder(asked, this.preview);
		return isShown ? answer.is.trial : null;
	});

	readonly joints: readonly Joint[] = $derived.by(() => {
		const { stack } = this;
		if (!stack || !this.#trial || this.#trial.currents.byCase.length === 0) return [];
		const known = this.#trial.currents.byCase.some(({ caseId }) => caseId === this.caseId);
		return known ? jointsIn(stack, this.#trial.currents, this.caseId!) : jointsOf(stack, this.#trial.currents);
	});

	/** Cases with currents through this stud. */
	readonly cases: readonly CaseId[] = $derived.by(() => this.#trial?.currents.byCase.map(({ caseId }) => caseId) ?? []);

	readonly findings: readonly NumberedFinding[] = $derived.by(() => {
		const { stack } = this;
		if (!stack || !this.#trial) return [];
		return this.#trial.findings.map((finding, index) => ({ number: index + 1, finding, layers: layersConcerned(stack, finding) }));
	});

	/** What the previewed order brings and clears; null where none is previewed or it is not known yet. */
	readonly difference: Difference | null = $derived.by(() => (this.preview === null ? null : (this.#trial?.difference ?? null)));

	elevation(room: ElevationRoom): Elevation | null {
		const { stack, diagram } = this;
		if (!stack || stack.terminal.thread === null) return null;
		const marks = this.findings.flatMap(({ number, finding, layers }) =>
			layers.map((layer) => ({ layer, number, paint: PAINT[finding.severity] }))
		);
		return drawElevation({ diagram, stack, joints: this.joints, marks, insulation: insulationOf(this.#editor, diagram) }, room);
	}
}

/** Colour of each conductor's insulation, by the pole that the latest check found. */
export const insulationOf =
	({ check }: Pick<Editor, 'check'>, diagram: Diagram) =>
	(id: string): Paint => {
		const pole = check?.conductors[id]?.pole ?? 'floating';
		return `conductor:${insulationColour(diagram.conductors[id]!, pole, diagram)}`;
	};
