/** Section by section: which tables, for whom. The drawing has no table; its sheets are made from the scene. */
import { assemblyTable } from './assembly.ts';
import { caseTable } from './cases.ts';
import { cautionTable } from './cautions.ts';
import { conductorSchedule, cutList } from './conductors.ts';
import { coverFacts } from './cover.ts';
import { energyTotals, loadList, sourceList } from './energy.ts';
import { assumptionTable, findingTable, notCheckedTable } from './findings.ts';
import { fuseSchedule } from './fuses.ts';
import type { ReportInput } from './input.ts';
import { keptReadings } from './kept-readings.ts';
import { conductorLabels, partLabels, warningLabels } from './labels.ts';
import { lugMatrix } from './lug-matrix.ts';
import { billOfMaterials } from './materials.ts';
import { revisionTable } from './revisions.ts';
import { SECTION_IDS, type Section, type SectionId } from './section.ts';
import { studSchedule } from './studs.ts';
import type { Table } from './table.ts';
import { plainTests, readings, signOff } from './tests.ts';

interface Spec extends Omit<Section, 'id' | 'tables'> {
	tables(input: ReportInput): readonly Table[];
}

const SPECS: Readonly<Record<SectionId, Spec>> = {
	cover: {
		title: 'Cover',
		purpose: 'What the system is, and what is in this packet.',
		orientation: 'portrait',
		layout: 'tables',
		tables: (input) => [coverFacts(input)]
	},
	drawing: {
		title: 'Wiring diagram',
		purpose: 'Where everything is and what leads where.',
		orientation: 'landscape',
		layout: 'tables',
		tables: () => []
	},
	fuses: {
		title: 'Fuse schedule',
		purpose: 'The first thing needed in trouble: which fuse guards what, and what to fit in its place.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [fuseSchedule(input)]
	},
	studs: {
		title: 'Stud schedule',
		purpose: 'What lies on each stud, in which order, and how tight it is.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [studSchedule(input)]
	},
	conductors: {
		title: 'Conductor schedule and cut list',
		purpose: 'Each conductor with its currents and protection, and how to cut and crimp it.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [conductorSchedule(input), cutList(input)]
	},
	cases: {
		title: 'Operating cases',
		purpose: 'What was on in each case, and the worst it brings.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [caseTable(input)]
	},
	findings: {
		title: 'Findings and waivers',
		purpose: 'What the check found, what was accepted and why, what was assumed and what was not looked at.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [findingTable(input), notCheckedTable(input), assumptionTable(input)]
	},
	assembly: {
		title: 'Assembly order',
		purpose: 'Step by step, nothing live before its protection.',
		orientation: 'landscape',
		layout: 'large',
		tables: (input) => [assemblyTable(input)]
	},
	tests: {
		title: 'Commissioning tests',
		purpose: 'What to measure before it is handed over, with the value the model expects.',
		orientation: 'portrait',
		layout: 'tables',
		tables: (input) => [plainTests(input), readings(input), keptReadings(input), signOff()].filter((made) => made !== null)
	},
	energy: {
		title: 'Loads and energy',
		purpose: 'What is used in a day, what is brought, how long the bank lasts.',
		orientation: 'landscape',
		layout: 'tables',
		tables: (input) => [loadList(input), sourceList(input), energyTotals(input)]
	},
	materials: {
		title: 'Bill of materials',
		purpose: 'What to buy.',
		orientation: 'portrait',
		layout: 'tables',
		tables: (input) => [billOfMaterials(input), lugMatrix(input)]
	},
	labels: {
		title: 'Labels',
		purpose: 'To print on adhesive stock at full size and cut along the lines.',
		orientation: 'portrait',
		layout: 'labels',
		tables: (input) => [conductorLabels(input), partLabels(input), warningLabels(input)]
	},
	revisions: {
		title: 'Revisions',
		purpose: 'What was issued when, by whom, and what changed.',
		orientation: 'portrait',
		layout: 'tables',
		tables: (input) => [revisionTable(input)]
	},
	cautions: {
		title: 'Cautions',
		purpose: 'To be read before anything is built or touched.',
		orientation: 'portrait',
		layout: 'tables',
		tables: () => [cautionTable()]
	}
};

/** Names without the work of making the tables, for a list to choose from. */
export const SECTIONS: readonly Omit<Section, 'tables'>[] = SECTION_IDS.map((id) => {
	const { title, purpose, orientation, layout } = SPECS[id];
	return { id, title, purpose, orientation, layout };
});

/** Sections of a packet, in its order. Plain data. */
export const sectionsOf = (input: ReportInput, ids: readonly SectionId[] = SECTION_IDS): Section[] =>
	SECTIONS.filter(({ id }) => ids.includes(id)).map((section) => ({ ...section, tables: SPECS[section.id].tables(input) }));
