/**
 * `npm run bench`: runs each benchmark of this folder in a process of its own and prints its table. Figures are
 * ratios against a reference measured in the same run; wall times alone say little on a shared machine.
 * `npm run bench -- solver` runs those whose name contains "solver".
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install } from '../../src/cli/install.mjs';

install();
const folder = dirname(fileURLToPath(import.meta.url));
const wanted = process.argv.slice(2);
const benches = readdirSync(folder)
	.filter((file) => file.endsWith('.ts'))
	.filter((file) => wanted.length === 0 || wanted.some((word) => file.includes(word)));

let failed = 0;
for (const file of benches) {
	console.log(`\n── ${file}`);
	const { status } = spawnSync('npx', ['tsx', '--expose-gc', join(folder, file)], { stdio: ['ignore', 'inherit', 'inherit'] });
	if (status !== 0) failed++;
}
if (benches.length === 0) console.error(`No benchmark matches ${wanted.join(', ')}.`);
process.exit(failed > 0 || benches.length === 0 ? 1 : 0);
