/** What everybody must read who builds from a drawing. */
import { numberColumn, table, textColumn } from './table.ts';

export const CAUTIONS: readonly string[] = [
	'Disconnect the batteries first, negative pole last on and first off where it is bonded, and check with a meter. A battery cannot be switched off: a dropped spanner across its studs welds and burns.',
	'Fit fuses before use, as near to the source as the rules you work under demand.',
	'Have the finished installation inspected by a licensed person. This program has not seen it.',
	'Local codes, the insurer’s conditions and makers’ instructions come first, whatever is shown here.',
	'A finding says what was compared with which table. No finding means that none of the checks made found anything; it never means that a system is safe.'
];

export const cautionTable = () =>
	table({
		id: 'cautions',
		title: 'Before you build from a drawing',
		columns: [numberColumn('number', 'No.', '', { decimals: 0, weight: 0.06 }), textColumn('text', 'Caution')],
		rows: CAUTIONS.map((text, index) => ({ cells: { number: index + 1, text } })),
		whenEmpty: '',
		notes: []
	});
