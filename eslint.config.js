import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

export default ts.config(
	{ ignores: ['build/', '.svelte-kit/', 'node_modules/', 'test-results/'] },
	js.configs.recommended,
	...ts.configs.strict,
	...svelte.configs.recommended,
	{ languageOptions: { globals: { ...globals.browser, ...globals.node } } },
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: { parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig } }
	},
	{
		rules: {
			'no-undef': 'off', // TypeScript does this, and knows types
			eqeqeq: 'error',
			'no-eval': 'error',
			'@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
			'@typescript-eslint/no-non-null-assertion': 'off', // noUncheckedIndexedAccess makes "!" the way to say "this index exists"
			'@typescript-eslint/unified-signatures': 'off',
			'@typescript-eslint/no-dynamic-delete': 'off', // the diagram is kept in records by id; removing one entry is one small patch
			'svelte/no-at-html-tags': 'error', // text from files must never become HTML
			'svelte/no-navigation-without-resolve': 'off'
		}
	},
	{
		files: ['src/core/**/*.ts'],
		rules: {
			'no-restricted-imports': [
				'error',
				{ patterns: [{ group: ['konva*', 'svelte*', 'node:*', '$app/*'], message: 'The core is pure: no DOM, no framework, no Node.' }] }
			],
			'no-restricted-globals': ['error', 'window', 'document', 'localStorage', 'fetch', 'process']
		}
	},
	{
		files: ['src/canvas/**/*.ts'],
		rules: {
			'no-restricted-imports': [
				'error',
				{ patterns: [{ group: ['svelte*', '#editor', '#ui'], message: 'The canvas asks its host; it knows no framework.' }] }
			]
		}
	}
);
