/**
 * `npm run release-check`: what has to hold before a version goes out, beside `npm test`: nothing uncommitted, every
 * locked package from the registry and sealed, licences and tables as they are now, no known hole in what is shipped.
 * Asks the registry; says so when it cannot.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const run = (command, args) => spawnSync(command, args, { encoding: 'utf8', shell: process.platform === 'win32' });

function nothingUncommitted() {
	const { stdout, status } = run('git', ['status', '--porcelain']);
	return status === 0 && stdout.trim() === '' ? null : stdout.trim() || 'This is no git repository.';
}

function lockIsSealed() {
	const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
	// A lock file may leave out where packages are from: then it is the registry that npm is set to.
	const open = Object.entries(packages).filter(
		([path, { resolved, integrity }]) =>
			path !== '' && !(integrity?.startsWith('sha512-') && (resolved === undefined || resolved.startsWith('https://')))
	);
	return open.length === 0 ? null : `Not from a registry, or without a checksum: ${open.map(([path]) => path).join(', ')}`;
}

function listsAreCurrent() {
	const { status, stdout } = run('npx', ['vitest', 'run', '--project', 'core', 'tests/cli/licences.test.ts']);
	return status === 0 ? null : stdout;
}

/** What is only used to build and test can do harm, too: it is told, but only what is shipped stops a release. */
function audit() {
	const shipped = auditOf(['--omit=dev']);
	if (typeof shipped === 'string') return shipped;
	const all = auditOf([]);
	if (typeof all !== 'string' && all.total > shipped.total)
		console.log(`   (in tools alone: ${all.total - shipped.total} known holes; "npm audit" lists them)`);
	return shipped.total === 0 ? null : `${shipped.total} known holes in what is shipped; "npm audit --omit=dev" lists them.`;
}

function auditOf(options) {
	const { stdout } = run('npm', ['audit', '--json', ...options]);
	try {
		const report = JSON.parse(stdout);
		return (
			report.metadata?.vulnerabilities ?? `The registry could not be asked: ${report.message ?? report.error?.summary ?? 'no answer'}.`
		);
	} catch {
		return 'The registry could not be asked.';
	}
}

let failed = 0;
for (const [name, check] of [
	['nothing uncommitted', nothingUncommitted],
	['every locked package from a registry, with its checksum', lockIsSealed],
	['licences and the table of dependencies are current', listsAreCurrent],
	['npm audit', audit]
]) {
	const fault = check();
	console.log(`${fault === null ? 'ok     ' : 'FAILED '} ${name}${fault === null ? '' : `\n${fault}`}`);
	if (fault !== null) failed += 1;
}
console.log(failed === 0 ? '\nReady, if "npm test" and "npm run test:long" pass.' : `\n${failed} failed.`);
process.exit(failed === 0 ? 0 : 1);
