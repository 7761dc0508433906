/** Writes the catalogue of rules to where the site serves it. */
import { writeFileSync } from 'node:fs';
import { ruleCatalogue } from '#core/rules';

writeFileSync(new URL('../../static/rules.json', import.meta.url), `${JSON.stringify(ruleCatalogue(), null, '\t')}\n`);
