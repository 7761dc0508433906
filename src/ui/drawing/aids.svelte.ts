/** Grid and guides, remembered in this browser. */
import type { Aids } from '#canvas';

const KEY = 'wireworthy-aids';
const ON: Aids = { grid: true, guides: true };

export class AidsChoice {
	#now = $state.raw<Aids>(remembered());

	get now(): Aids {
		return this.#now;
	}

	/** @returns whether it is on now */
	toggle(aid: keyof Aids): boolean {
		this.#now = { ...this.#now, [aid]: !this.#now[aid] };
		try {
			localStorage.setItem(KEY, JSON.stringify(this.#now));
		} catch {
			// Storage may be forbidden; the choice then lasts as long as the page.
		}
		return this.#now[aid];
	}
}

function remembered(): Aids {
	try {
		const { grid, guides } = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Aids>;
		return { grid: grid !== false, guides: guides !== false };
	} catch {
		return ON;
	}
}
