/** Words of where parts stand, and of what was seen at each end of a conductor. */
import { catalogue } from './language/catalogue.ts';

export const siteTexts = catalogue('site', {
	site: 'Place and protection',
	siteSummary: 'heat, water, vapour, covers',
	joints: 'Lugs and joints',
	jointsSummary: 'holes, torque, strands',
	hole: (end: string) => `Hole of the lug at ${end}`,
	fits: 'made for the stud',
	torque: (end: string) => `Torque measured at ${end}`,
	notRecorded: 'not recorded',
	solid: 'One solid wire, no strands',
	noRules: 'No rule here looks at this',
	noRule: (title: string, reason: string) => `${title}: not checked. ${reason}`
});
