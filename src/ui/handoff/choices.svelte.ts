/** How the packet was last wanted. */
import { SECTIONS, type SectionId } from '#core/reports';
import type { PaperId, Placing, PngScale } from '#handoff';

/** Countries that print on Letter. */
const LETTER = /^(en-(US|CA|PH)|es-(MX|US|CO|CL|VE|GT|SV|NI|CR|PA|DO|PR)|fr-CA)$/;

const ALL = SECTIONS.map(({ id }) => id);

export class Choices {
	paper = $state<PaperId>('a4');
	drawingPaper = $state<PaperId>('a3');
	/** Null: as the sheet shows them. */
	drawnAs = $state<'outlines' | 'symbols' | null>(null);
	placing = $state<Placing>('fitted');
	sections = $state.raw<readonly SectionId[]>(ALL);
	scale = $state<PngScale>(2);
	/** Id of a table; empty for all of them. */
	table = $state('');

	constructor(language = navigator.language) {
		if (!LETTER.test(language)) return;
		this.paper = 'letter';
		this.drawingPaper = 'tabloid';
	}

	toggle(id: SectionId, wanted: boolean): void {
		const others = this.sections.filter((other) => other !== id);
		this.sections = wanted ? [...others, id] : others;
	}

	choose(all: boolean): void {
		this.sections = all ? ALL : [];
	}
}

/** Kept while the window is open, in the part of the program that is loaded on demand. */
export const choices = new Choices();
