/**
 * Changes the rules and the solver in small ways and sees whether their tests notice:
 *
 *     npm run mutation                          everything (a few minutes)
 *     npm run mutation -- voltage-drop solver   these rules, this folder
 *     npm run mutation -- --thresholds rules    comparisons and arithmetic only
 *
 * Left out are texts and object literals (every rule's test compares its sentences word by word) and what runs once on
 * loading (titles, sources). Prints the score by file and the mutants that lived; reports stay in test-results/mutation.
 */
import { mkdirSync, readdirSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';
import { isThreshold, OTHER_MUTATORS } from './thresholds.mjs';

const CONFIG = 'tests/mutation/stryker.json';
const OUT = 'test-results/mutation';
/** Lists, types and doors: nothing in them decides. */
const NOT_MUTATED = new Set(['index', 'list', 'types', 'define', 'finding', 'study', 'not-implemented', 'catalogue']);

const TESTS = {
	// Lists and what is served are compared with the folder, which a sandbox may not have whole.
	rules: ['tests/core/rules/*.test.ts', '!tests/core/rules/{list,catalogue}.test.ts'],
	// With shorts, which ask it for resistances; without the large networks, which would be solved again for each mutant.
	solver: ['tests/core/{solver,published}/*.test.ts', 'tests/core/faults/short.test.ts', '!tests/core/solver/large.test.ts']
};

const thresholdsOnly = process.argv.includes('--thresholds');
const asked = process.argv.slice(2).filter((word) => word !== '--thresholds');
const wanted = (folder, name) => asked.length === 0 || asked.includes(folder) || asked.includes(name);

mkdirSync(OUT, { recursive: true });
for (const [folder, tests] of Object.entries(TESTS)) {
	const mutate = readdirSync(`src/core/${folder}`)
		.map((file) => file.replace(/\.ts$/, ''))
		.filter((name) => !NOT_MUTATED.has(name) && wanted(folder, name))
		.map((name) => `src/core/${folder}/${name}.ts`);
	if (mutate.length === 0) continue;

	process.env.MUTATION_TESTS = tests.join(' ');
	process.env.MUTATION_MOST_RUNS = folder === 'solver' ? '60' : '80';
	process.env.MUTATION_THRESHOLDS = thresholdsOnly ? '1' : '';
	const started = Date.now();
	const mutants = await new Stryker({
		configFile: CONFIG,
		mutate,
		// Two runs at once must not clear each other's copies away.
		tempDirName: `${OUT}/sandbox-${process.pid}`,
		...(thresholdsOnly ? { mutator: { excludedMutations: OTHER_MUTATORS } } : {}),
		jsonReporter: { fileName: `${OUT}/${[folder, ...(thresholdsOnly ? ['thresholds'] : []), ...asked].join('-').slice(0, 80)}.json` }
	}).runMutationTest();
	const scores = mutate.map((file) => tell(file, mutants));
	const sum = (field) => scores.reduce((total, score) => total + score[field], 0);
	console.log(
		`\nsrc/core/${folder}: ${percent(sum('noticed'), sum('counted'))} of ${sum('counted')} mutants noticed, ${Math.round((Date.now() - started) / 1000)} s\n`
	);
}

/** One line by file, and one by mutant that lived. */
function tell(file, mutants) {
	const here = mutants.filter(({ fileName }) => fileName.endsWith(file)).filter((mutant) => !thresholdsOnly || isThreshold(mutant));
	const lived = here.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
	const endless = here.filter(({ status }) => status === 'Timeout').length;
	const noticed = here.filter(({ status }) => status === 'Killed').length + endless;
	const counted = noticed + lived.length;
	const how = endless > 0 ? `, ${endless} of them by never ending` : '';
	console.log(`${percent(noticed, counted).padStart(7)}  ${file} (${noticed} of ${counted}${how})`);
	for (const { location, mutatorName, replacement, status } of lived) {
		const as = String(replacement).replace(/\s+/g, ' ').slice(0, 100);
		const place = `${file}:${location.start.line}:${location.start.column}`;
		console.log(`         ${place} ${mutatorName} → ${as}${status === 'NoCoverage' ? ' (not reached)' : ''}`);
	}
	return { noticed, counted };
}

function percent(part, whole) {
	return whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;
}
