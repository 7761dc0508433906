/** Installs the locked dependencies when they are missing or older than the lock file. Plain Node: runs before any package is there. */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

const LOCK = 'package-lock.json';
const INSTALLED = 'node_modules/.package-lock.json';

export function install() {
	const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
	if (major < 20 || (major === 20 && minor < 19)) {
		console.error(
			`Node.js 20.19 or newer is needed; this is ${process.versions.node}. Install a newer one from your system's packages or nodejs.org.`
		);
		process.exit(1);
	}
	if (existsSync(INSTALLED) && statSync(INSTALLED).mtimeMs >= statSync(LOCK).mtimeMs) return;

	console.log('Installing dependencies …');
	const run = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
		stdio: 'inherit',
		shell: process.platform === 'win32'
	});
	if (run.status !== 0) {
		console.error('The dependencies could not be installed: is the npm registry reachable? Nothing else was changed.');
		process.exit(run.status ?? 1);
	}
}
