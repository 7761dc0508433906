/**
 * Whose turn it is to edit a diagram: one tab at a time, by the browser's locks, which a tab that dies lets go of by
 * itself. Where there are no locks every tab gets its turn, and the cabinet's claims shut out the one before.
 */
import type { DiagramKey } from './records.ts';

export interface Turn {
	/** Lets the next in line have it. */
	release(): void;
	/** Settles when another tab took it by force. */
	readonly taken: Promise<void>;
}

const LETTING_GO_MS = 300;

const nameOf = (id: DiagramKey): string => `wireworthy-diagram-${id}`;

export class Turns {
	constructor(private readonly locks: Pick<LockManager, 'request'> | undefined = globalThis.navigator?.locks) {}

	/** Null when another tab has it. A turn let go of a moment ago takes as long to be free again. */
	async take(id: DiagramKey): Promise<Turn | null> {
		return (await this.#request(id, { ifAvailable: true })) ?? this.wait(id, AbortSignal.timeout(LETTING_GO_MS));
	}

	/** Waits in line. Null when the signal ended the waiting. */
	wait(id: DiagramKey, signal: AbortSignal): Promise<Turn | null> {
		return this.#request(id, { signal });
	}

	/** For a tab that does not answer. */
	force(id: DiagramKey): Promise<Turn | null> {
		return this.#request(id, { steal: true });
	}

	#request(id: DiagramKey, options: LockOptions): Promise<Turn | null> {
		if (!this.locks) return Promise.resolve({ release: () => undefined, taken: new Promise(() => undefined) });
		const { locks } = this;
		return new Promise((resolve, reject) => {
			let takenAway = (): void => undefined;
			const taken = new Promise<void>((settle) => (takenAway = settle));
			let held = false;
			locks
				.request(nameOf(id), options, (lock) => {
					if (!lock) return resolve(null);
					held = true;
					return new Promise<void>((release) => resolve({ release, taken }));
				})
				.catch((error: unknown) => {
					if (held) takenAway();
					else if (options.signal?.aborted) resolve(null);
					else reject(error as Error);
				});
		});
	}
}
