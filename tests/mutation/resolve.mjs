/** Module hook: tests that ask for Vitest or fast-check get what stands in for them here. */
const IN_PLACE = {
	vitest: new URL('./vitest-in-place.mjs', import.meta.url).href,
	'fast-check': new URL('./fast-check-in-place.mjs', import.meta.url).href
};

export function resolve(specifier, context, next) {
	const url = IN_PLACE[specifier];
	return url && context.parentURL !== url ? { url, shortCircuit: true } : next(specifier, context);
}
