/** The window in German: fetched only where it is read. */
import type { Catalogues } from '../language/language.svelte.ts';
import { languageDe } from './language.ts';

export const CATALOGUES: Catalogues = {
	language: languageDe
};
