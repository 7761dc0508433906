/**
 * Checks a careful surveyor makes that no rule here makes, and why. Shown beside the rules, so that silence is not
 * read as "checked and fine". What becomes a rule is taken off this list.
 */
import type { RuleMeta } from './define.ts';

export interface NotImplemented {
	/** The requirement, as a rule's title would say it. */
	readonly title: string;
	readonly group: RuleMeta['group'];
	readonly reason: string;
}

const NO_DATA = 'The diagram does not hold what it needs: ';

export const NOT_IMPLEMENTED: readonly NotImplemented[] = [
	{
		title: 'AC and DC conductors keep apart',
		group: 'conductors',
		reason: `${NO_DATA}ducts and the AC conductors in them.`
	},
	{
		title: 'Insulation suits oil, sun and heat of the place',
		group: 'conductors',
		reason: `${NO_DATA}type of insulation. Its temperature is counted in the amperage.`
	},
	{
		title: 'Conductors are of copper',
		group: 'conductors',
		reason: 'Copper is taken for granted: every resistance and amperage here is that of copper.'
	},
	{
		title: 'Lugs and conductors are of one system of sizes',
		group: 'conductors',
		reason: `${NO_DATA}the size a lug’s barrel is made for.`
	},
	{
		title: 'A bank is tapped at opposite ends',
		group: 'batteries',
		reason: 'Its effect, unequal currents, is worked out and reported; where to tap is one way among others to put it right.'
	},
	{
		title: 'Chargers act through the battery’s electronics',
		group: 'batteries',
		reason: 'Electronics are taken as part of the battery; no terminal by-passes them on the drawing.'
	},
	{
		title: 'Batteries are secured and their posts covered',
		group: 'batteries',
		reason: 'To be seen on site, not on a drawing.'
	},
	{
		title: 'Arrays are connected after the battery and removed before it',
		group: 'batteries',
		reason: 'An order of work, not a state of the drawing: it belongs to the assembly order.'
	},
	{
		title: 'A controller’s load output is not overloaded',
		group: 'batteries',
		reason: 'No part here has such an output; loads are drawn on the battery side.'
	},
	{
		title: 'Controllers agree on which pole is common',
		group: 'batteries',
		reason: `${NO_DATA}which pole a controller joins inside. One that does not block is counted as feeding its array.`
	},
	{
		title: 'Every fused position has a free stud for its return',
		group: 'studs',
		reason: 'Returns may share a stud within its limit, which is checked.'
	},
	{
		title: 'Conductors are supported, bent gently and led through grommets',
		group: 'studs',
		reason: 'The drawing is no map of where conductors run. Room under covers is checked.'
	},
	{ title: 'Metals in contact go together', group: 'studs', reason: `${NO_DATA}plating of lugs, bars and washers.` },
	{
		title: 'Crimps are made with the tool for their lug',
		group: 'studs',
		reason: 'To be seen and pulled on site, not on a drawing.'
	},
	{
		title: 'What is built is what is drawn',
		group: 'documents',
		reason: 'To be compared on site. Torques that were read may be entered and are checked.'
	},
	{
		title: 'Labels in lists name what is on the drawing',
		group: 'documents',
		reason: 'Lists are made from the drawing itself, so that they cannot differ.'
	},
	{
		title: 'A revision says what has changed',
		group: 'documents',
		reason: 'A file holds one state of the diagram; what changed since another is shown by comparing the two.'
	}
];
