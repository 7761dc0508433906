import { expect, test, vi } from 'vitest';
import { cacheNames, isOurs, PREFIX, staleCaches } from '../../src/offline-caches.ts';
import { Update } from '../../src/ui/offline/update.svelte.ts';

class FakeRegistration extends EventTarget {
	waiting: unknown = null;
	installing: (EventTarget & { state?: string }) | null = null;
	update = () => Promise.resolve();
	/** A newer version comes and is whole. */
	bring(worker: EventTarget): void {
		this.installing = worker;
		this.dispatchEvent(new Event('updatefound'));
		this.installing = null;
		this.waiting = worker;
		worker.dispatchEvent(new Event('statechange'));
	}
}
class FakeWorkers extends EventTarget {
	controller: unknown = {};
	readonly registration = new FakeRegistration();
	register = () => Promise.resolve(this.registration);
}
const newWorker = () => Object.assign(new EventTarget(), { postMessage: vi.fn() });

function started() {
	const workers = new FakeWorkers();
	const reload = vi.fn();
	return { workers, reload, update: new Update(workers as unknown as ServiceWorkerContainer, reload) };
}

test('the first version of all is not announced', async () => {
	const { workers, update } = started();
	workers.controller = null;
	await update.start('x');
	workers.registration.bring(newWorker());
	expect(update.ready).toBe(false);
	update.stop();
});

test('a newer one is announced and left alone until it is asked for; then the page is loaded again once it is in place', async () => {
	const { workers, update, reload } = started();
	const worker = newWorker();
	await update.start('x');
	workers.registration.bring(worker);
	expect(update.ready).toBe(true);
	expect(worker.postMessage).not.toHaveBeenCalled();
	update.use();
	expect(worker.postMessage).toHaveBeenCalledWith('take over');
	expect(reload).not.toHaveBeenCalled();
	workers.dispatchEvent(new Event('controllerchange'));
	expect(reload).toHaveBeenCalledOnce();
	update.stop();
});

test('another tab that puts it in place does not reload this one', async () => {
	const { workers, update, reload } = started();
	await update.start('x');
	workers.registration.bring(newWorker());
	workers.dispatchEvent(new Event('controllerchange'));
	expect(reload).not.toHaveBeenCalled();
	expect(update.ready).toBe(true);
	update.use();
	expect(reload).toHaveBeenCalledOnce();
	update.stop();
});

test('a browser that keeps nothing is no fault', async () => {
	const none = new Update(undefined);
	await none.start('x');
	const refusing = new Update({ register: () => Promise.reject(new Error('no')) } as unknown as ServiceWorkerContainer);
	await refusing.start('x');
	expect(none.ready || refusing.ready).toBe(false);
});

test('files are looked for in this version first; all but the one before are thrown away', () => {
	const names = ['other', `${PREFIX}1`, `${PREFIX}2`, `${PREFIX}3`];
	expect(cacheNames(names, `${PREFIX}3`)).toEqual([`${PREFIX}3`, `${PREFIX}1`, `${PREFIX}2`]);
	expect(staleCaches(names, `${PREFIX}3`)).toEqual([`${PREFIX}1`]);
	expect(isOurs('GET', 'http://a/x', 'http://a')).toBe(true);
	expect(isOurs('POST', 'http://a/x', 'http://a')).toBe(false);
	expect(isOurs('GET', 'http://b/x', 'http://a')).toBe(false);
});
