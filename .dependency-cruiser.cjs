/**
 * Who may import whom, lowest first. This map is the architecture: `npm run imports` fails on any other import.
 * Every folder has one door, its index.ts.
 */
const mayImport = {
	'core/memory': [],
	'core/units': [],
	'core/geometry': [],
	'core/tables': ['core/units'],
	'core/diagram': ['core/units', 'core/geometry', 'core/tables'],
	'core/graphics': ['core/geometry', 'core/diagram'],
	'core/conductors': ['core/units', 'core/tables', 'core/diagram'],
	'core/parts': ['core/units', 'core/geometry', 'core/tables', 'core/diagram', 'core/graphics', 'core/conductors'],
	'core/profiles': ['core/units', 'core/tables', 'core/diagram', 'core/conductors'],
	'core/layout': ['core/geometry', 'core/diagram', 'core/parts'],
	'core/routing': ['core/geometry'],
	'core/network': ['core/units', 'core/tables', 'core/diagram', 'core/conductors', 'core/parts'],
	'core/solver': ['core/diagram', 'core/network'],
	'core/protection': ['core/diagram', 'core/network'],
	'core/faults': [
		'core/units',
		'core/tables',
		'core/diagram',
		'core/conductors',
		'core/parts',
		'core/profiles',
		'core/network',
		'core/solver',
		'core/protection'
	],
	'core/readings': ['core/diagram', 'core/network', 'core/solver'],
	'core/energy': ['core/units', 'core/diagram', 'core/parts', 'core/network'],
	'core/studs': [
		'core/memory',
		'core/units',
		'core/geometry',
		'core/tables',
		'core/diagram',
		'core/conductors',
		'core/parts',
		'core/layout'
	],
	'core/rules': [
		'core/memory',
		'core/units',
		'core/tables',
		'core/diagram',
		'core/conductors',
		'core/parts',
		'core/profiles',
		'core/network',
		'core/solver',
		'core/protection',
		'core/faults',
		'core/energy',
		'core/studs'
	],
	'core/drawing': [
		'core/units',
		'core/geometry',
		'core/tables',
		'core/diagram',
		'core/graphics',
		'core/conductors',
		'core/parts',
		'core/layout',
		'core/routing',
		'core/network'
	],
	'core/elevation': [
		'core/units',
		'core/geometry',
		'core/tables',
		'core/diagram',
		'core/graphics',
		'core/conductors',
		'core/parts',
		'core/layout',
		'core/studs'
	],
	'core/symbols': ['core/geometry', 'core/graphics', 'core/parts'],
	'core/check': ['core'],
	'core/bars': ['core'],
	'core/remedies': ['core'],
	'core/placement': ['core'],
	'core/explain': ['core'],
	'core/revisions': ['core'],
	'core/reports': ['core'],
	'core/examples': ['core'],
	editor: ['core', 'files', 'canvas/host', 'canvas/index'],
	canvas: ['core'],
	files: ['core'],
	handoff: ['core', 'files'],
	keeping: ['core'],
	ui: ['core', 'editor', 'canvas', 'files', 'handoff', 'keeping'],
	routes: ['core', 'editor', 'canvas', 'files', 'keeping', 'ui', 'app'],
	cli: ['core']
};

/** Packages a layer may use, beside those of the layers below. Core folders that are not named use none. */
const packagesOf = {
	...Object.fromEntries(
		Object.keys(mayImport)
			.filter((layer) => layer.startsWith('core/'))
			.map((layer) => [layer, []])
	),
	'core/geometry': ['rbush'],
	'core/diagram': ['zod', 'immer'],
	'core/parts': ['zod'],
	canvas: ['konva'],
	handoff: ['jspdf'],
	keeping: ['idb', 'zod']
};

const layers = Object.entries(mayImport).map(([layer, below]) => ({
	name: `${layer.replace('/', '-')}-imports-only-what-it-may`,
	comment: `src/${layer} may import from: ${below.join(', ') || 'nothing'}`,
	severity: 'error',
	from: { path: `^src/${layer}/` },
	to: { path: '^src/', pathNot: [`^src/${layer}/`, ...below.map((l) => `^src/${l}(?:/|\\.)`)] }
}));

const packages = Object.entries(packagesOf).map(([layer, allowed]) => ({
	name: `${layer.replace('/', '-').replace(/[^a-z-]/g, '')}-uses-only-its-packages`,
	severity: 'error',
	from: { path: `^src/${layer}/` },
	to: {
		dependencyTypes: ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg'],
		pathNot: allowed.map((name) => `node_modules/${name}/`)
	}
}));

/** From outside a core folder, only its index.ts may be imported. */
const doors = Object.keys(mayImport)
	.filter((layer) => layer.startsWith('core/'))
	.map((layer) => ({
		name: `${layer.replace('/', '-')}-has-one-door`,
		severity: 'error',
		from: { path: '^src/', pathNot: `^src/${layer}/` },
		to: { path: `^src/${layer}/`, pathNot: `^src/${layer}/index\\.ts$` }
	}));

module.exports = {
	forbidden: [
		...layers,
		...packages,
		{ name: 'no-cycles', severity: 'error', from: {}, to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } } },
		...doors,
		{
			name: 'no-node-in-the-browser',
			severity: 'error',
			from: { path: '^src/', pathNot: '^src/cli/' },
			to: { dependencyTypes: ['core'] }
		},
		{ name: 'no-test-code-in-src', severity: 'error', from: { path: '^src/' }, to: { path: '^tests/' } },
		{ name: 'no-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '^\\$|^svelte|\\?worker' } }
	],
	options: {
		doNotFollow: { path: 'node_modules' },
		tsPreCompilationDeps: true,
		tsConfig: { fileName: 'tsconfig.json' },
		enhancedResolveOptions: {
			exportsFields: ['exports'],
			conditionNames: ['svelte', 'browser', 'import', 'types', 'default'],
			extensions: ['.ts', '.svelte', '.js', '.svelte.ts']
		}
	}
};
