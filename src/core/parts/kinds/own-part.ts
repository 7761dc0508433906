import { definePart } from '../define.ts';
import { ownFaults } from '../own/faults.ts';
import { ownLinks } from '../own/links.ts';
import { ownBox, ownNameplate, ownOutline } from '../own/outline.ts';
import { ownParams } from '../own/params.ts';
import { ownSummary } from '../own/summary.ts';
import { ownTerminals } from '../own/terminals.ts';

/** A part of somebody's own: all that other kinds say in their definition, this one says in its parameters. */
export const ownPart = definePart({
	kind: 'own-part',
	name: 'Own part',
	help: 'A part made in the part maker: outline, studs, what joins them inside and what it draws or delivers are its own.',
	group: 'own',
	letter: 'A',
	params: ownParams,
	called: ({ name, letter }) => ({ name: name.trim() || 'Own part', letter }),
	faults: (part) => ownFaults(part).map(({ text }) => text),
	terminals: ownTerminals,
	links: ownLinks,
	outline: ownOutline,
	nameplate: ownNameplate,
	box: ownBox,
	summary: ownSummary
});
