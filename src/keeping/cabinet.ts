/**
 * The cabinet of kept diagrams. Each call is one transaction: it happens whole or not at all, and rejects with what
 * the browser said. Who writes to a diagram must have claimed or created it; a later claim shuts the earlier one out.
 */
import { allOf, openDatabase, type Database } from './database.ts';
import { KeepingError } from './fault.ts';
import {
	stepRecord,
	type Card,
	type DiagramKey,
	type JournalRecord,
	type ShelfRecord,
	type SnapshotRecord,
	type Thumbnail,
	type VersionRecord
} from './records.ts';

export interface Kept {
	readonly card: Card;
	/** Newest first. */
	readonly snapshots: readonly SnapshotRecord[];
	readonly steps: readonly JournalRecord[];
}

export interface Written {
	readonly card: Card;
	readonly steps: readonly JournalRecord[];
}

/** Snapshots kept of each diagram: should the newest be damaged, the one before leads to the same history. */
const SNAPSHOTS = 2;

const LAST = 'last-diagram';

/** With "strict" the browser says done only when it is on the disk. */
const STRICT = { durability: 'strict' } as const;

const isTaken = (error: unknown): boolean => error instanceof DOMException && error.name === 'ConstraintError';

export class Cabinet {
	#database: Promise<Database> | null = null;

	constructor(private readonly name = 'wireworthy') {}

	/** Opened at first use, and again after it was closed. */
	#open(): Promise<Database> {
		if (!globalThis.indexedDB) return Promise.reject(new KeepingError('unavailable'));
		const opened = (this.#database ??= openDatabase(this.name, () => (this.#database = null)));
		opened.catch(() => (this.#database = null));
		return opened;
	}

	async close(): Promise<void> {
		const database = await this.#database;
		this.#database = null;
		database?.close();
	}

	async cards(): Promise<Card[]> {
		return (await this.#open()).getAll('cards');
	}

	async card(id: DiagramKey): Promise<Card | undefined> {
		return (await this.#open()).get('cards', id);
	}

	async read(id: DiagramKey): Promise<Kept> {
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal']);
		const [card, snapshots, steps] = await Promise.all([
			tx.objectStore('cards').get(id),
			tx.objectStore('snapshots').getAll(allOf(id)),
			tx.objectStore('journal').getAll(allOf(id)),
			tx.done
		]);
		if (!card) throw new KeepingError('gone');
		return { card, snapshots: snapshots.reverse(), steps };
	}

	/**
	 * Reads a diagram and marks in its journal that it is edited from here on: a step that another tab adds later finds its
	 * place taken, whatever that tab believes.
	 */
	async claim(id: DiagramKey, mark: string): Promise<Kept> {
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal'], 'readwrite');
		const [card, snapshots, steps] = await Promise.all([
			tx.objectStore('cards').get(id),
			tx.objectStore('snapshots').getAll(allOf(id)),
			tx.objectStore('journal').getAll(allOf(id))
		]);
		if (!card) throw new KeepingError('gone');
		const last = Math.max(0, ...[...snapshots.slice(-1), ...steps.slice(-1)].map(({ seq }) => seq));
		const turn = stepRecord(id, last + 1, { kind: 'turn', mark });
		await Promise.all([tx.objectStore('journal').add(turn), tx.done]);
		return { card, snapshots: snapshots.reverse(), steps: [...steps, turn] };
	}

	/** A diagram that was not in the cabinet. With `last`, it is the one to open next time. */
	async create({ card, snapshot, steps }: Written & { readonly snapshot: SnapshotRecord }, { last = false } = {}): Promise<void> {
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal', 'settings'], 'readwrite', STRICT);
		const work = [
			tx.objectStore('snapshots').put(snapshot),
			...steps.map((step) => tx.objectStore('journal').put(step)),
			tx.objectStore('cards').put(card),
			...(last ? [tx.objectStore('settings').put(card.id, LAST)] : [])
		];
		tx.commit();
		await Promise.all([...work, tx.done]);
	}

	/**
	 * The next steps of a diagram. They are handed to the browser whole, at once: should the page die now, they are kept.
	 * Rejects with "elsewhere" when another tab has taken their place, with "gone" when there is nothing they could follow.
	 */
	async append({ card, steps }: Written): Promise<void> {
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal'], 'readwrite', STRICT);
		const base = tx
			.objectStore('snapshots')
			.getKey(allOf(card.id))
			.catch(() => 'unknown');
		const work = [...steps.map((step) => tx.objectStore('journal').add(step)), tx.objectStore('cards').put(card)];
		tx.commit();
		await Promise.all([...work, tx.done]).catch((error: unknown) => {
			throw isTaken(error) ? new KeepingError('elsewhere') : (tx.error ?? error);
		});
		if ((await base) === undefined) throw new KeepingError('gone');
	}

	/**
	 * Begins the journal anew from this snapshot, whatever steps could not be written or read; those that are no longer
	 * needed are thrown away. Rejects with "elsewhere" when another tab has added steps.
	 *
	 * @param written the last step known to be in the cabinet
	 * @param ours steps after that one, which may have been written
	 */
	async renew({ card, snapshot, steps: ours }: Written & { readonly snapshot: SnapshotRecord }, written: number): Promise<void> {
		const { id } = card;
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal', 'settings'], 'readwrite', STRICT);
		const [snapshots, journal] = [tx.objectStore('snapshots'), tx.objectStore('journal')];
		const there = await journal.getAll(allOf(id, written + 1));
		const isOurs = ({ seq, text }: JournalRecord) => ours.some((step) => step.seq === seq && step.text === text);
		if (!there.every(isOurs)) throw new KeepingError('elsewhere');
		const older = (await snapshots.getAllKeys(allOf(id))).filter(([, seq]) => seq !== snapshot.seq).reverse();
		const needed = older.at(SNAPSHOTS - 2);
		await Promise.all([
			tx.objectStore('cards').put(card),
			tx.objectStore('settings').put(id, LAST),
			snapshots.put(snapshot),
			...older.slice(SNAPSHOTS - 1).map((key) => snapshots.delete(key)),
			...(needed ? [journal.delete(IDBKeyRange.bound([id, 0], needed))] : []),
			tx.done
		]);
	}

	/** Steps after `seq`, in order. */
	async stepsAfter(id: DiagramKey, seq: number): Promise<JournalRecord[]> {
		return (await this.#open()).getAll('journal', allOf(id, seq + 1));
	}

	/** Changes the card alone. Nothing happens when the diagram is gone. */
	async changeCard(id: DiagramKey, change: Partial<Card>): Promise<void> {
		const tx = (await this.#open()).transaction('cards', 'readwrite');
		const card = await tx.store.get(id);
		await Promise.all([card && tx.store.put({ ...card, ...change }), tx.done]);
	}

	/** Takes a diagram out for good, with all that belongs to it. */
	async purge(id: DiagramKey): Promise<void> {
		const tx = (await this.#open()).transaction(['cards', 'snapshots', 'journal', 'versions', 'thumbnails'], 'readwrite');
		await Promise.all([
			...(['cards', 'thumbnails'] as const).map((table) => tx.objectStore(table).delete(id)),
			...(['snapshots', 'journal', 'versions'] as const).map((table) => tx.objectStore(table).delete(allOf(id))),
			tx.done
		]);
	}

	/** Oldest first. */
	async versions(id: DiagramKey): Promise<VersionRecord[]> {
		return (await this.#open()).getAll('versions', allOf(id));
	}

	async putVersion(version: VersionRecord, drop: readonly VersionRecord[] = []): Promise<void> {
		const tx = (await this.#open()).transaction('versions', 'readwrite');
		await Promise.all([tx.store.put(version), ...drop.map(({ id, atMs }) => tx.store.delete([id, atMs])), tx.done]);
	}

	async thumbnails(): Promise<Thumbnail[]> {
		return (await this.#open()).getAll('thumbnails');
	}

	async putThumbnail(thumbnail: Thumbnail): Promise<void> {
		await (await this.#open()).put('thumbnails', thumbnail);
	}

	/** Parts somebody made, oldest first. */
	async shelf(): Promise<ShelfRecord[]> {
		const records = await (await this.#open()).getAll('shelf');
		return records.toSorted((a, b) => a.addedMs - b.addedMs);
	}

	/** All of them or none. */
	async putOnShelf(records: readonly ShelfRecord[]): Promise<void> {
		const tx = (await this.#open()).transaction('shelf', 'readwrite', STRICT);
		await Promise.all([...records.map((record) => tx.store.put(record)), tx.done]);
	}

	async takeFromShelf(id: string): Promise<void> {
		await (await this.#open()).delete('shelf', id);
	}

	/** The diagram that was open last, in any tab. */
	async last(): Promise<DiagramKey | undefined> {
		return (await this.#open()).get('settings', LAST);
	}

	async putLast(id: DiagramKey): Promise<void> {
		await (await this.#open()).put('settings', id, LAST);
	}
}
