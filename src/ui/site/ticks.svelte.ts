/** Which steps of an assembly are done: kept in this browser by diagram, never in the diagram itself. */
import { remember, rememberedJson } from '../remember.ts';

const PREFIX = 'wireworthy-assembly:';

const ticked = (key: string): readonly string[] | null => {
	const value = rememberedJson(PREFIX + key);
	return Array.isArray(value) ? value.filter((id) => typeof id === 'string') : null;
};

/** What a diagram's ticks go by: its id once it is kept, and its title before its first change. */
export interface TickedDiagram {
	readonly id: string | null;
	readonly title: string;
}

export class Ticks {
	#ids = $state.raw<readonly string[]>([]);
	readonly #key: string;

	constructor({ id, title }: TickedDiagram) {
		const byTitle = `title ${title}`;
		this.#key = id ?? byTitle;
		this.#ids = ticked(this.#key) ?? (id === null ? null : ticked(byTitle)) ?? [];
	}

	has(step: string): boolean {
		return this.#ids.includes(step);
	}

	set(step: string, done: boolean): void {
		const others = this.#ids.filter((id) => id !== step);
		this.#become(done ? [...others, step] : others);
	}

	clear(): void {
		this.#become([]);
	}

	#become(ids: readonly string[]): void {
		this.#ids = ids;
		remember(PREFIX + this.#key, ids.length === 0 ? null : JSON.stringify(ids));
	}
}
