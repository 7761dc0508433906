/** Schemas are compiled by "new Function" unless told otherwise, which the page's security policy refuses. */
import * as z from 'zod';

z.config({ jitless: true });
