import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** @type {import('@sveltejs/kit').Config} */
export default {
	preprocess: vitePreprocess(),
	kit: {
		// One page, made in the browser: every address falls back to it.
		adapter: adapter({ fallback: 'index.html' }),
		// Relative addresses, so that the built folder works from any path or a file server.
		paths: { relative: true },
		typescript: {
			config: (config) => {
				config.include.push('../tests/**/*.ts', '../*.config.ts', '../src/**/*.ts');
			}
		}
	}
};
