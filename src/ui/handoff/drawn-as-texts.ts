/** Words of the choice between outlines and symbols on paper. */
import { catalogue } from '../language/catalogue.ts';

export const drawnAsTexts = catalogue('drawn-as', {
	label: 'Parts drawn as',
	unverified: 'Symbols are drawn from memory of IEC 60617 and not yet verified.',
	ways: { outlines: 'outlines, to scale', symbols: 'symbols' }
});
