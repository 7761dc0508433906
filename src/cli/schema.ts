/** Writes the JSON Schema of the file format to where the site serves it. */
import { writeFileSync } from 'node:fs';
import { diagramJsonSchema } from '#core/diagram';

writeFileSync(new URL('../../static/diagram.schema.json', import.meta.url), `${JSON.stringify(diagramJsonSchema(), null, '\t')}\n`);
