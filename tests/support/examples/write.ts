/** Writes the example files: npm run examples */
import { writeFileSync } from 'node:fs';
import { serializeDiagram } from '#core/diagram';
import { BUILDERS } from './all.ts';

for (const [name, build] of Object.entries(BUILDERS)) writeFileSync(`static/examples/${name}.json`, serializeDiagram(build()));
