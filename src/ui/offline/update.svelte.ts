/**
 * Has the browser keep the program for use without a network, and knows when a newer version lies ready. That one is
 * never put in place by itself: whoever is drawing goes on with what they have.
 */
const ASK_EVERY_MS = 3_600_000;
const TAKE_OVER = 'take over';

export class Update {
	/** True when a newer version waits to be used. */
	ready = $state(false);
	#waiting: ServiceWorker | null = null;
	#asking: ReturnType<typeof setInterval> | undefined;
	#reloads = false;

	constructor(
		private readonly workers: ServiceWorkerContainer | undefined = globalThis.navigator?.serviceWorker,
		private readonly reload: () => void = () => location.reload()
	) {}

	/** Resolves when the browser has been asked; a browser that keeps nothing is no fault. */
	async start(address: string): Promise<void> {
		const { workers } = this;
		if (!workers) return;
		try {
			const registration = (await workers.register(address)) as ServiceWorkerRegistration | undefined;
			if (!registration) return;
			this.#look(registration);
			registration.addEventListener('updatefound', () => {
				const coming = registration.installing;
				coming?.addEventListener('statechange', () => this.#look(registration));
			});
			workers.addEventListener('controllerchange', this.#tookOver);
			// A tab may stay open for weeks.
			this.#asking = setInterval(() => void registration.update().catch(() => undefined), ASK_EVERY_MS);
		} catch {
			// In a private window, or served without encryption: it works, but not without a network.
		}
	}

	/** Puts the newer version in place and loads the page again. Whoever calls has seen to it that everything is kept. */
	use(): void {
		this.#reloads = true;
		if (this.#waiting) this.#waiting.postMessage(TAKE_OVER);
		else this.reload();
	}

	/** Says no more about this version. */
	later(): void {
		this.ready = false;
	}

	stop(): void {
		clearInterval(this.#asking);
		this.workers?.removeEventListener('controllerchange', this.#tookOver);
	}

	/** The first version of all is nothing new to anybody. */
	#look({ waiting }: ServiceWorkerRegistration): void {
		if (!waiting || !this.workers?.controller) return;
		this.#waiting = waiting;
		this.ready = true;
	}

	/** Another tab may have asked for it: only the one that was told to loads the page again. */
	readonly #tookOver = (): void => {
		if (this.#reloads) this.reload();
		this.#waiting = null;
	};
}
