/** The shelf of parts somebody made, in a store that an earlier version of the program may have begun. */
import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { Cabinet } from '#keeping';

let serial = 0;
const freshName = (): string => `shelf-${++serial}`;

/** The tables as the first version of the store made them. */
async function firstStore(name: string): Promise<void> {
	const database = await openDB(name, 1, {
		upgrade(db) {
			db.createObjectStore('cards', { keyPath: 'id' });
			for (const numbered of ['snapshots', 'journal']) db.createObjectStore(numbered, { keyPath: ['id', 'seq'] });
			db.createObjectStore('versions', { keyPath: ['id', 'atMs'] });
			db.createObjectStore('thumbnails', { keyPath: 'id' });
			db.createObjectStore('settings');
		}
	});
	await database.put('cards', { id: 'd', name: 'Boat', createdMs: 1, changedMs: 2, binnedMs: null, parts: 0, conductors: 0, file: null });
	await database.put('settings', 'd', 'last-diagram');
	database.close();
}

test('parts come back in the order they were put there, and go when they are taken off', async () => {
	const cabinet = new Cabinet(freshName());
	expect(await cabinet.shelf()).toEqual([]);
	await cabinet.putOnShelf([
		{ id: 'b', addedMs: 2, text: 'second' },
		{ id: 'a', addedMs: 1, text: 'first' }
	]);
	await cabinet.putOnShelf([{ id: 'a', addedMs: 1, text: 'first, changed' }]);
	expect((await cabinet.shelf()).map(({ text }) => text)).toEqual(['first, changed', 'second']);
	await cabinet.takeFromShelf('a');
	expect((await cabinet.shelf()).map(({ id }) => id)).toEqual(['b']);
	await cabinet.close();
});

test('a store begun by the first version keeps what is in it and gets a shelf', async () => {
	const name = freshName();
	await firstStore(name);
	const cabinet = new Cabinet(name);
	expect((await cabinet.cards()).map((card) => card.name)).toEqual(['Boat']);
	expect(await cabinet.last()).toBe('d');
	await cabinet.putOnShelf([{ id: 'a', addedMs: 1, text: 'x' }]);
	expect(await cabinet.shelf()).toHaveLength(1);
	await cabinet.close();
});
