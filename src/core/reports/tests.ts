/** The commissioning sheet: what is measured, with the model's value beside each blank reading. */
import { deviceName, devicesOf, partName, type CaseResult, type Study } from '#core/rules';
import { ampsText, decimalText, kelvinText } from '#core/units';
import type { ReportInput } from './input.ts';
import { handColumn, numberColumn, table, textColumn } from './table.ts';
import { naturally } from './words.ts';

export function plainTests({ diagram }: ReportInput) {
	const rows: readonly (readonly [test: string, how: string, pass: string])[] = [
		['Look and pull', 'every crimp tugged by hand', 'nothing moves'],
		['Torque', 'each stud by the stud schedule, then a witness mark', 'within 15 % of what is asked'],
		[
			'Continuity',
			'dead; each conductor from end to end, labels read at both ends',
			`under ${decimalText(0.5)} Ω thin, under ${decimalText(0.05)} Ω from 6 AWG or 16 mm² up, leads included`
		],
		[
			'No unintended connection',
			'fuses out, loads off: plus to minus, and each to chassis',
			diagram.system.negative === 'bonded'
				? 'above 10 kΩ once capacitors have charged; minus to chassis only through its bond'
				: 'above 10 kΩ once capacitors have charged'
		],
		[
			'Insulation',
			'electronics disconnected; 250 V DC to chassis and to the other pole',
			`at least ${decimalText(0.5)} MΩ (IEC 60364-6 Table 6A, from memory); new work well above 10 MΩ`
		],
		['Polarity', 'at each device before it is connected', 'right way round'],
		['Fuses', 'value and kind by position against the fuse schedule', 'the same'],
		['Strings alike', 'volts of each string before they are put in parallel', `within ${decimalText(0.05)} V`],
		['Standing current', 'all loads off', `what the makers state, usually under ${decimalText(0.3)} A`],
		['Shunt', 'one known load on; its reading against a clamp meter', 'within 2 %; near nothing with all off'],
		['Disconnects', 'open each, and see what it opens', 'what its label says'],
		[
			'Temperature',
			'15 to 30 minutes at full load, by infrared',
			`joints at most ${kelvinText(30)} above the air, like ones within ${kelvinText(10)}`
		],
		['Alarms', 'low voltage, battery electronics, bilge, carbon monoxide, where fitted', 'each sounds']
	];
	return table({
		id: 'tests',
		title: 'Tests',
		lead: 'Pass limits are common practice, no source, where none is named.',
		columns: [
			textColumn('test', 'Test', 1.3),
			textColumn('how', 'How', 3),
			textColumn('pass', 'Passes when', 2.6),
			handColumn('result', 'Result', 1.4),
			handColumn('initials', 'Initials, date', 1.1)
		],
		rows: rows.map(([test, how, pass]) => ({ cells: { test, how, pass, result: null, initials: null } })),
		whenEmpty: '',
		notes: []
	});
}

type ColumnId = 'what' | 'at' | 'unit' | 'model' | 'least' | 'greatest' | 'reading';

interface Reading {
	readonly group: string;
	readonly what: string;
	readonly at: string;
	readonly unit: 'V' | 'mV' | 'A';
	readonly model: number;
	/** Share by which a good reading may differ: common practice, no source. */
	readonly within: number;
}

const WITHIN = { volts: 0.05, lost: 0.2, sharing: 0.1 };
/** Below this a voltage over a conductor or device is lost in the meter's last digits. */
const LEAST_A = 5;
const LEAST_MV = 1;

/** Readings under load, in the case that draws most from the batteries, and charging currents in the one that charges most. */
export function readings({ study }: ReportInput) {
	const solved = study.cases.filter(({ point, operatingCase }) => point.status === 'solved' && operatingCase.duration === 'continuous');
	const total = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
	const drawing = most(solved, ({ point }) => total(point.batteryA));
	const charging = most(solved, ({ point }) => -total(point.batteryA));
	const list = [
		...(drawing ? [...batteryReadings(study, drawing), ...loadReadings(study, drawing), ...lostReadings(study, drawing)] : []),
		...(charging ? chargeReadings(study, charging) : [])
	];
	return table<ColumnId>({
		id: 'readings',
		title: 'Readings under load',
		lead: drawing
			? `Bring about the case “${nameOf(drawing)}” and read. A reading outside its limits points at a joint, a conductor or a value that is not as drawn.`
			: 'No continuous operating case has an operating point, so there is nothing to compare a reading with.',
		columns: [
			textColumn('what', 'Reading', 2),
			textColumn('at', 'Where', 2.4),
			textColumn('unit', 'Unit', 0.5),
			numberColumn('model', 'Model', '', { digits: 4, weight: 0.8 }),
			numberColumn('least', 'From', '', { weight: 0.7 }),
			numberColumn('greatest', 'To', '', { weight: 0.7 }),
			handColumn('reading', 'Reading', 1.3)
		],
		rows: list.map(({ group, what, at, unit, model, within }) => {
			const span = Math.abs(model) * within;
			return { group, cells: { what, at, unit, model, least: model - span, greatest: model + span, reading: null } };
		}),
		whenEmpty: 'No operating case has an operating point.',
		notes: [
			'Limits around the model: 5 % for volts at a load, 20 % for volts lost, 10 % for the share of a battery. Common practice, no source. Volts lost say more than volts: they do not depend on how full the batteries are.'
		]
	});
}

const nameOf = ({ operatingCase, id }: CaseResult): string => operatingCase.label.trim() || id;

const most = (cases: readonly CaseResult[], measure: (result: CaseResult) => number): CaseResult | null =>
	cases.reduce<CaseResult | null>((best, other) => (measure(other) > (best ? measure(best) : 0) ? other : best), null);

function batteryReadings({ network, part }: Study, { point }: CaseResult): Reading[] {
	const group = 'Batteries';
	return network.batteries.flatMap((battery) => {
		const at = partName(part(battery.part));
		return [
			{ group, what: 'Current delivered', at, unit: 'A' as const, model: point.batteryA[battery.index]!, within: WITHIN.sharing },
			{
				group,
				what: 'Volts at its posts',
				at,
				unit: 'V' as const,
				model: point.nodeV[battery.positive]! - point.nodeV[battery.negative]!,
				within: WITHIN.volts
			}
		];
	});
}

const loadReadings = ({ network, part }: Study, { point }: CaseResult): Reading[] =>
	network.loads
		.filter(({ index }) => point.loadFed[index] && point.loadA[index]! > 1e-3)
		.map(({ index, part: id }) => ({
			group: 'Loads',
			what: 'Volts at its terminals',
			at: partName(part(id)),
			unit: 'V' as const,
			model: point.loadV[index]!,
			within: WITHIN.volts
		}));

function lostReadings(study: Study, { point }: CaseResult): Reading[] {
	const { network } = study;
	const reading = (what: string, at: string, index: number): Reading[] => {
		const amps = Math.abs(point.branchA[index]!);
		const milliV = amps * network.branches[index]!.resistanceOhm * 1000;
		if (amps < LEAST_A || milliV < LEAST_MV) return [];
		return [{ group: 'Volts lost', what, at: `${at}, ${ampsText(amps)}`, unit: 'mV', model: milliV, within: WITHIN.lost }];
	};
	const devices = devicesOf(study)
		.toSorted((a, b) => naturally(deviceName(study, a.origin), deviceName(study, b.origin)))
		.flatMap(({ index, origin }) => reading('Over the fuse or breaker', deviceName(study, origin), index));
	const others = network.branches.flatMap(({ index, kind, origin }) =>
		origin.kind === 'link' && (kind === 'switch' || kind === 'shunt')
			? reading(kind === 'switch' ? 'Over the disconnect' : 'Over the shunt', partName(study.part(origin.part)), index)
			: []
	);
	const conductors = study.conductors
		.toSorted((a, b) => naturally(a.name, b.name))
		.flatMap(({ name, branch }) => reading('Over the conductor, lug to lug', name, branch.index));
	return [...others, ...devices, ...conductors];
}

const chargeReadings = ({ network, part }: Study, { point, operatingCase, id }: CaseResult): Reading[] =>
	network.sources
		.filter(({ index, fedBy }) => fedBy === null && point.sourceA[index]! > 1e-3)
		.map(({ index, part: source }) => ({
			group: `Charging, in the case “${operatingCase.label.trim() || id}”`,
			what: 'Current delivered',
			at: partName(part(source)),
			unit: 'A' as const,
			model: point.sourceA[index]!,
			within: WITHIN.lost
		}));

export const signOff = () =>
	table({
		id: 'sign-off',
		title: 'Signed off',
		columns: [textColumn('what', '', 2), handColumn('value', 'Entry', 4)],
		rows: [
			'Instruments, and until when they are calibrated',
			'Air temperature, state of charge of the batteries',
			'Built by, date',
			'Tested by, date',
			'Handed over to, date'
		].map((what) => ({ cells: { what, value: null } })),
		whenEmpty: '',
		notes: []
	});
