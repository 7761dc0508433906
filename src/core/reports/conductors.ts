/** The conductor schedule, and the list by which conductors are cut and crimped. */
import type { ConductorFigures } from '#core/check';
import { gaugeForReader } from '#core/conductors';
import { surroundingsOf, type Conductor, type ConductorId, type Surroundings } from '#core/diagram';
import { insulationColour, type Insulation } from '#core/drawing';
import { ASSUMED_LENGTH_M } from '#core/network';
import { deviceName, listed, type Study } from '#core/rules';
import { ampsText, metresText, millimetresText } from '#core/units';
import { cutLength, cutLengthNotes } from './cut-length.ts';
import { endOf, heatShrinkFor } from './ends.ts';
import type { ReportInput } from './input.ts';
import { handColumn, numberColumn, table, textColumn } from './table.ts';
import { naturally } from './words.ts';

/** In the order of their designations; those that hang in the air are listed too. */
export const conductorIds = ({ study, diagram }: ReportInput): ConductorId[] =>
	Object.keys(diagram.conductors).sort((a, b) => naturally(study.conductorName(a), study.conductorName(b)));

export function conductorSchedule(input: ReportInput) {
	const { study, check, diagram } = input;
	const rows = conductorIds(input).map((id) => {
		const conductor = diagram.conductors[id]!;
		const figures = check.conductors[id];
		return {
			cells: {
				id: study.conductorName(id),
				from: endOf(study, id, 'from').placeInStack,
				to: endOf(study, id, 'to').placeInStack,
				pole: figures ? POLES[figures.pole] : 'an end is on no terminal',
				colour: colourName(input, id),
				gauge: gaugeForReader(conductor.gauge),
				insulation: conductor.insulationC,
				length: conductor.lengthM ?? 'not measured',
				conditions: conditions(conductor, surroundingsOf(diagram, conductor)),
				amperage: figures?.ampacityA ?? null,
				continuous: figures?.continuousA ?? null,
				surge: figures?.surgeA ?? null,
				protectedBy: figures ? protectedBy(study, id, figures) : null,
				letThrough: figures ? (figures.letThroughA === Infinity ? 'unlimited' : figures.letThroughA) : null,
				drop: figures?.dropV ?? null,
				dropPercent: figures ? (figures.dropV / diagram.system.nominalV) * 100 : null
			}
		};
	});
	return table({
		id: 'conductor-schedule',
		title: 'Conductor schedule',
		lead: `Currents are the greatest over the operating cases; volts lost are over the conductor itself, lugs included, in its worst continuous case, in percent of ${diagram.system.nominalV} V.`,
		columns: [
			textColumn('id', 'Conductor', 1.1),
			textColumn('from', 'From', 1.9),
			textColumn('to', 'To', 1.9),
			textColumn('pole', 'Pole', 0.9),
			textColumn('colour', 'Colour', 1),
			textColumn('gauge', 'Size', 0.9),
			numberColumn('insulation', 'Insulation', '°C', { decimals: 0, weight: 0.8 }),
			numberColumn('length', 'Length', 'm', { decimals: 2, weight: 0.8 }),
			textColumn('conditions', 'Conditions', 1.1),
			numberColumn('amperage', 'Amperage', 'A', { weight: 0.9 }),
			numberColumn('continuous', 'Continuous', 'A', { weight: 0.9 }),
			numberColumn('surge', 'Surge', 'A', { weight: 0.7 }),
			textColumn('protectedBy', 'Protected by', 1.5),
			numberColumn('letThrough', 'Let-through', 'A', { weight: 0.9 }),
			numberColumn('drop', 'Lost', 'V', { decimals: 3, weight: 0.7 }),
			numberColumn('dropPercent', 'Lost', '%', { decimals: 1, weight: 0.6 })
		],
		rows,
		whenEmpty: 'The diagram has no conductors.',
		notes: [
			`Amperage: ${[...new Set(Object.values(check.conductors).map(({ ampacityTable }) => ampacityTable))].join('; ') || 'none'}.`,
			'Let-through: what can flow for good into a fault in the conductor before everything that protects it has opened.',
			...assumedLengths(input)
		]
	});
}

export function cutList(input: ReportInput) {
	const { study, diagram } = input;
	const rows = conductorIds(input).map((id) => {
		const conductor = diagram.conductors[id]!;
		const ends = [endOf(study, id, 'from'), endOf(study, id, 'to')];
		const cut = conductor.lengthM === null ? null : cutLength(conductor, conductor.lengthM, ends.filter(({ inPanel }) => inPanel).length);
		const { tubing, lengthMm } = heatShrinkFor(conductor.gauge);
		const [from, to] = ends;
		return {
			cells: {
				id: study.conductorName(id),
				colour: colourName(input, id),
				gauge: gaugeForReader(conductor.gauge),
				length: conductor.lengthM === null ? 'not measured' : conductor.lengthM * 1000,
				allowance: cut?.allowance ?? 'measure first',
				cut: cut === null ? null : cut.cutM * 1000,
				fittingFrom: from!.fitting?.text ?? 'no terminal',
				placeFrom: from!.place,
				fittingTo: to!.fitting?.text ?? 'no terminal',
				placeTo: to!.place,
				heatShrink: ends.some(({ fitting }) => fitting && fitting.kind !== 'ferrule') ? `${tubing}, ${millimetresText(lengthMm)}` : 'none',
				done: null
			}
		};
	});
	return table({
		id: 'cut-list',
		title: 'Cut list',
		lead: 'Slide heat-shrink and label on before the second end is crimped.',
		columns: [
			textColumn('id', 'Conductor', 1),
			textColumn('colour', 'Colour', 0.9),
			textColumn('gauge', 'Size', 0.8),
			numberColumn('length', 'Length', 'mm', { decimals: 0, weight: 0.8 }),
			textColumn('allowance', 'Allowance', 1.5),
			numberColumn('cut', 'Cut to', 'mm', { decimals: 0, weight: 0.8 }),
			textColumn('fittingFrom', 'First end', 1.6),
			textColumn('placeFrom', 'goes to', 1.3),
			textColumn('fittingTo', 'Second end', 1.6),
			textColumn('placeTo', 'goes to', 1.3),
			textColumn('heatShrink', 'Heat-shrink, each lug', 1.2),
			handColumn('done', 'Done', 0.6)
		],
		rows,
		whenEmpty: 'The diagram has no conductors.',
		notes: [
			...cutLengthNotes(),
			'Strip the barrel’s depth and 1 mm. Heat-shrink: adhesive-lined, 3 : 1, over the barrel and two cable diameters beyond it. Common practice, no source; cables and lugs differ by maker, so try the first one.'
		]
	});
}

const POLES = { positive: 'positive', negative: 'negative', shorted: 'both', floating: 'neither' } as const;

/** The colour of the insulation, as drawn. */
export function insulationOf({ study, diagram, check }: ReportInput, id: ConductorId): Insulation {
	const conductor = diagram.conductors[id]!;
	const isBond = (['from', 'to'] as const).some((end) => endOf(study, id, end).terminal?.role === 'chassis');
	return insulationColour(conductor, isBond ? 'bond' : (check.conductors[id]?.pole ?? 'floating'), diagram);
}

/** The colour to buy. */
export const colourName = (input: ReportInput, id: ConductorId): string => insulationOf(input, id).replace('-', ' and ');

function conditions({ bundleCount, sheathed, use }: Conductor, { environment, area }: Surroundings): string {
	return [
		...(environment === 'engine-space' ? ['engine space'] : []),
		...(area === null ? [] : [area]),
		...(bundleCount > 1 ? [`bundle of ${bundleCount}`] : []),
		...(sheathed ? ['sheathed'] : []),
		...(use === 'ordinary' ? [] : [use])
	].join(', ');
}

function protectedBy(study: Study, id: ConductorId, { letThroughA, isCranking }: ConductorFigures): string {
	if (isCranking) return 'exempt: cranking';
	if (letThroughA === Infinity) return 'nothing';
	return listed(protectorsOf(study, id), 4);
}

/** "D position 1 250 A": what limits a fault at the end where most can flow. */
export function protectorsOf(study: Study, id: ConductorId): string[] {
	const { from, to } = study.protection(id);
	const { limitedBy } = from.currentA >= to.currentA ? from : to;
	return [...new Set(limitedBy.map((device) => `${deviceName(study, device)} ${ampsText(device.currentA)}`))].sort(naturally);
}

function assumedLengths({ study }: ReportInput): string[] {
	const names = study.conductors.filter(({ lengthAssumed }) => lengthAssumed).map(({ name }) => name);
	return names.length === 0 ? [] : [`Not measured, and taken as ${metresText(ASSUMED_LENGTH_M)} for the figures: ${names.join(', ')}.`];
}
