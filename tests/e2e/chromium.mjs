/** Where the browser for the tests is, how to get one, and the flags it needs on closed networks. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const CANDIDATES = [
	'/usr/bin/chromium',
	'/usr/bin/chromium-browser',
	'/usr/bin/google-chrome',
	'/Applications/Chromium.app/Contents/MacOS/Chromium'
];

/** Without the background flags, a browser on a closed network retries its own look-ups and starves the page. */
export const CHROMIUM_FLAGS = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];

export const findChromium = () => [process.env.CHROMIUM, ...CANDIDATES].find((path) => path && existsSync(path)) ?? null;

/** Debian and its kin have it as a package; elsewhere Playwright's own copy is tried. */
export function installChromium() {
	console.log('Installing Chromium …');
	const quiet = { stdio: ['ignore', 'ignore', 'inherit'] };
	if (existsSync('/usr/bin/apt-get')) {
		const sudo = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
		const apt = (...args) => {
			const [command, ...rest] = [...sudo, 'apt-get', '-qq', ...args];
			return spawnSync(command, rest, { ...quiet, env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
		};
		apt('update');
		apt('install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
		return findChromium();
	}
	spawnSync('npx', ['playwright', 'install', 'chromium'], quiet);
	const where = spawnSync('node', ['-e', "console.log(require('playwright-core').chromium.executablePath())"], { encoding: 'utf8' });
	const path = where.stdout?.trim();
	return path && existsSync(path) ? path : null;
}
