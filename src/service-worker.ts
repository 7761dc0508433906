/**
 * Keeps the program on the device, so that it opens without a network. A new version is fetched whole and then waits:
 * it takes over when all tabs of the old one are closed, or when the user says so.
 */
import { base, build, files, version } from '$service-worker';
import { cacheNames, isOurs, PREFIX, staleCaches } from './offline-caches.ts';

const worker = globalThis as unknown as ServiceWorkerGlobalScope;

const PAGE = `${base}/`;
const HERE = `${PREFIX}${version}`;
/** The page is asked for again on each visit; a network that answers slower than this is taken for none. */
const PAGE_MS = 4_000;

worker.addEventListener('install', (event) => {
	event.waitUntil(fill());
});

worker.addEventListener('activate', (event) => {
	event.waitUntil(tidy());
});

worker.addEventListener('message', ({ data }) => {
	if (data === 'take over') void worker.skipWaiting();
});

worker.addEventListener('fetch', (event) => {
	const { request } = event;
	if (!isOurs(request.method, request.url, worker.location.origin)) return;
	event.respondWith(request.mode === 'navigate' ? page(request) : file(request));
});

/** All or nothing: with one file missing the version is not installed. Past the browser's own cache, which may be stale. */
async function fill(): Promise<void> {
	const cache = await caches.open(HERE);
	await cache.addAll([PAGE, ...build, ...files].map((address) => new Request(address, { cache: 'reload' })));
}

/** The version before is kept, for tabs that still run it and have not loaded all of it. */
async function tidy(): Promise<void> {
	for (const name of staleCaches(await caches.keys(), HERE)) await caches.delete(name);
}

async function page(request: Request): Promise<Response> {
	try {
		const response = await fetch(request, { signal: AbortSignal.timeout(PAGE_MS) });
		if (response.ok) return response;
	} catch {
		// No network: what is kept has to do.
	}
	return (await kept(PAGE)) ?? Response.error();
}

async function file(request: Request): Promise<Response> {
	return (await kept(request)) ?? fetch(request);
}

/** From this version, else from another that is still here: names of the program's own files tell versions apart. */
async function kept(what: RequestInfo): Promise<Response | undefined> {
	for (const name of cacheNames(await caches.keys(), HERE)) {
		const found = await (await caches.open(name)).match(what, { ignoreSearch: true });
		if (found) return found;
	}
	return undefined;
}
