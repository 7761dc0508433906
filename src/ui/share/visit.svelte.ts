/** A diagram that is looked at without being kept: it came with a link. Only remarks may be added to it. */
import type { Diagram } from '#core/diagram';
import { keepRemarks } from './visit-remarks.ts';

/** Commands that a visitor may run. */
export const VISITOR_MAY: readonly string[] = ['add-remark', 'remove-remark'];

export class Visit {
	/** Remarks that came with the diagram; the others are the visitor's own. */
	readonly #given: readonly string[];
	/** True while there are remarks of the visitor's own that are in no file. */
	unsaved = $state(false);
	/** False when the browser does not keep them: then they are gone with the page. */
	kept = $state(true);

	/** @param key where its remarks are kept */
	constructor(
		{ remarks }: Pick<Diagram, 'remarks'>,
		private readonly key: string,
		unsaved = false
	) {
		this.#given = Object.keys(remarks);
		this.unsaved = unsaved;
	}

	/** True when leaving loses something. */
	get atRisk(): boolean {
		return this.unsaved && !this.kept;
	}

	isOwn(remark: string): boolean {
		return !this.#given.includes(remark);
	}

	/** The visitor changed a remark. */
	changed(diagram: Diagram): void {
		this.#keep(diagram, false);
	}

	/** The visitor saved them in a file. */
	saved(diagram: Diagram): void {
		this.#keep(diagram, true);
	}

	#keep(diagram: Diagram, inFile: boolean): void {
		const remarks = Object.fromEntries(Object.entries(diagram.remarks).filter(([id]) => this.isOwn(id)));
		this.kept = keepRemarks(this.key, diagram, { remarks, inFile });
		this.unsaved = !inFile && Object.keys(remarks).length > 0;
	}
}
