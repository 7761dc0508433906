/** How the packet was last wanted. */
import { SECTIONS, type SectionId } from '#core/reports';
import type { PaperId, Placing, PngScale } from '#handoff';

/** Countries that print on Letter. */
const LETTER = /^(en-(US|CA|PH)|es-(MX|US|CO|CL|VE|GT|SV|NI|CR|PA|DO|PR)|fr-CA)$/;

export class Choices {
	paper = $state<PaperId>('a4');
	drawingPaper = $state<PaperId>('a3');
	placing = $state<Placing>('fitted');
	sections = $state.raw<ReadonlySet<SectionId>>(new Set(SECTIONS.map(({ id }) => id)));
	scale = $state<PngScale>(2);
	/** Id of a table; empty for all of them. */
	table = $state('');

	constructor(language = navigator.language) {
		if (!LETTER.test(language)) return;
		this.paper = 'letter';
		this.drawingPaper = 'tabloid';
	}

	toggle(id: SectionId, wanted: boolean): void {
		const next = new Set(this.sections);
		if (wanted) next.add(id);
		else next.delete(id);
		this.sections = next;
	}

	choose(all: boolean): void {
		this.sections = new Set(all ? SECTIONS.map(({ id }) => id) : []);
	}
}

/** Kept while the window is open, in the part of the program that is loaded on demand. */
export const choices = new Choices();
