/** What about a part somebody made cannot be, each beside the field that has to change. */
import { distance } from '#core/geometry';
import { millimetresText } from '#core/units';
import { endsOfRow, INSIDE, pairsOfRow, type DeviceRow, type LinkRow, type StudRow } from './rows.ts';
import type { OwnParams } from './params.ts';

export interface OwnFault {
	/** Field: "name", or list, line and field: "studs.2.leftMm". */
	readonly path: string;
	readonly text: string;
}

/** Nearer than this two terminals are one place for whoever draws. */
const APART_MM = 5;

export function ownFaults(part: OwnParams): OwnFault[] {
	return [
		...(part.name.trim() === '' ? [{ path: 'name', text: 'Give the part a name, by which it is found again.' }] : []),
		...(part.studs.length === 0 ? [{ path: 'studs', text: 'Add a stud or clamp: without one nothing can land on the part.' }] : []),
		...twice('studs', part.studs),
		...twice('links', part.links),
		...twice('devices', part.devices),
		...part.studs.flatMap((stud, index) => studFaults(part, stud, index)),
		...part.links.flatMap((row, index) => endFaults(part, 'links', row, index)),
		...part.devices.flatMap((row, index) => endFaults(part, 'devices', row, index))
	];
}

const twice = (list: string, rows: readonly { readonly id: string }[]): OwnFault[] =>
	rows.flatMap(({ id }, index) =>
		rows.findIndex((other) => other.id === id) < index
			? [{ path: `${list}.${index}.id`, text: `The id "${id}" is used twice in ${list}.` }]
			: []
	);

function studFaults({ studs, widthMm, heightMm }: OwnParams, stud: StudRow, index: number): OwnFault[] {
	const at = (field: string, text: string): OwnFault => ({ path: `studs.${index}.${field}`, text });
	const earlier = studs.slice(0, index);
	const near = earlier.find((other) => distance(placeOf(other), placeOf(stud)) < APART_MM);
	const name = stud.name.trim();
	return [
		...(name === '' ? [at('name', 'Give it a name: findings and lists say where a conductor lands.')] : []),
		...(name !== '' && earlier.some((other) => other.name.trim() === name) ? [at('name', `Another stud is called “${name}”.`)] : []),
		...(stud.leftMm > widthMm ? [at('leftMm', `It lies beyond the right edge: the part is ${millimetresText(widthMm)} wide.`)] : []),
		...(stud.topMm > heightMm ? [at('topMm', `It lies below the part, which is ${millimetresText(heightMm)} high.`)] : []),
		...(near ? [at('leftMm', `It stands where “${near.name}” stands: ${millimetresText(APART_MM)} apart is the least.`)] : [])
	];
}

const placeOf = ({ leftMm, topMm }: StudRow) => ({ x: leftMm, y: topMm });

function endFaults({ studs }: OwnParams, list: string, row: LinkRow | DeviceRow, index: number): OwnFault[] {
	const ends = endsOfRow(row);
	const isInside = (end: string) => (INSIDE as readonly string[]).includes(end);
	const wrong = ends.flatMap(([field, end]): OwnFault[] => {
		if (isInside(end) || studs.some(({ id }) => id === end)) return [];
		return [{ path: `${list}.${index}.${field}`, text: end === '' ? 'Choose a stud.' : `There is no stud "${end}".` }];
	});
	if (wrong.length > 0) return wrong;
	return pairsOfRow(row).flatMap(([[, a], [field, b]]) =>
		a === b ? [{ path: `${list}.${index}.${field}`, text: 'Both ends are at the same place: choose another stud.' }] : []
	);
}
