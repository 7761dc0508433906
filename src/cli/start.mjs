/**
 * `npm start`: everything from a clean clone to a running editor. Installs what the lock file names if that has
 * not been done, builds, serves the build on this machine only, and prints the address.
 */
import { spawnSync } from 'node:child_process';
import { install } from './install.mjs';

const PORT = process.env.PORT ?? '4173';

install();
console.log('Building the editor …');
const build = spawnSync('npx', ['vite', 'build', '--logLevel', 'warn'], {
	stdio: ['ignore', 'inherit', 'inherit'],
	shell: process.platform === 'win32'
});
if (build.status !== 0) {
	console.error('The build failed; the lines above say why. Run "npm test" for a full check.');
	process.exit(build.status ?? 1);
}

const { preview } = await import('vite');
const server = await preview({ preview: { port: Number(PORT), host: '127.0.0.1' }, logLevel: 'warn' });
console.log(`\n  Wireworthy is running at  ${server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${PORT}/`}`);
console.log('  Your diagrams stay on this machine. Stop with Ctrl+C.\n');
