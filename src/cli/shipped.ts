/**
 * The packages whose code or words are in the built page. Worked out from the lock file; the build refuses to end when
 * it has put in another (see `onlyShipped`, in vite.config.ts).
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';

export interface Shipped {
	readonly name: string;
	readonly version: string;
	/** SPDX expression, as the package states it. */
	readonly licence: string;
	/** The licence itself. */
	readonly text: string;
}

interface Locked {
	readonly version: string;
	readonly license?: string;
	readonly dependencies?: Readonly<Record<string, string>>;
}

/** Tools that leave some of themselves in what they build. */
const FROM_TOOLS = ['svelte', '@sveltejs/kit', 'esm-env', 'clsx', 'devalue', 'vite', 'rolldown'];

/** Not shipped, though other packages name them: see NOT_SHIPPED in vite.config.ts; types are no code. */
const LEFT_OUT = /^(fast-png|canvg|html2canvas|dompurify|@types\/.*)$/;

const json = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

/** All that `root` depends on for the page, itself and indirectly, by name. */
export function shippedPackages(): Shipped[] {
	const { dependencies } = json('package.json') as { dependencies: Record<string, string> };
	const locked = (json('package-lock.json') as { packages: Record<string, Locked> }).packages;
	const found = new Map<string, Shipped>();
	const waiting = [...Object.keys(dependencies)];
	for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
		const entry = locked[`node_modules/${name}`];
		if (!entry || LEFT_OUT.test(name) || found.has(name)) continue;
		found.set(name, shipped(name, entry));
		waiting.push(...Object.keys(entry.dependencies ?? {}));
	}
	for (const name of FROM_TOOLS) found.set(name, shipped(name, locked[`node_modules/${name}`]!));
	return [...found.values(), fonts()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

const shipped = (name: string, { version, license = 'not stated' }: Locked): Shipped => ({
	name,
	version,
	licence: license,
	text: licenceText(`node_modules/${name}`) ?? `${name} brings no text of its licence; it states: ${license}.`
});

/** What stands beside the fonts. */
const fonts = (): Shipped => ({
	name: 'DejaVu Sans Condensed',
	version: '2.37',
	licence: 'Bitstream Vera',
	text: readFileSync('static/fonts/LICENCE.txt', 'utf8').trim()
});

function licenceText(folder: string): string | null {
	if (!existsSync(folder)) throw new Error(`${folder} is not installed.`);
	const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name));
	return file === undefined ? null : readFileSync(`${folder}/${file}`, 'utf8').replaceAll('\r\n', '\n').trim();
}

/** The package that a module of a bundle is from; null for our own. */
export function packageOf(module: string): string | null {
	const inside = module.split(/[\\/]node_modules[\\/]/).at(-1);
	if (inside === undefined || inside === module) return null;
	const [first = '', second = ''] = inside.split(/[\\/]/);
	return first.startsWith('@') ? `${first}/${second}` : first;
}
