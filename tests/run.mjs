/**
 * `npm test`: installs what is missing (packages, a browser), then runs every check in order, cheapest first.
 * All steps run even when one fails, so that one run shows everything. Plain Node: runs before any package is there.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { install } from '../src/cli/install.mjs';
import { findChromium, installChromium } from './e2e/chromium.mjs';
import { hasPoppler, installPoppler } from './poppler.mjs';

const RESULTS = 'test-results';

install();
const chromium = findChromium() ?? installChromium();
if (!chromium) {
	console.error('No Chromium was found and none could be installed. Install it from your system’s packages, or set CHROMIUM to its path.');
	process.exit(1);
}
if (!hasPoppler() && !installPoppler()) {
	console.error('The packet’s tests need pdftotext, pdffonts and pdfinfo: install poppler-utils from your system’s packages.');
	process.exit(1);
}
rmSync(RESULTS, { recursive: true, force: true });

const steps = [
	['types', 'npm', ['run', '--silent', 'types']],
	['lint', 'npm', ['run', '--silent', 'lint']],
	['import rules', 'npm', ['run', '--silent', 'imports']],
	['unit tests', 'npx', ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${RESULTS}/unit.json`]],
	['build', 'npx', ['vite', 'build', '--logLevel', 'warn']],
	// One more try for what a busy machine let slip; what needed it is named, as a bug still to be found.
	['browser tests', 'npx', ['playwright', 'test', '--config', 'tests/e2e/playwright.config.ts', '--retries', '1']]
];

const failed = [];
for (const [name, command, args] of steps) {
	console.log(`\n── ${name}`);
	const start = Date.now();
	const { status } = spawnSync(command, args, {
		stdio: ['ignore', 'inherit', 'inherit'],
		env: { ...process.env, CHROMIUM: chromium, NO_COLOR: '1' },
		shell: process.platform === 'win32'
	});
	if (status !== 0) failed.push(name);
	console.log(`── ${name}: ${status === 0 ? 'ok' : 'FAILED'} (${((Date.now() - start) / 1000).toFixed(1)} s)`);
}

const unit = count(`${RESULTS}/unit.json`, (report) => [report.numPassedTests, report.numFailedTests]);
const browser = count(`${RESULTS}/browser.json`, ({ stats }) => [stats.expected + stats.flaky, stats.unexpected, stats.flaky]);
if (browser.secondTry > 0)
	console.log(`\n${browser.secondTry} of the browser tests passed only at the second try: a bug in them, or in the program.`);
if (failed.length > 0) console.log(`\nFailed: ${failed.join(', ')}`);
console.log(`\n${unit.passed + browser.passed} passed, ${unit.failed + browser.failed} failed`);
process.exit(failed.length > 0 ? 1 : 0);

function count(file, read) {
	try {
		const [passed, failedTests, secondTry = 0] = read(JSON.parse(readFileSync(file, 'utf8')));
		return { passed, failed: failedTests, secondTry };
	} catch {
		return { passed: 0, failed: 1, secondTry: 0 };
	}
}
