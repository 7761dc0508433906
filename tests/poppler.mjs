/** The tools that read the packet's PDF back in tests (poppler), and how to get them. */
import { spawnSync } from 'node:child_process';

export const hasPoppler = () => spawnSync('pdftotext', ['-v'], { stdio: 'ignore' }).error === undefined;

/** Debian and its kin, and Homebrew, have it as a package. True when it is there afterwards. */
export function installPoppler() {
	console.log('Installing poppler …');
	const quiet = { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
	const sudo = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
	const apt = (...args) => {
		const [command, ...rest] = [...sudo, 'apt-get', '-qq', ...args];
		return spawnSync(command, rest, quiet);
	};
	apt('update');
	if (apt('install', '-y', '--no-install-recommends', 'poppler-utils').status !== 0) spawnSync('brew', ['install', 'poppler'], quiet);
	return hasPoppler();
}
