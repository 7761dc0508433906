/**
 * The cabinet of kept diagrams. Each call is one transaction: it happens whole or not at all, and rejects with what
 * the browser said. Who writes to a diagram must have claimed it; a later claim shuts the earlier one out.
 */
import { allOf, openDatabase, type Database } from './database.ts';
import { KeepingError } from './fault.ts';
import type { Card, DiagramKey, JournalRecord, SnapshotRecord, Thumbnail, VersionRecord } from './records.ts';

export interface Kept {
	readonly card: Card;
	/** Newest first. */
	readonly snapshots: readonly SnapshotRecord[];
	readonly steps: readonly JournalRecord[];
}

export interface Written {
	readonly card: Card;
	readonly steps: readonly JournalRecord[];
	readonly snapshot: SnapshotRecord | null;
}

/** Snapshots kept of each diagram: should the newest be damaged, the one before leads to the same history. */
const SNAPSHOTS = 2;

const LAST = 'last-diagram';

/** With "strict" the browser says done only when it is on the disk. */
const STRICT = { durability: 'strict' } as const;

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

	/** From now on only `mark` may write to this diagram. */
	async claim(id: DiagramKey, mark: string): Promise<void> {
		await (await this.#open()).put('owners', mark, id);
	}

	/** A diagram that was not in the cabinet, claimed in the same breath. With `last`, it is the one to open next time. */
	async create(
		mark: string,
		{ card, snapshot, steps }: Written & { readonly snapshot: SnapshotRecord },
		{ last = false } = {}
	): Promise<void> {
		const tx = (await this.#open()).transaction(['owners', 'cards', 'snapshots', 'journal', 'settings'], 'readwrite', STRICT);
		await Promise.all([
			tx.objectStore('owners').put(mark, card.id),
			...(last ? [tx.objectStore('settings').put(card.id, LAST)] : []),
			tx.objectStore('cards').put(card),
			tx.objectStore('snapshots').put(snapshot),
			...steps.map((step) => tx.objectStore('journal').put(step)),
			tx.done
		]);
	}

	/** The next steps of a claimed diagram. With a snapshot, steps that are no longer needed are thrown away. */
	async append(mark: string, { card, snapshot, steps }: Written): Promise<void> {
		const { id } = card;
		const tx = (await this.#open()).transaction(['owners', 'cards', 'snapshots', 'journal'], 'readwrite', STRICT);
		const [cards, snapshots, journal] = [tx.objectStore('cards'), tx.objectStore('snapshots'), tx.objectStore('journal')];
		const owner = await tx.objectStore('owners').get(id);
		if (owner !== mark) {
			tx.abort();
			await tx.done.catch(() => undefined);
			throw new KeepingError(owner === undefined ? 'gone' : 'elsewhere');
		}
		const older = snapshot ? (await snapshots.getAllKeys(allOf(id))).filter(([, seq]) => seq !== snapshot.seq).reverse() : [];
		const work: Promise<unknown>[] = [cards.put(card), ...steps.map((step) => journal.put(step))];
		if (snapshot) {
			work.push(snapshots.put(snapshot));
			work.push(...older.slice(SNAPSHOTS - 1).map((key) => snapshots.delete(key)));
			const needed = older.at(SNAPSHOTS - 2);
			if (needed) work.push(journal.delete(IDBKeyRange.bound([id, 0], needed)));
		}
		await Promise.all([...work, tx.done]);
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
		const tx = (await this.#open()).transaction(['owners', 'cards', 'snapshots', 'journal', 'versions', 'thumbnails'], 'readwrite');
		await Promise.all([
			...(['owners', 'cards', 'thumbnails'] as const).map((table) => tx.objectStore(table).delete(id)),
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

	/** The diagram that was open last, in any tab. */
	async last(): Promise<DiagramKey | undefined> {
		return (await this.#open()).get('settings', LAST);
	}

	async putLast(id: DiagramKey): Promise<void> {
		await (await this.#open()).put('settings', id, LAST);
	}
}
