/** Writes the example files and their list: npm run examples */
import { writeFileSync } from 'node:fs';
import { serializeDiagram } from '#core/diagram';
import { EXAMPLES } from '#core/examples';
import { BUILDERS } from './all.ts';

for (const [name, build] of Object.entries(BUILDERS)) writeFileSync(`static/examples/${name}.json`, serializeDiagram(build()));
writeFileSync('static/examples/index.json', `${JSON.stringify(EXAMPLES, null, '\t')}\n`);
