/** The operating cases: what was assumed, and the worst each of them brings. */
import { deviceName, devicesOf, listed, partName, type CaseResult, type Study } from '#core/rules';
import type { ReportInput } from './input.ts';
import { numberColumn, table, textColumn } from './table.ts';
import { fixedText } from '#core/units';

export function caseTable({ study }: ReportInput) {
	const rows = study.cases.map((result) => {
		const { operatingCase, id, point } = result;
		const solved = point.status === 'solved';
		const name = operatingCase.label.trim() || id;
		const conductor = solved ? worstConductor(study, result) : null;
		const fuse = solved ? worstFuse(study, result) : null;
		const load = solved ? lowestLoad(study, result) : null;
		return {
			cells: {
				case: name,
				kind: operatingCase.duration,
				assumptions: assumptionsText(study, result),
				bank: solved ? bankA(study, result) : 'no operating point',
				batteries: solved
					? study.network.batteries.map(({ index, part }) => `${partName(study.part(part))} ${amps(point.batteryA[index]!)}`).join(', ')
					: null,
				sources: solved ? sum(point.sourceA.filter((_, index) => study.network.sources[index]!.fedBy === null)) : null,
				loadV: load?.volts ?? null,
				load: load?.name ?? null,
				conductorPercent: conductor?.percent ?? null,
				conductor: conductor?.name ?? null,
				fusePercent: fuse?.percent ?? null,
				fuse: fuse?.name ?? null
			}
		};
	});
	return table({
		id: 'case-table',
		title: 'Operating cases',
		lead: 'Amps of batteries are positive while they deliver, negative while they are charged.',
		columns: [
			textColumn('case', 'Case', 1.6),
			textColumn('kind', 'Lasts', 0.9),
			textColumn('assumptions', 'Assumed', 2.4),
			numberColumn('bank', 'Bank', 'A', { decimals: 1, weight: 0.8 }),
			textColumn('batteries', 'Each battery', 1.6),
			numberColumn('sources', 'Sources', 'A', { decimals: 1, weight: 0.8 }),
			numberColumn('loadV', 'Lowest load', 'V', { decimals: 2, weight: 0.8 }),
			textColumn('load', 'which', 1),
			numberColumn('conductorPercent', 'Fullest conductor', '%', { decimals: 0, weight: 0.9 }),
			textColumn('conductor', 'which', 0.9),
			numberColumn('fusePercent', 'Fullest fuse', '%', { decimals: 0, weight: 0.8 }),
			textColumn('fuse', 'which', 1.1)
		],
		rows,
		whenEmpty: 'The diagram has no operating case, so no current was worked out.',
		notes: [
			'Fullest conductor: current in percent of its amperage. Fullest fuse: current in percent of its rating. Surge cases last under three minutes.',
			...(study.cases.some(({ point }) => point.status !== 'solved')
				? ['No operating point: no voltage exists at which these loads can be fed.']
				: [])
		]
	});
}

/** Of a string its lowest block counts: the same amps pass all of them. */
const bankA = ({ network }: Study, { point }: CaseResult): number =>
	network.batteries
		.filter(({ negative }) => network.poles[negative] === 'negative')
		.reduce((total, { index }) => total + point.batteryA[index]!, 0);

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
const amps = (value: number): string => `${fixedText(value, 1)} A`.replace('-', '−').replace(/^−(0[.,]0 A)$/, '$1');

function assumptionsText({ part, diagram }: Study, { operatingCase }: CaseResult): string {
	const { loads, sources, levels, battery, starting } = operatingCase;
	const named = Object.entries(levels)
		.filter(([id]) => Object.hasOwn(diagram.parts, id))
		.map(([id, level]) => `${partName(part(id))} ${percent(level)}`);
	const starters = Object.keys(starting ?? {}).filter((id) => Object.hasOwn(diagram.parts, id));
	return [
		`Loads ${percent(loads)}, sources ${percent(sources)}`,
		...(named.length > 0 ? [named.join(', ')] : []),
		...(battery === 'low' ? ['batteries nearly empty'] : []),
		...(starters.length > 0 ? [`${listed(starters.map((id) => partName(part(id))))} starting`] : [])
	].join('; ');
}

const percent = (level: number): string => `${Math.round(level * 100)} %`;

function worstConductor({ conductors }: Study, { point }: CaseResult) {
	return greatest(
		conductors
			.filter(({ ampacity, conductor }) => ampacity.currentA > 0 && conductor.use !== 'cranking')
			.map(({ name, branch, ampacity }) => ({ name, percent: (Math.abs(point.branchA[branch.index]!) / ampacity.currentA) * 100 }))
	);
}

function worstFuse(study: Study, { point }: CaseResult) {
	return greatest(
		devicesOf(study).map(({ index, device, origin }) => ({
			name: deviceName(study, origin),
			percent: (Math.abs(point.branchA[index]!) / device.ratingA) * 100
		}))
	);
}

const greatest = <Item extends { readonly percent: number }>(items: readonly Item[]): Item | null =>
	items.reduce<Item | null>((most, item) => (most && most.percent >= item.percent ? most : item), null);

/** Against its rail's nominal voltage, so that a converter's 12 V does not count as low on 48 V. */
function lowestLoad({ network, part }: Study, { point }: CaseResult) {
	const fed = network.loads.filter(({ index }) => point.loadFed[index] && point.loadA[index]! > 1e-6);
	const nominal = (volts: number): number => [12, 24, 48].reduce((best, v) => (Math.abs(v - volts) < Math.abs(best - volts) ? v : best));
	return fed
		.map(({ index, part: id }) => ({
			name: partName(part(id)),
			volts: point.loadV[index]!,
			share: point.loadV[index]! / nominal(point.loadV[index]!)
		}))
		.reduce<{ name: string; volts: number; share: number } | null>((low, load) => (low && low.share <= load.share ? low : load), null);
}
