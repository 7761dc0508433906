/** The parts somebody made and keeps on this device. */
import { parseParts, partsFile, type OwnParams } from '#core/parts';
import { faultOf, type Cabinet } from '#keeping';
import { keepingTexts } from '../keeping-texts.ts';
import { randomId } from '../review/random-id.ts';

export interface ShelfPart {
	readonly id: string;
	readonly addedMs: number;
	readonly params: OwnParams;
}

const shelves = new WeakMap<Cabinet, OwnShelf>();

/** One shelf for all that shows it. */
export function ownShelf(cabinet: Cabinet): OwnShelf {
	const known = shelves.get(cabinet);
	if (known) return known;
	const shelf = new OwnShelf(cabinet);
	shelves.set(cabinet, shelf);
	return shelf;
}

/** Whether two parts are made alike. */
export const madeAlike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

export class OwnShelf {
	/** Null until it was read. */
	parts = $state.raw<readonly ShelfPart[] | null>(null);
	/** How many could not be read. */
	damaged = $state(0);
	/** Why it could not be read or written, in words. */
	fault = $state<string | null>(null);

	constructor(private readonly cabinet: Cabinet) {}

	async refresh(): Promise<void> {
		await this.#try(async () => {
			const records = await this.cabinet.shelf();
			const read = records.map(({ id, addedMs, text }) => ({ id, addedMs, result: parseParts(text) }));
			const parts = read.flatMap(({ id, addedMs, result }) => (result.ok ? [{ id, addedMs, params: result.parts[0]! }] : []));
			this.damaged = read.length - parts.length;
			this.parts = parts;
		});
	}

	/** Puts a part there, or in the place of the one with this id. False when that failed. */
	async keep(params: OwnParams, id: string = randomId()): Promise<boolean> {
		const known = this.parts?.find((part) => part.id === id);
		return this.#put([{ id, addedMs: known?.addedMs ?? Date.now(), params }]);
	}

	/** Puts those there that are not. Answers with how many that were, or null when it failed. */
	async bring(parts: readonly OwnParams[]): Promise<number | null> {
		const distinct = parts.filter((params, index) => parts.findIndex((other) => madeAlike(other, params)) === index);
		const fresh = distinct.filter((params) => !this.parts?.some((part) => madeAlike(part.params, params)));
		const now = Date.now();
		const made = fresh.map((params, index) => ({ id: randomId(), addedMs: now + index, params }));
		return (await this.#put(made)) ? made.length : null;
	}

	async takeOff(id: string): Promise<boolean> {
		return this.#try(async () => {
			await this.cabinet.takeFromShelf(id);
			await this.refresh();
		});
	}

	#put(parts: readonly ShelfPart[]): Promise<boolean> {
		return this.#try(async () => {
			await this.cabinet.putOnShelf(parts.map(({ id, addedMs, params }) => ({ id, addedMs, text: partsFile([params]) })));
			await this.refresh();
		});
	}

	async #try(work: () => Promise<void>): Promise<boolean> {
		try {
			await work();
			this.fault = null;
			return true;
		} catch (error) {
			this.fault = keepingTexts.fault(faultOf(error));
			return false;
		}
	}
}
