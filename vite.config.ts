import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	worker: { format: 'es' },
	test: {
		// A busy machine is slow, not wrong: tests assert results, never time.
		testTimeout: 60_000,
		hookTimeout: 60_000,
		projects: [
			{
				extends: true,
				test: {
					name: 'core',
					environment: 'node',
					include: ['tests/{core,canvas,files,keeping,support,cli}/**/*.test.ts']
				}
			},
			{
				extends: true,
				// Runes compile for the server unless the browser condition is set: effects would never run.
				resolve: { conditions: ['browser'] },
				test: {
					name: 'ui',
					environment: 'happy-dom',
					include: ['tests/{editor,ui}/**/*.test.ts']
				}
			}
		]
	}
});
