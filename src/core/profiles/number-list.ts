import type { BundleStep, Sourced } from '#core/tables';
import { cellKey, type AmperageTable } from './amperage-tables.ts';
import { LIMITS, type LimitKey, type ProfileSpec } from './spec.ts';
import type { ProfileNumber } from './types.ts';

export const engineSpaceKey = (insulationC: number): string => `engine-space:${insulationC}`;
export const bundleKey = (from: number): string => `bundle:${from}`;
export const deviceKey = (size: string): string => `device:${size}`;

/** Steps that lower anything; one conductor alone is no bundle. */
export const bundleSteps = ({ bundle }: ProfileSpec): readonly BundleStep[] => bundle.value.filter(({ from }) => from > 1);

/** Every number of a profile under its key, with those put in their place by a custom profile. */
export function numberList(spec: ProfileSpec, given: Readonly<Record<string, number>>): ProfileNumber[] {
	const number = (key: string, words: Pick<ProfileNumber, 'title' | 'unit' | 'group'>, sourced: Sourced<number>): ProfileNumber => {
		const own = { key, ...words, ...sourced, changedFrom: null };
		if (!Object.hasOwn(given, key) || given[key] === sourced.value) return own;
		const source = `custom profile of this diagram, in place of ${sourced.value} ${words.unit} (${sourced.source})`;
		return { ...own, value: given[key]!, source, confidence: 'given', changedFrom: sourced.value };
	};
	const { limits, engineSpace, bundle, devicesBySize, amperage } = spec;
	return [
		...(Object.keys(LIMITS) as LimitKey[]).map((key) => number(key, LIMITS[key], limits[key])),
		...Object.entries(devicesBySize?.value ?? {}).map(([size, value]) =>
			number(
				deviceKey(size),
				{ title: `Greatest fuse or breaker on ${size} AWG`, unit: 'A', group: 'protection' },
				{ ...devicesBySize!, value }
			)
		),
		...(engineSpace?.factors ?? []).map(({ insulationC, factor }) =>
			number(engineSpaceKey(insulationC), { title: `Engine space, ${insulationC} °C insulation`, unit: '×', group: 'factors' }, factor)
		),
		...bundleSteps(spec).map(({ from, factor }) =>
			number(bundleKey(from), { title: `${from} conductors bundled, or more`, unit: '×', group: 'factors' }, { ...bundle, value: factor })
		),
		...[...new Set([amperage.single, amperage.together])]
			.flatMap(cells)
			.map(({ table, size, columnC, sourced }) =>
				number(
					cellKey(table, size, columnC),
					{ title: `${size} ${table.system === 'awg' ? 'AWG' : 'mm²'}, ${columnC} °C (${table.source})`, unit: 'A', group: 'amperage' },
					sourced
				)
			)
	];
}

function cells(table: AmperageTable) {
	return table.sizes.flatMap((size) =>
		table.columnsC.flatMap((columnC) => {
			const sourced = table.cell(size, columnC);
			return sourced ? [{ table, size, columnC, sourced }] : [];
		})
	);
}
