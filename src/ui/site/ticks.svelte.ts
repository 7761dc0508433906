/** Which steps of an assembly are done: kept in this browser by diagram, never in the diagram itself. */
const PREFIX = 'wireworthy-assembly:';

/** Ticks are as long as the page where storage is forbidden. */
const store = {
	read(key: string): readonly string[] | null {
		try {
			const value: unknown = JSON.parse(localStorage.getItem(PREFIX + key) ?? 'null');
			return Array.isArray(value) ? value.filter((id) => typeof id === 'string') : null;
		} catch {
			return null;
		}
	},
	write(key: string, ids: readonly string[]): void {
		try {
			if (ids.length === 0) localStorage.removeItem(PREFIX + key);
			else localStorage.setItem(PREFIX + key, JSON.stringify(ids));
		} catch {
			// See above.
		}
	}
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
		this.#ids = store.read(this.#key) ?? (id === null ? null : store.read(byTitle)) ?? [];
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
		store.write(this.#key, ids);
	}
}
