/** The table of dependencies in DEVELOPERS.md: what each is for is written here, the rest is looked up. */
import { lstatSync, readdirSync, readFileSync } from 'node:fs';

/** Why each is there. A package without a reason does not stay. */
const WHY: Readonly<Record<string, string>> = {
	elkjs: 'arranges a whole drawing in layers, in a worker, when asked for',
	idb: 'promises for IndexedDB',
	immer: 'commands as recipes, undo from their patches',
	jspdf: 'writes PDF',
	konva: 'scene graph of the canvas',
	rbush: 'spatial index',
	zod: 'schemas: file format, parameters of parts, store',
	'@axe-core/playwright': 'accessibility faults in the browser tests',
	'@eslint/js': 'recommended rules of the linter',
	'@playwright/test': 'browser tests',
	'@stryker-mutator/core': 'mutation tests',
	'@stryker-mutator/vitest-runner': 'mutation tests run Vitest',
	'@sveltejs/adapter-static': 'the build as plain files',
	'@sveltejs/kit': 'build, page, security policy, service worker',
	'@sveltejs/vite-plugin-svelte': 'compiles components',
	'@types/node': 'types of Node, for tools and tests',
	'@types/rbush': 'types of rbush',
	'dependency-cruiser': 'import rules',
	eslint: 'linter',
	'eslint-plugin-svelte': 'linter for components',
	'fake-indexeddb': 'IndexedDB in unit tests',
	'fast-check': 'property tests',
	globals: 'names the linter takes as given',
	'happy-dom': 'a document for tests of components',
	mathjs: 'works explanations out again, in tests',
	'ml-matrix': 'another solver to compare with, in tests',
	'playwright-core': 'drives the browser for pictures and trials',
	prettier: 'formats code',
	'prettier-plugin-svelte': 'formats components',
	svelte: 'components of the interface',
	'svelte-check': 'types in components',
	tinybench: 'benchmarks',
	tsx: 'runs the command line tools',
	typescript: 'types',
	'typescript-eslint': 'linter for TypeScript',
	vite: 'development server and build',
	vitest: 'unit tests'
};

const BEGIN = '<!-- dependencies: written by npm run licences -->';
const END = '<!-- end of dependencies -->';

interface Manifest {
	readonly version: string;
	readonly license?: string;
	readonly dependencies: Readonly<Record<string, string>>;
	readonly devDependencies: Readonly<Record<string, string>>;
}
const manifest = (path: string): Manifest => JSON.parse(readFileSync(path, 'utf8')) as Manifest;

/** Markdown, one line for each package that package.json names. Throws for one without a reason, or a reason without one. */
export function dependencyTable(): string {
	const { dependencies, devDependencies } = manifest('package.json');
	const names = [...Object.keys(dependencies).sort(), ...Object.keys(devDependencies).sort()];
	const unknown = Object.keys(WHY).filter((name) => !names.includes(name));
	if (unknown.length > 0) throw new Error(`No longer in package.json: ${unknown.join(', ')}.`);
	const rows = names.map((name) => {
		const why = WHY[name];
		if (why === undefined) throw new Error(`Say in src/cli/dependencies.ts why ${name} is there.`);
		const { version, license = '–' } = manifest(`node_modules/${name}/package.json`);
		return [`\`${name}\` ${version}`, name in dependencies ? 'yes' : '', why, license, size(bytesIn(`node_modules/${name}`))];
	});
	return aligned([['package', 'in the page', 'why', 'licence', 'installed'], ...rows]);
}

/** The text with the table between its two marks. */
export function withTable(text: string, table: string): string {
	const [from, to] = [text.indexOf(BEGIN), text.indexOf(END)];
	if (from < 0 || to < from) throw new Error('DEVELOPERS.md has no place for the table of dependencies.');
	return `${text.slice(0, from + BEGIN.length)}\n\n${table}\n\n${text.slice(to)}`;
}

/** Of the files, without packages nested in it: those are not the same everywhere. */
function bytesIn(folder: string): number {
	let bytes = 0;
	for (const entry of readdirSync(folder, { withFileTypes: true })) {
		if (entry.name === 'node_modules') continue;
		const path = `${folder}/${entry.name}`;
		bytes += entry.isDirectory() ? bytesIn(path) : lstatSync(path).size;
	}
	return bytes;
}

const size = (bytes: number): string => (bytes < 1e6 ? `${Math.ceil(bytes / 1e4) * 10} kB` : `${(bytes / 1e6).toFixed(1)} MB`);

function aligned(rows: readonly (readonly string[])[]): string {
	const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
	const line = (row: readonly string[]) => `| ${row.map((cell, column) => cell.padEnd(widths[column]!)).join(' | ')} |`;
	const [head, ...body] = rows;
	return [line(head!), `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`, ...body.map(line)].join('\n');
}
