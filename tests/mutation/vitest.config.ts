import { defineConfig } from 'vitest/config';

/** The core's own tests without the site's plugins. `MUTATION_TESTS` names the files that are to notice a portion's mutants. */
export default defineConfig({
	test: {
		environment: 'node',
		include: process.env['MUTATION_TESTS']?.split(',') ?? ['tests/core/{rules,solver}/**/*.test.ts'],
		testTimeout: 60_000,
		hookTimeout: 60_000
	}
});
