/**
 * Random tests draw the same cases in every run, so that a change that broke nothing never fails and one that fails
 * fails again. Other cases: `DRAWS=n npm run unit`; a new n by the clock: `DRAWS=new` (as in `npm run test:long`).
 */
import * as fc from 'fast-check';

const asked = process.env.DRAWS ?? '1';
const seed = asked === 'new' ? Date.now() % 2 ** 31 : Number(asked);
fc.configureGlobal({ seed });
