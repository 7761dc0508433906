/** Ends a build with an error when the page would hold code whose licence is not among those shown in it. */
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { packageOf, type Shipped } from './shipped.ts';

export const onlyShipped = (): Plugin => ({
	name: 'only-shipped',
	apply: 'build',
	applyToEnvironment: ({ name }) => name === 'client',
	generateBundle(_, bundle) {
		const listed = new Set((JSON.parse(readFileSync('static/licences.json', 'utf8')) as Shipped[]).map(({ name }) => name));
		const missing = new Set<string>();
		for (const chunk of Object.values(bundle)) {
			if (chunk.type !== 'chunk') continue;
			for (const module of chunk.moduleIds) {
				const name = packageOf(module);
				if (name !== null && !listed.has(name)) missing.add(name);
			}
		}
		if (missing.size > 0) this.error(`The page holds code of ${[...missing].join(', ')}, which "npm run licences" does not list.`);
	}
});
