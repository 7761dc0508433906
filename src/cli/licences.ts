/** Writes the licences that the page shows under "About", and the table of dependencies in DEVELOPERS.md. */
import { readFileSync, writeFileSync } from 'node:fs';
import { dependencyTable, withTable } from './dependencies.ts';
import { shippedPackages } from './shipped.ts';

writeFileSync('static/licences.json', `${JSON.stringify(shippedPackages(), null, '\t')}\n`);
writeFileSync('DEVELOPERS.md', withTable(readFileSync('DEVELOPERS.md', 'utf8'), dependencyTable()));
