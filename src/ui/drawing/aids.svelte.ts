/** Grid and guides, remembered in this browser. */
import type { Aids } from '#canvas';
import { remember, rememberedJson } from '../remember.ts';

const KEY = 'wireworthy-aids';

export class AidsChoice {
	#now = $state.raw<Aids>(kept());

	get now(): Aids {
		return this.#now;
	}

	/** @returns whether it is on now */
	toggle(aid: keyof Aids): boolean {
		this.#now = { ...this.#now, [aid]: !this.#now[aid] };
		remember(KEY, JSON.stringify(this.#now));
		return this.#now[aid];
	}
}

/** On where nothing else was chosen. */
function kept(): Aids {
	const { grid, guides } = (rememberedJson(KEY) ?? {}) as Partial<Aids>;
	return { grid: grid !== false, guides: guides !== false };
}
