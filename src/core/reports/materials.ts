/** What to buy: in generic words, grouped as a counter keeps it. */
import { areaMm2, gaugeText } from '#core/conductors';
import type { Gauge } from '#core/diagram';
import { deviceKind, devicesOf, deviceName, partName } from '#core/rules';
import { fuseFamily } from '#core/tables';
import { ampsText, celsiusText, decimalText } from '#core/units';
import { colourName, conductorIds } from './conductors.ts';
import { cutLength } from './cut-length.ts';
import { endOf, heatShrinkFor } from './ends.ts';
import { sparesOf } from './fuses.ts';
import { shownNumber, shownUnit } from './cell-text.ts';
import type { ReportInput } from './input.ts';
import { stacksInOrder } from './studs.ts';
import { handColumn, numberColumn, table, textColumn, type Row } from './table.ts';
import { naturally } from './words.ts';

/** Bought beyond what is cut: common practice, no source. */
const REEL_WASTE = 1.05;
const TUBING_WASTE = 1.05;

type ColumnId = 'item' | 'standard' | 'quantity' | 'unit' | 'used' | 'supplier' | 'received';

interface Line {
	readonly item: string;
	readonly standard: string;
	/** Of one use; lines of one item are added up. */
	readonly quantity: number;
	readonly unit: string;
	readonly used: string;
	/** Lines are put in this order within their group. */
	readonly rank: number;
}

export function billOfMaterials(input: ReportInput) {
	const groups: readonly (readonly [group: string, lines: readonly Line[], finish?: (quantity: number) => number])[] = [
		['Cable', cables(input), (m) => Math.ceil(m * REEL_WASTE * 10) / 10],
		['Lugs, rings and ferrules', fittings(input)],
		['Heat-shrink, adhesive-lined, 3 : 1', heatShrink(input), (m) => Math.ceil(m * TUBING_WASTE * 10) / 10],
		['Fuses, fitted and spare', fuses(input)],
		['Parts', parts(input)],
		['Hardware of the studs, where it does not come with the part', hardware(input)],
		['Labels', labels(input)]
	];
	return table<ColumnId>({
		id: 'bill-of-materials',
		title: 'Bill of materials',
		columns: [
			textColumn('item', 'Item', 2.6),
			textColumn('standard', 'Standard, ratings', 2),
			numberColumn('quantity', 'Quantity', '', { weight: 0.8 }),
			textColumn('unit', 'Unit', 0.6),
			textColumn('used', 'Where used', 2.4),
			handColumn('supplier', 'Supplier, price', 1.4),
			handColumn('received', 'Received', 0.8)
		],
		rows: groups.flatMap(([group, lines, finish]) => rowsOf(group, lines, finish)),
		whenEmpty: 'The diagram has nothing to buy yet.',
		notes: [
			'Cable: cut lengths and 5 % for the reel; conductors that are not measured are not counted. Heat-shrink: a piece over each lug and ring, and 5 %. Common practice, no source.',
			'Supports, clamps, grommets, conduit, covers and boots are chosen on the spot and are not listed.'
		]
	});
}

/** Equal items become one row, with the sum and every place of use. */
function rowsOf(group: string, lines: readonly Line[], finish: (quantity: number) => number = (quantity) => quantity): Row<ColumnId>[] {
	const byItem = new Map<string, Line[]>();
	for (const line of lines) {
		const key = `${line.item} ${line.standard}`;
		byItem.set(key, [...(byItem.get(key) ?? []), line]);
	}
	return [...byItem.values()]
		.sort(([a], [b]) => a!.rank - b!.rank || naturally(a!.item, b!.item))
		.map((alike) => {
			const { item, standard, unit } = alike[0]!;
			return {
				group,
				cells: {
					item,
					standard,
					quantity: shownNumber({ unit }, finish(alike.reduce((sum, { quantity }) => sum + quantity, 0))),
					unit: shownUnit({ unit }) ?? '',
					used: usedText([...new Set(alike.map(({ used }) => used))]),
					supplier: null,
					received: null
				}
			};
		});
}

/** Washers are everywhere; cables and lugs are named one by one. */
const MANY = 16;
const usedText = (uses: readonly string[]): string => (uses.length > MANY ? `${uses.length} places` : uses.join(', '));

const thickestFirst = (gauge: Gauge): number => -areaMm2(gauge);

function cables(input: ReportInput): Line[] {
	const { study, diagram } = input;
	return conductorIds(input).flatMap((id) => {
		const conductor = diagram.conductors[id]!;
		if (conductor.lengthM === null) return [];
		const panelEnds = (['from', 'to'] as const).filter((end) => endOf(study, id, end).inPanel).length;
		const { gauge, insulationC } = conductor;
		return [
			{
				item: `Cable ${gaugeText(gauge)}, ${colourName(input, id)}`,
				standard: `copper, ${gauge.system === 'awg' ? 'ASTM B258 size' : 'IEC 60228'}, ${celsiusText(insulationC)}`,
				quantity: cutLength(conductor, conductor.lengthM, panelEnds).cutM,
				unit: 'm',
				used: study.conductorName(id),
				rank: thickestFirst(gauge)
			}
		];
	});
}

function fittings(input: ReportInput): Line[] {
	const { study, diagram } = input;
	return conductorIds(input).flatMap((id) =>
		(['from', 'to'] as const).flatMap((end) => {
			const { fitting } = endOf(study, id, end);
			if (!fitting) return [];
			const { gauge } = diagram.conductors[id]!;
			const standard = { lug: 'tinned copper tube', ring: 'insulated, crimped', ferrule: 'insulated, crimped' }[fitting.kind];
			return [
				{ item: capital(fitting.text), standard, quantity: 1, unit: 'pcs', used: study.conductorName(id), rank: thickestFirst(gauge) }
			];
		})
	);
}

function heatShrink(input: ReportInput): Line[] {
	const { study, diagram } = input;
	return conductorIds(input).flatMap((id) =>
		(['from', 'to'] as const).flatMap((end) => {
			const { fitting } = endOf(study, id, end);
			if (!fitting || fitting.kind === 'ferrule') return [];
			const { tubing, suppliedMm, lengthMm } = heatShrinkFor(diagram.conductors[id]!.gauge);
			return [
				{
					item: `Heat-shrink ${tubing}`,
					standard: '',
					quantity: lengthMm / 1000,
					unit: 'm',
					used: study.conductorName(id),
					rank: -suppliedMm
				}
			];
		})
	);
}

function fuses({ study }: ReportInput): Line[] {
	const lines = devicesOf(study).flatMap(({ device, origin }): Line[] => {
		if (device.kind !== 'fuse') return [];
		return [
			{
				item: `${capital(deviceKind(device))} ${ampsText(device.ratingA)}`,
				standard: [
					device.family === null ? '' : fuseFamily(device.family).standard,
					device.ratedV === null ? '' : `at least ${decimalText(device.ratedV)} V`,
					device.breakingA === null ? '' : `breaks at least ${ampsText(device.breakingA)}`
				]
					.filter((text) => text !== '')
					.join(', '),
				quantity: 1,
				unit: 'pcs',
				used: deviceName(study, origin),
				rank: -device.ratingA
			}
		];
	});
	const spares = new Map<string, Line>();
	for (const { device } of devicesOf(study)) {
		const line = lines.find(({ item }) => item === `${capital(deviceKind(device))} ${ampsText(device.ratingA)}`);
		if (line) spares.set(`${line.item} ${line.standard}`, { ...line, quantity: sparesOf(device.family), used: 'spare' });
	}
	return [...lines, ...spares.values()];
}

function parts({ study }: ReportInput): Line[] {
	return study.parts.map((part, index) => ({
		item: part.name,
		standard: part.definition ? part.summary : 'of a kind this version does not know',
		quantity: 1,
		unit: 'pcs',
		used: partName(part),
		rank: index
	}));
}

function hardware({ study }: ReportInput): Line[] {
	const word = { washer: 'Flat washer', 'lock-washer': 'Spring washer', nut: 'Nut' } as const;
	return stacksInOrder(study).flatMap(({ key, layers, terminal }) =>
		layers.flatMap(({ item }, index) =>
			item.kind === 'washer' || item.kind === 'lock-washer' || item.kind === 'nut'
				? [
						{
							item: `${word[item.kind]} ${terminal.thread ?? ''}`.trim(),
							standard: '',
							quantity: 1,
							unit: 'pcs',
							used: study.studName(key),
							rank: index
						}
					]
				: []
		)
	);
}

const labels = ({ diagram }: ReportInput): Line[] =>
	Object.keys(diagram.conductors).length === 0
		? []
		: [
				{
					item: 'Conductor label, wrap-around, under clear heat-shrink',
					standard: '',
					quantity: 2 * Object.keys(diagram.conductors).length,
					unit: 'pcs',
					used: 'both ends of every conductor',
					rank: 0
				}
			];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
