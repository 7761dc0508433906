/** The parts of a packet, in the order of the folder: what is needed first in trouble comes first. */
import type { Table } from './table.ts';

export const SECTION_IDS = [
	'cover',
	'drawing',
	'fuses',
	'studs',
	'conductors',
	'cases',
	'findings',
	'assembly',
	'tests',
	'energy',
	'materials',
	'labels',
	'revisions',
	'cautions'
] as const;
export type SectionId = (typeof SECTION_IDS)[number];

export interface Section {
	readonly id: SectionId;
	readonly title: string;
	/** Who needs it and for what, in a sentence; goes into the contents. */
	readonly purpose: string;
	readonly tables: readonly Table[];
	/** Wide tables want a sheet that lies on its side. */
	readonly orientation: 'portrait' | 'landscape';
	/** Sheets of labels are cut up; steps are read at arm's length. */
	readonly layout: 'tables' | 'labels' | 'large';
}
