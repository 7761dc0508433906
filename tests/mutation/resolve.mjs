/** Module hook: tests that ask for Vitest get it in place. */
const inPlace = new URL('./vitest-in-place.mjs', import.meta.url).href;

export const resolve = (specifier, context, next) =>
	specifier === 'vitest' ? { url: inPlace, shortCircuit: true } : next(specifier, context);
