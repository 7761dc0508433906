import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** The development server puts pages together in ways that trusted types refuse. */
const developing = process.argv.includes('dev');

/**
 * What the page may load and run: its own files, and nothing that comes with a diagram. The one script that stands in
 * the page is let in by its hash. What holds for workers is said by whoever serves them; theirs make no pages.
 * Who may frame the page cannot be said in a page, only by a server.
 */
const directives = {
	'default-src': ['none'],
	'script-src': ['self'],
	'worker-src': ['self'],
	'style-src': ['self'],
	// The one style attribute there is: of the line in which the framework tells screen readers of another page.
	'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
	'img-src': ['self', 'data:', 'blob:'],
	'font-src': ['self'],
	'connect-src': ['self'],
	'manifest-src': ['self'],
	'object-src': ['none'],
	'base-uri': ['none'],
	'form-action': ['none'],
	// "default" is our own, in src/hooks.client.ts; one makes elements from the markup of our
	// components, one prints the sheets our own writer draws (src/handoff/print.ts).
	...(developing
		? {}
		: { 'require-trusted-types-for': ['script'], 'trusted-types': ['svelte-trusted-html', 'default', 'wireworthy-sheets'] })
};

/** @type {import('@sveltejs/kit').Config} */
export default {
	preprocess: vitePreprocess(),
	kit: {
		// One page, made in the browser: every address falls back to it.
		adapter: adapter({ fallback: 'index.html' }),
		// Relative addresses, so that the built folder works from any path or a file server.
		paths: { relative: true },
		csp: { mode: 'hash', directives },
		// Registered in src/ui/offline, which tells of new versions.
		serviceWorker: { register: false },
		typescript: {
			config: (config) => {
				config.include.push('../tests/**/*.ts', '../*.config.ts', '../src/**/*.ts');
			}
		}
	}
};
