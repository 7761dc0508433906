/** What the system is and how far the check went, on the first sheet. */
import { countText } from '#core/check';
import { listed, partName } from '#core/rules';
import { compactNumber } from '#core/units';
import type { ReportInput } from './input.ts';
import { table, textColumn } from './table.ts';

/** Stands on every sheet, so that none of them alone reads as a clean bill. */
export const verdictOf = ({ check }: ReportInput): string =>
	`Checked against ${check.profileName}: ${countText(check.findings)}. Not an inspection.`;

const CRAFT = { vehicle: 'vehicle', boat: 'boat', cabin: 'cabin or station' } as const;
const NEGATIVE = { bonded: 'bonded to chassis or hull', insulated: 'insulated from chassis and hull' } as const;

export function coverFacts({ diagram, study, check, energy }: ReportInput) {
	const { network } = study;
	const names = (ids: readonly string[]): string =>
		listed(
			[...new Set(ids)].map((id) => `${partName(study.part(id))} (${study.part(id).summary})`),
			12
		);
	const outside = network.sources.filter(({ fedBy }) => fedBy === null).map(({ part }) => part);
	const rows: readonly (readonly [string, string])[] = [
		['Craft', [diagram.titleBlock.craft.trim(), CRAFT[diagram.system.craft]].filter((text) => text !== '').join(', ')],
		['System', `${diagram.system.nominalV} V DC, negative ${NEGATIVE[diagram.system.negative]}`],
		['Batteries', network.batteries.length === 0 ? 'none' : names(network.batteries.map(({ part }) => part))],
		[
			'Usable energy',
			`${compactNumber(energy.usableWh / 1000)} kWh, ${compactNumber(energy.usableAh)} Ah at ${compactNumber(energy.bankV)} V`
		],
		['Charging', outside.length === 0 ? 'none drawn' : names(outside)],
		[
			'Size',
			`${Object.keys(diagram.parts).length} parts, ${Object.keys(diagram.conductors).length} conductors, ${Object.keys(diagram.cases).length} operating cases`
		],
		['Checked against', check.profileName],
		['Findings', countText(check.findings)],
		[
			'Assumed',
			check.assumptions.length === 0
				? 'nothing'
				: `${check.assumptions.length} ${check.assumptions.length === 1 ? 'thing' : 'things'}, listed with the findings`
		],
		[
			'Not checked',
			`${check.notChecked.length} things, listed with the findings. Among them: the mains (AC) side, torque and crimps as built`
		],
		['Drawing', 'not to scale: parts are drawn at their size, and laid out so that conductors can be told apart']
	];
	return table({
		id: 'cover',
		title: 'The system',
		columns: [textColumn('what', '', 1), textColumn('value', '', 4)],
		rows: rows.map(([what, value]) => ({ cells: { what, value } })),
		whenEmpty: '',
		notes: []
	});
}
