/** Places on a page that still moves: fonts arrive, a worker answers, a view glides. A gesture waits for them to rest. */
import { expect, type Locator } from '@playwright/test';

const STILL_MS = 80;

/** Reads until two readings some frames apart are alike. @returns null while there is nothing to read */
export async function atRest<Value>(read: () => Promise<Value | null>): Promise<Value> {
	let last: Value | null = null;
	await expect
		.poll(
			async () => {
				const now = await read();
				const isStill = now !== null && JSON.stringify(now) === JSON.stringify(last);
				last = now;
				return isStill;
			},
			{ intervals: [STILL_MS], message: 'the place comes to rest' }
		)
		.toBe(true);
	return last!;
}

export const boxAtRest = (of: Locator) => atRest(() => of.boundingBox());
