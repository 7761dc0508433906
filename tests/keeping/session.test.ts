import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Cabinet } from '#keeping';
import { Cabinet as RealCabinet } from '#keeping';
import { emptyDisk, FakeLocks, openTab, plain, type Tab } from './support.ts';

let locks: FakeLocks;
const tabs: Tab[] = [];
const tab = (options?: Parameters<typeof openTab>[1]): Tab => {
	const opened = openTab(locks, options);
	tabs.push(opened);
	return opened;
};

beforeEach(() => {
	emptyDisk();
	locks = new FakeLocks();
});
afterEach(async () => {
	for (const one of tabs.splice(0)) await one.close();
});

const failing = (error: Error): { cabinet: Cabinet; heal(): void } => {
	const cabinet = new RealCabinet();
	const spies = (['create', 'append', 'renew'] as const).map((write) => vi.spyOn(cabinet, write).mockRejectedValue(error));
	return { cabinet, heal: () => spies.forEach((spy) => spy.mockRestore()) };
};

describe('keeping', () => {
	test('a diagram nobody changed is not kept; its first step brings it', async () => {
		const one = tab();
		await one.session.flush();
		expect(await one.cabinet.cards()).toEqual([]);
		one.title('Ridge');
		expect(await one.session.flush()).toBe(true);
		expect(await one.cabinet.cards()).toMatchObject([{ name: 'Ridge', binnedMs: null, parts: 4 }]);
	});

	test('another visit finds the last step, with undo and redo', async () => {
		const one = tab();
		one.title('A');
		one.part('L1');
		one.part('L2');
		one.undo();
		await one.session.flush();
		const id = one.session.id!;
		await one.close();

		const later = tab();
		expect(await later.session.open(id)).toMatchObject({ ok: true });
		expect(later.history()).toEqual(plain(one.history()));
		later.redo();
		later.undo();
		later.undo();
		later.undo();
		expect(later.history().diagram.titleBlock.title).not.toBe('A');
		await later.session.flush();
		await later.close();

		const last = tab();
		await last.session.open(id);
		expect(last.history()).toEqual(plain(later.history()));
	});

	test('after many steps a snapshot takes their place, and the way back stays whole', async () => {
		const one = tab();
		for (let n = 0; n < 450; n += 1) {
			one.title(`step ${n}`);
			if (n % 50 === 0) await one.session.flush();
		}
		await one.session.flush();
		const { steps, snapshots } = await one.cabinet.read(one.session.id!);
		expect(snapshots.length).toBe(2);
		expect(steps.length).toBeLessThan(450);
		const id = one.session.id!;
		await one.close();
		const later = tab();
		await later.session.open(id);
		expect(later.history()).toEqual(plain(one.history()));
	});

	test.each([
		['a full disk', new DOMException('no room', 'QuotaExceededError'), 'full'],
		['a failed write', new DOMException('disk', 'UnknownError'), 'failed']
	])('%s is told, nothing is dropped, and it is kept when there is room again', async (_, error, kind) => {
		vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
		try {
			const { cabinet, heal } = failing(error);
			const one = tab({ cabinet });
			one.title('A');
			expect(await one.session.flush()).toBe(false);
			expect(one.session.fault).toMatchObject({ kind });
			one.part('L1');
			expect(await one.session.flush()).toBe(false);
			heal();
			await vi.advanceTimersByTimeAsync(60_000);
		} finally {
			vi.useRealTimers();
		}
		const one = tabs.at(-1)!;
		expect(await one.session.flush()).toBe(true);
		expect(one.session.fault).toBeNull();
		const id = one.session.id!;
		await one.close();
		const later = tab();
		await later.session.open(id);
		expect(later.history()).toEqual(plain(one.history()));
	});

	test('a store from a newer version is refused and left alone', async () => {
		await new Promise((resolve) => {
			const open = indexedDB.open('wireworthy', 7);
			open.onsuccess = () => resolve(open.result.close());
		});
		const one = tab();
		one.title('A');
		expect(await one.session.flush()).toBe(false);
		expect(one.session.fault).toMatchObject({ kind: 'newer' });
		expect((await indexedDB.databases()).map(({ version }) => version)).toEqual([7]);
	});

	test('a diagram that went from the store is put back from what is open', async () => {
		const one = tab();
		one.title('A');
		await one.session.flush();
		await one.cabinet.purge(one.session.id!);
		one.part('L1');
		await vi.waitFor(() => expect(one.news).toEqual(['put-back']));
		expect(await one.session.flush()).toBe(true);
		expect(await one.cabinet.cards()).toMatchObject([{ name: 'A', parts: 5 }]);
	});

	test('damage at the end of the journal: what is before is found, and later steps follow it', async () => {
		const one = tab();
		one.title('A');
		one.part('L1');
		one.part('L2');
		await one.session.flush();
		const id = one.session.id!;
		await one.close();
		const store = await new Promise<IDBDatabase>((resolve) => {
			const open = indexedDB.open('wireworthy');
			open.onsuccess = () => resolve(open.result);
		});
		const journal = store.transaction('journal', 'readwrite').objectStore('journal');
		journal.put({ id, seq: 3, text: '{"kind":"run"', sum: 1 });
		await new Promise((resolve) => (journal.transaction.oncomplete = resolve));
		store.close();

		const later = tab();
		expect(await later.session.open(id)).toMatchObject({ ok: true, recovered: { lost: 1 } });
		expect(Object.keys(later.history().diagram.parts)).not.toContain('L2');
		later.part('L3');
		await later.session.flush();
		await later.close();
		const last = tab();
		expect(await last.session.open(id)).toMatchObject({ ok: true, recovered: { lost: 0 } });
		expect(last.history()).toEqual(plain(later.history()));
	});
});

describe('two tabs', () => {
	async function pair() {
		const first = tab();
		first.title('A');
		await first.session.flush();
		await new Promise((resolve) => setTimeout(resolve, 20));
		const second = tab();
		await second.session.open(first.session.id!);
		return { first, second };
	}

	test('the second reads, and sees each step', async () => {
		const { first, second } = await pair();
		expect(second.states()).toBe('reading');
		first.part('L1');
		await vi.waitFor(() => expect(second.history()).toEqual(plain(first.history())));
		first.undo();
		await vi.waitFor(() => expect(second.history()).toEqual(plain(first.history())));
		expect(second.states()).toBe('reading');
	});

	test('the second asks, gets everything, edits; the first reads along', async () => {
		const { first, second } = await pair();
		first.part('L1');
		second.session.askForTurn();
		await vi.waitFor(() => expect(second.news).toEqual(['your-turn']));
		expect(first.states()).toBe('reading');
		expect(first.news).toEqual(['handed-over']);
		expect(second.history()).toEqual(plain(first.history()));
		second.part('L2');
		await vi.waitFor(() => expect(first.history()).toEqual(plain(second.history())));
	});

	test('the second goes on when the first is closed', async () => {
		const { first, second } = await pair();
		first.part('L1');
		await first.session.flush();
		await first.close();
		await vi.waitFor(() => expect(second.states()).toBe('editing'));
		expect(Object.keys(second.history().diagram.parts)).toContain('L1');
	});

	test('the first stays while it holds what it could not keep', async () => {
		const { first, second } = await pair();
		for (const write of ['append', 'renew'] as const)
			vi.spyOn(first.cabinet, write).mockRejectedValue(new DOMException('', 'QuotaExceededError'));
		first.part('L1');
		await first.session.flush();
		second.session.askForTurn();
		await vi.waitFor(() => expect(second.news).toEqual(['stays']));
		expect(first.states()).toBe('editing');
	});

	test('taken by force: neither overwrites the other, what was not kept goes on as a second diagram', async () => {
		const { first, second } = await pair();
		const stuck = vi.spyOn(first.cabinet, 'append').mockImplementation(() => new Promise(() => undefined));
		first.part('L1');
		second.session.askForTurn();
		await vi.waitFor(() => expect(second.news).toEqual(['no-answer']));
		await second.session.forceTurn();
		await vi.waitFor(() => expect(second.states()).toBe('editing'));
		second.part('L2');
		await second.session.flush();
		await vi.waitFor(() => expect(first.news).toEqual(['taken-away']));
		stuck.mockRestore();
		expect(await first.session.flush()).toBe(true);
		expect(first.session.id).not.toBe(second.session.id);
		const kept = await second.cabinet.cards();
		expect(kept).toHaveLength(2);
		expect(Object.keys(first.history().diagram.parts)).toContain('L1');
		expect(Object.keys(second.history().diagram.parts)).toEqual(expect.not.arrayContaining(['L1']));
	});

	test('without locks, the cabinet lets only the last one write', async () => {
		const first = openTab(undefined);
		tabs.push(first);
		first.title('A');
		await first.session.flush();
		const second = openTab(undefined);
		tabs.push(second);
		await second.session.open(first.session.id!);
		second.part('L2');
		await second.session.flush();
		first.part('L1');
		await vi.waitFor(() => expect(first.news).toEqual(['taken-away']));
		await first.session.flush();
		expect(await second.cabinet.cards()).toHaveLength(2);
	});
});
