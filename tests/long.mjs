/**
 * `npm run test:long`: the tests that take long, in their long form, and the figures they print. A name after `--` runs
 * that one alone: `npm run test:long -- killed`. Each line of FORMS is one; its test reads LONG=1 from the environment.
 */
import { spawnSync } from 'node:child_process';

const browser = (spec) => ['npx', ['playwright', 'test', '--config', 'tests/e2e/playwright.config.ts', '--workers', '1', spec]];
const unit = (file) => ['npx', ['vitest', 'run', '--project', 'core', `tests/${file}.test.ts`]];

/** Name, what it does, how it is run, and with what in the environment. */
const FORMS = [
	['draws', 'every unit test, the random ones with cases not drawn before', ['npx', ['vitest', 'run']], { DRAWS: 'new', LONG: '' }],
	['killed', 'the page killed 200 times while editing', browser('e2e/killed.spec')],
	['files', '10,000 spoilt files, links, pasted pieces and pictures at every gate', unit('fuzz/files')],
	['load', '5,000 parts opened, edited, kept, saved and handed over (PARTS=n for another number)', browser('e2e/load.spec')],
	['edits', '1,000,000 random edits (EDITS=n for another number)', unit('fuzz/edits')]
];

const [wanted] = process.argv.slice(2);
const forms = FORMS.filter(([name]) => wanted === undefined || name === wanted);
if (forms.length === 0) {
	console.error(`There is no long test "${wanted}". There are: ${FORMS.map(([name]) => name).join(', ')}.`);
	process.exit(2);
}

const run = (command, args, more = {}) =>
	spawnSync(command, args, {
		stdio: ['ignore', 'inherit', 'inherit'],
		env: { ...process.env, LONG: '1', NO_COLOR: '1', ...more },
		shell: process.platform === 'win32'
	}).status;

if (run('npx', ['vite', 'build', '--logLevel', 'warn']) !== 0) process.exit(1);
const failed = [];
for (const [name, what, [command, args], more] of forms) {
	console.log(`\n── ${name}: ${what}`);
	const start = Date.now();
	const ok = run(command, args, more) === 0;
	if (!ok) failed.push(name);
	console.log(`── ${name}: ${ok ? 'ok' : 'FAILED'} (${((Date.now() - start) / 60_000).toFixed(1)} min)`);
}
console.log(failed.length === 0 ? '\nAll long tests passed.' : `\nFailed: ${failed.join(', ')}`);
process.exit(failed.length === 0 ? 0 : 1);
