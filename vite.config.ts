import { fileURLToPath } from 'node:url';
import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { onlyShipped } from './src/cli/only-shipped.ts';

/** The PDF writer would fetch these for pages of HTML and pixels, which nobody makes here: they must not be shipped. */
const NOT_SHIPPED = ['canvg', 'html2canvas', 'dompurify', 'fast-png'];
const absent = fileURLToPath(new URL('src/handoff/absent.ts', import.meta.url));

export default defineConfig({
	plugins: [sveltekit(), onlyShipped()],
	resolve: { alias: NOT_SHIPPED.map((name) => ({ find: name, replacement: absent })) },
	worker: { format: 'es' },
	test: {
		// A busy machine is slow, not wrong: tests assert results, never time.
		testTimeout: 60_000,
		hookTimeout: 60_000,
		// On two cores Vitest would use one; nothing here looks at the clock.
		maxWorkers: 2,
		setupFiles: ['tests/support/draws.ts'],
		projects: [
			{
				extends: true,
				test: {
					name: 'core',
					environment: 'node',
					include: ['tests/{core,canvas,files,fuzz,handoff,keeping,support,cli}/**/*.test.ts']
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
