/** Words of the table of operating cases and of the day's energy. */
import type { CaseFigure } from '#core/explain';
import { catalogue } from '../language/catalogue.ts';

export const useTexts = catalogue('use', {
	title: 'Operating cases and energy',
	tabs: 'What to see',
	cases: 'Operating cases',
	energy: 'A day of energy',
	openCases: 'Cases as a table',
	openEnergy: 'A day of energy',

	table: {
		label: 'What is on in each case',
		hint: 'Percent of the rated draw or output; an empty field follows the row “All”. Arrow keys walk the table; Enter takes what you typed.',
		part: 'Part',
		none: 'No case yet. A case says what is on: without one no current is known. Add an empty one, or take a suggestion.',
		add: 'Add a case',
		suggested: 'Suggested',
		suggest: (name: string) => `Add “${name}”`,
		duplicate: (name: string) => `Copy “${name}”`,
		copyName: (name: string) => `${name}, copy`,
		remove: (name: string) => `Remove “${name}”`,
		name: (name: string) => `Name of “${name}”`,
		duration: (name: string) => `How long “${name}” lasts`,
		battery: (name: string) => `Batteries in “${name}”`,
		all: { loads: 'All loads', sources: 'All sources' },
		cell: (part: string, name: string) => `${part} in “${name}”`,
		starts: (part: string, name: string) => `${part} starts in “${name}”`,
		startsShort: 'starts',
		results: 'What it comes to',
		figures: {
			battery: 'Batteries deliver',
			loading: 'Conductor loaded most',
			volts: 'Load with the least volts'
		} satisfies Record<CaseFigure, string>,
		noPoint: 'no voltage at which all are fed',
		waiting: '…'
	},

	day: {
		use: 'Used in a day',
		bring: 'Brought in a day',
		bank: 'The bank may give',
		lasts: 'Lasts alone',
		lastsWith: 'Lasts with its sources',
		chart: (use: string, bring: string, usable: string) => `In a day ${use} are used and ${bring} brought; the bank may give ${usable}.`,
		days: (days: string) => `${days} days`,
		noLimit: 'without end',
		nothing: 'no use given yet',
		begin:
			'Give each load the hours it is on in a day, and each charger the hours it charges: how long the bank lasts follows. What is not given is not counted.',
		loads: 'Loads',
		sources: 'Charging',
		batteries: 'Batteries',
		total: 'Together',
		part: 'Part',
		given: 'Given',
		notGiven: 'not counted: hours not given',
		elsewhere: 'not fed by the bank',
		noLoads: 'No load yet whose use could be counted. Put loads on the sheet, then give the hours they run in a day here.',
		noSources: 'Nothing charges the bank yet: a solar controller, an alternator, or a mains or DC-DC charger would, with its hours a day.',
		noBank: 'No battery yet. The bank is what the day is measured against.',
		keptForEngine: 'kept to start an engine: not counted',
		show: 'Show the finding'
	}
});
