/** Parts of the window that are fetched when first needed, or once the window rests: it opens sooner without them. */
import type { Component } from 'svelte';

/** One such part. What has been fetched stays, so that it is there at once the next time. */
export class Late {
	readonly #fetch: () => Promise<{ readonly default: Component }>;
	#fetching: Promise<void> | null = null;
	component = $state.raw<Component | null>(null);
	/** Why it could not be fetched; null while nothing went wrong. */
	failure = $state.raw<string | null>(null);

	constructor(fetch: () => Promise<{ readonly default: Component }>) {
		this.#fetch = fetch;
	}

	/** Fetches it unless it is there; after a failure, again. */
	load(): Promise<void> {
		this.#fetching ??= this.#fetch().then(
			({ default: component }) => {
				this.component = component;
				this.failure = null;
			},
			(error: unknown) => {
				this.failure = error instanceof Error ? error.message : String(error);
				this.#fetching = null;
			}
		);
		return this.#fetching;
	}
}
