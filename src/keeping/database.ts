/** The store in the browser: which tables there are, and how it is opened. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Card, DiagramKey, JournalRecord, ShelfRecord, SnapshotRecord, Thumbnail, VersionRecord } from './records.ts';

/** Raised with the tables. A program that knows only a lower number refuses the store and leaves it alone. */
export const STORE_VERSION = 2;

export interface Tables extends DBSchema {
	cards: { key: DiagramKey; value: Card };
	snapshots: { key: [DiagramKey, number]; value: SnapshotRecord };
	journal: { key: [DiagramKey, number]; value: JournalRecord };
	versions: { key: [DiagramKey, number]; value: VersionRecord };
	thumbnails: { key: DiagramKey; value: Thumbnail };
	settings: { key: string; value: string };
	shelf: { key: string; value: ShelfRecord };
}

export type Database = IDBPDatabase<Tables>;

/** Rejects with what the browser throws; a newer store with VersionError. */
export function openDatabase(name: string, closed: () => void): Promise<Database> {
	return openDB<Tables>(name, STORE_VERSION, {
		upgrade(database, from) {
			if (from < 1) first(database);
			database.createObjectStore('shelf', { keyPath: 'id' });
		},
		// A newer version in another tab waits for this one to let go.
		blocking(_current, _blocked, event) {
			(event.target as IDBDatabase).close();
			closed();
		},
		terminated: closed
	});
}

function first(database: Database): void {
	database.createObjectStore('cards', { keyPath: 'id' });
	for (const numbered of ['snapshots', 'journal'] as const) database.createObjectStore(numbered, { keyPath: ['id', 'seq'] });
	database.createObjectStore('versions', { keyPath: ['id', 'atMs'] });
	database.createObjectStore('thumbnails', { keyPath: 'id' });
	database.createObjectStore('settings');
}

/** All that belongs to one diagram in a table keyed by diagram and number. */
export const allOf = (id: DiagramKey, from = 0): IDBKeyRange => IDBKeyRange.bound([id, from], [id, Infinity]);
