/** Which stores of files belong to the program, and which of them are still wanted. Names sort by nothing: the browser lists them as made. */
export const PREFIX = 'wireworthy-';

const ours = (names: readonly string[]): string[] => names.filter((name) => name.startsWith(PREFIX));

/** Those to look into, `here` first. */
export const cacheNames = (names: readonly string[], here: string): string[] => [here, ...ours(names).filter((name) => name !== here)];

/** Those to throw away: all but `here` and the one made last before it. */
export const staleCaches = (names: readonly string[], here: string): string[] =>
	ours(names)
		.filter((name) => name !== here)
		.slice(0, -1);

/** Whether the worker answers; everything else is the browser's. */
export const isOurs = (method: string, address: string, origin: string): boolean => method === 'GET' && new URL(address).origin === origin;
