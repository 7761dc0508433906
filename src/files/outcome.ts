import type { Problem } from '#core/diagram';

/** How an errand with files ended. Closing the file chooser is no error; everything that is, says why. */
export type Outcome<Value> =
	| { readonly status: 'done'; readonly value: Value }
	| { readonly status: 'cancelled' }
	| { readonly status: 'failed'; readonly problems: readonly [Problem, ...Problem[]] };

export const done = <Value>(value: Value): Outcome<Value> => ({ status: 'done', value });
export const cancelled: Outcome<never> = { status: 'cancelled' };
export const failed = (what: string, why: string, remedy: string): Outcome<never> => ({
	status: 'failed',
	problems: [{ path: '', what, why, remedy }]
});

/** Browsers report a chooser that was closed as this error. */
export const isAbort = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
