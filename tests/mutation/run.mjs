/**
 * Changes the rules and the solver in small ways and sees whether their tests notice:
 *
 *     npm run mutation                          everything, in portions (about an hour on two cores)
 *     npm run mutation -- voltage-drop solver   these rules, this folder
 *
 * A rule's mutants must be noticed by that rule's own test; what rules share, by any rule's test. Left out are texts
 * and object literals (sentences are compared word by word by every rule's test) and what runs once on loading (titles,
 * sources). Prints the score by file and the mutants that lived; the reports stay in test-results/mutation.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

const CONFIG = 'tests/mutation/stryker.json';
const OUT = 'test-results/mutation';
const PER_PORTION = 6;
/** Lists, types and doors: nothing in them decides. */
const NOT_MUTATED = new Set(['index', 'list', 'types', 'define', 'finding', 'study', 'not-implemented', 'catalogue']);
const RULE_TESTS = 'tests/core/rules/*.test.ts';
/** Without the large networks, which would be solved again for each mutant. */
const SOLVER_TESTS = ['tests/core/solver/!(large).test.ts', 'tests/core/published/*.test.ts'];

const names = (folder) =>
	readdirSync(`src/core/${folder}`)
		.map((file) => file.replace(/\.ts$/, ''))
		.filter((name) => !NOT_MUTATED.has(name));
const testOf = (rule) => `tests/core/rules/${rule}.test.ts`;

const rules = names('rules');
const isRule = (name) => readFileSync(`src/core/rules/${name}.ts`, 'utf8').includes('defineRule(') && existsSync(testOf(name));
const own = rules.filter(isRule);
const shared = rules.filter((name) => !isRule(name));
const asked = process.argv.slice(2);
const wanted = (name, group) => asked.length === 0 || asked.includes(name) || asked.includes(group);

/** @type {{ name: string, mutate: string[], tests: string[] }[]} */
const portions = [];
const ownWanted = own.filter((name) => wanted(name, 'rules'));
for (let i = 0; i < ownWanted.length; i += PER_PORTION) {
	const portion = ownWanted.slice(i, i + PER_PORTION);
	portions.push({
		name: portion.length === 1 ? portion[0] : `${portion[0]}..${portion.at(-1)}`,
		mutate: portion.map((name) => `src/core/rules/${name}.ts`),
		tests: portion.map(testOf)
	});
}
const sharedWanted = shared.filter((name) => wanted(name, 'shared'));
if (sharedWanted.length > 0)
	portions.push({ name: 'shared', mutate: sharedWanted.map((name) => `src/core/rules/${name}.ts`), tests: [RULE_TESTS] });
const solver = names('solver').filter((name) => wanted(name, 'solver'));
if (solver.length > 0) portions.push({ name: 'solver', mutate: solver.map((name) => `src/core/solver/${name}.ts`), tests: SOLVER_TESTS });

if (portions.length === 0) throw new Error(`Nothing is called ${asked.join(', ')}.`);
mkdirSync(OUT, { recursive: true });

const totals = new Map();
for (const { name, mutate, tests } of portions) {
	process.env.MUTATION_TESTS = tests.join(',');
	const started = Date.now();
	const mutants = await new Stryker({ configFile: CONFIG, mutate, jsonReporter: { fileName: `${OUT}/${name}.json` } }).runMutationTest();
	console.log(`\n${name}, ${Math.round((Date.now() - started) / 1000)} s`);
	for (const file of mutate) tell(file, mutants);
}
for (const [group, { noticed, counted }] of totals)
	console.log(`\nsrc/core/${group}: ${percent(noticed, counted)} of ${counted} mutants noticed`);

/** One line by file, and one by mutant that lived. */
function tell(file, mutants) {
	const here = mutants.filter(({ fileName }) => fileName.endsWith(file));
	const noticed = here.filter(({ status }) => status === 'Killed' || status === 'Timeout').length;
	const lived = here.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
	const counted = noticed + lived.length;
	const group = file.split('/')[2];
	const total = totals.get(group) ?? { noticed: 0, counted: 0 };
	totals.set(group, { noticed: total.noticed + noticed, counted: total.counted + counted });
	const stuck = here.filter(({ status }) => status === 'Timeout').length;
	console.log(
		`${percent(noticed, counted).padStart(7)}  ${file} (${noticed} of ${counted}${stuck > 0 ? `, ${stuck} of them by never ending` : ''})`
	);
	for (const { location, mutatorName, replacement, status } of lived) {
		const as = String(replacement).replace(/\s+/g, ' ').slice(0, 100);
		console.log(
			`         ${file}:${location.start.line}:${location.start.column} ${mutatorName} → ${as}${status === 'NoCoverage' ? ' (not reached)' : ''}`
		);
	}
}

function percent(part, whole) {
	return whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;
}
