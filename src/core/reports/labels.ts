/** Texts of the labels: both ends of every conductor, every part, and what must be read before hands go in. */
import { gaugeText } from '#core/conductors';
import { deviceName, devicesOf, partName } from '#core/rules';
import { fuseFamily } from '#core/tables';
import { ampsText } from '#core/units';
import type { ConductorId } from '#core/diagram';
import { conductorIds, protectorsOf } from './conductors.ts';
import { endOf } from './ends.ts';
import type { ReportInput } from './input.ts';
import { table, textColumn, type Row } from './table.ts';

type ColumnId = 'text' | 'detail' | 'small' | 'place';

const COLUMNS = [
	textColumn('text', 'Text', 1),
	textColumn('detail', 'Second line', 2),
	textColumn('small', 'Third line', 2),
	textColumn('place', 'Where it goes', 2)
];

export function conductorLabels(input: ReportInput) {
	const { study, diagram } = input;
	const rows = conductorIds(input).flatMap((id): Row<ColumnId>[] => {
		const [from, to] = [endOf(study, id, 'from'), endOf(study, id, 'to')];
		const devices = protectors(input, id);
		const text = diagram.conductors[id]!.label.trim();
		const cells = {
			text: text === '' ? '(no designation)' : text,
			detail: `${from.place} → ${to.place}`,
			small: [gaugeText(diagram.conductors[id]!.gauge), ...(devices.length === 0 || devices.length > 2 ? [] : [devices.join(' + ')])].join(
				' · '
			)
		};
		return [from, to].map(({ place }) => ({ cells: { ...cells, place } }));
	});
	return table<ColumnId>({
		id: 'conductor-labels',
		title: 'Conductor labels',
		lead: 'Two of each, one for each end.',
		columns: COLUMNS,
		rows,
		whenEmpty: 'The diagram has no conductors.',
		notes: []
	});
}

/** A label has room for two. */
function protectors({ study, check }: ReportInput, id: ConductorId): string[] {
	const letThroughA = check.conductors[id]?.letThroughA ?? 0;
	return letThroughA > 0 && letThroughA < Infinity ? protectorsOf(study, id) : [];
}

export function partLabels({ study }: ReportInput) {
	const devices = devicesOf(study).map(({ device, origin }) => ({
		text: deviceName(study, origin),
		detail: ampsText(device.ratingA),
		small: device.family === null ? device.kind : fuseFamily(device.family).name,
		place: deviceName(study, origin)
	}));
	const named = new Set(devices.map(({ text }) => text));
	const parts = study.parts
		.map((part) => ({
			text: partName(part),
			detail: part.definition ? part.name : '',
			small: part.definition ? part.summary : '',
			place: partName(part)
		}))
		.filter(({ text }) => !named.has(text));
	return table<ColumnId>({
		id: 'part-labels',
		title: 'Part and fuse labels',
		columns: COLUMNS,
		rows: [...parts, ...devices].map((cells) => ({ cells })),
		whenEmpty: 'The diagram has no parts.',
		notes: []
	});
}

export function warningLabels({ study }: ReportInput) {
	const { batteries, sources } = study.network;
	const chargers = new Set(sources.filter(({ fedBy }) => fedBy === null).map(({ part }) => part));
	const switches = study.parts.filter(({ links }) => links.some(({ kind }) => kind === 'switch'));
	const rows: Row<ColumnId>[] = [];
	const add = (text: string, detail: string, small: string, place: string) => rows.push({ cells: { text, detail, small, place } });
	if (batteries.length > 0)
		add(
			'Battery',
			'Cannot be switched off. A tool across its posts welds and burns.',
			'Cover both posts before work.',
			'on each battery compartment'
		);
	for (const part of switches)
		add('Disconnect', partName(part), 'Chargers and converters can keep the far side live.', `beside ${partName(part)}`);
	if (chargers.size + batteries.length > 1)
		add(
			'More than one source',
			[...new Set([...batteries.map(({ part }) => part), ...chargers])].map((id) => partName(study.part(id))).join(', '),
			'Isolate all of them before work.',
			'beside the main disconnect'
		);
	return table<ColumnId>({
		id: 'warning-labels',
		title: 'Warning labels',
		columns: COLUMNS,
		rows,
		whenEmpty: 'The diagram has no source.',
		notes: []
	});
}
