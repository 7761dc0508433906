/** A diagram that is looked at without being kept: it came with a link. Only remarks may be added to it. */
import type { Diagram } from '#core/diagram';

/** Commands that a visitor may run. */
export const VISITOR_MAY: readonly string[] = ['add-remark', 'remove-remark'];

export class Visit {
	/** Remarks that came with the diagram; the others are the visitor's own. */
	readonly #given: readonly string[];
	/** True while there are remarks of the visitor's own that are in no file. */
	unsaved = $state(false);

	constructor({ remarks }: Pick<Diagram, 'remarks'>) {
		this.#given = Object.keys(remarks);
	}

	isOwn(remark: string): boolean {
		return !this.#given.includes(remark);
	}
}
