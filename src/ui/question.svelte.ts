/** A question to the worker as a component asks it: put again whenever what it is about changes. */
import type { Asker, QuestionKind, Questions } from '#editor';
import type { Diagram } from '#core/diagram';

interface Put<Kind extends QuestionKind> {
	readonly diagram: Diagram;
	readonly ask: Questions[Kind]['ask'];
}

export class Question<Kind extends QuestionKind> {
	/** The latest answer, possibly to an earlier question; null before the first. */
	answer = $state.raw<{ readonly of: Diagram; readonly is: Questions[Kind]['answer'] } | null>(null);
	fault = $state<string | null>(null);
	waiting = $state(false);
	/** How far a long answer is; null before anything is known. */
	progress = $state.raw<{ readonly done: number; readonly of: number } | null>(null);

	/** @param put read in an effect; null asks nothing */
	constructor(asker: Asker, kind: Kind, put: () => Put<Kind> | null) {
		$effect(() => {
			const question = put();
			this.waiting = question !== null;
			this.progress = null;
			if (!question) {
				this.answer = null;
				return;
			}
			const { diagram, ask } = question;
			return asker.ask(diagram, kind, ask, {
				progress: (done, of) => (this.progress = { done, of }),
				told: (is) => {
					this.answer = { of: diagram, is };
					this.fault = null;
					this.waiting = false;
				},
				failed: (reason) => {
					this.fault = reason;
					this.waiting = false;
				}
			});
		});
	}
}
