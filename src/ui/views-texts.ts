/** Words of the ways to look at a drawing. */
import { catalogue } from './language/catalogue.ts';
export const viewsTexts = catalogue('views', {
	symbols: 'Symbols',
	symbolsHint: 'Symbols (IEC 60617) or outlines to scale',
	symbolsOn:
		'Symbols in place of outlines; conductors stay where they are. The symbols are drawn from memory of IEC 60617, not yet verified.',
	symbolsOff: 'Outlines to scale.',
	notLoaded: 'The symbols could not be fetched. Check the connection and try again.',
	find: 'Find',
	findHint: 'Find a part, conductor, stud or finding'
});
