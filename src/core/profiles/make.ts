import { areaMm2 } from '#core/conductors';
import { AMBIENT_EQUATION_SOURCE, ambientFactor, HIGHER_VOLTAGE_V, ISO_ANNEX, isoAnnexA, type Sourced } from '#core/tables';
import { cellKey, readAs, sizeIn, TABLE_AMBIENT_C } from './amperage-tables.ts';
import { bundleKey, bundleSteps, deviceKey, engineSpaceKey, numberList } from './number-list.ts';
import type { LimitKey, ProfileSpec } from './spec.ts';
import type { AmbientSettings, Ampacity, ConductorConditions, Profile } from './types.ts';
import { celsiusText } from '#core/units';

type Get = (key: string) => Sourced<number> | null;
type Factor = Ampacity['factors'][number] & { readonly unverified?: boolean };
type Figure = Pick<Ampacity, 'tableA' | 'table' | 'unverified' | 'deviceBySize'>;

/** The profile a description stands for, with the numbers `given` in the place of its own. */
export function makeProfile(spec: ProfileSpec, given: Readonly<Record<string, number>> = {}): Profile {
	const numbers = numberList(spec, given);
	const byKey = new Map(numbers.map((number) => [number.key, number]));
	const get: Get = (key) => byKey.get(key) ?? null;
	const limit = (key: LimitKey): Sourced<number> => get(key)!;
	return {
		id: spec.id,
		basedOn: spec.id,
		name: spec.name,
		scope: spec.scope,
		numbers,
		ampacity(conductor, nominalV, ambient) {
			const figure = tableFigure(spec, get, conductor);
			const factors = [temperatureFactor(spec, get, conductor, ambient), bundleFactorOf(spec, get, conductor, nominalV)];
			const applied = factors.filter((factor) => factor !== null && factor.factor !== 1) as Factor[];
			return {
				...figure,
				unverified: figure.unverified || applied.some(({ unverified }) => unverified === true),
				factors: applied.map(({ name, factor, source }) => ({ name, factor, source })),
				currentA: applied.reduce((amps, { factor }) => amps * factor, figure.tableA)
			};
		},
		overcurrent: {
			factor: (nominalV) => limit(nominalV < HIGHER_VOLTAGE_V ? 'deviceFactor' : 'deviceFactorFrom50V'),
			nextStandardUpTo: limit('nextStandardUpTo'),
			unsheathedM: limit('unsheathedM'),
			sheathedM: limit('sheathedM'),
			batteryM: limit('batteryM')
		},
		drop: {
			criticalPercent: limit('criticalDropPercent'),
			ordinaryWarnPercent: limit('ordinaryWarnPercent'),
			ordinaryPercent: limit('ordinaryDropPercent')
		},
		dropResistivity: limit('dropResistivity'),
		fuseLoadShare: limit('fuseLoadShare'),
		fuseGroupedShare: limit('fuseGroupedShare'),
		smallestSeparateMm2: limit('smallestSeparateMm2'),
		smallestSheathedMm2: limit('smallestSheathedMm2')
	};
}

const isFromMemory = ({ confidence }: Sourced<number>): boolean => confidence === 'memory';

/** Amps before any factor, and the table and column they were read from. */
function tableFigure({ amperage }: ProfileSpec, get: Get, { gauge, insulationC, bundleCount }: ConductorConditions): Figure {
	const table = bundleCount > 1 ? amperage.together : amperage.single;
	const size = sizeIn(table, gauge);
	if (size === null) {
		// The annex begins at 0.75 mm²; thinner copper is scaled down by area, which errs to the safe side.
		const tableA = isoAnnexA('0.75', insulationC) * Math.min(1, areaMm2(gauge) / 0.75);
		const words = `${ISO_ANNEX.source} (thinner than the smallest size of ${table.source})`;
		return { tableA, table: words, unverified: true, deviceBySize: null };
	}
	const deviceBySize = get(deviceKey(size));
	const columnC = table.columnsC.findLast((c) => c <= insulationC) ?? table.columnsC[0]!;
	const number = get(cellKey(table, size, columnC));
	if (number) {
		const changed = number.confidence === 'given' ? `, ${number.source}` : '';
		const words = `${table.source}, ${columnC} °C column${readAs(table, gauge, size)}${changed}`;
		return { tableA: number.value, table: words, unverified: isFromMemory(number), deviceBySize };
	}
	// The table prints only hotter columns for this size: cooled down by the ambient equation, read the other way.
	const hotterC = table.columnsC.find((c) => c > columnC && get(cellKey(table, size, c)))!;
	const share = Math.sqrt((insulationC - TABLE_AMBIENT_C) / (hotterC - TABLE_AMBIENT_C));
	const words = `${table.source}, ${hotterC} °C column lowered to ${insulationC} °C (${AMBIENT_EQUATION_SOURCE})${readAs(table, gauge, size)}`;
	return { tableA: get(cellKey(table, size, hotterC))!.value * share, table: words, unverified: false, deviceBySize };
}

/** One temperature factor per conductor: an engine-space factor already stands for its temperature, so the two never multiply. */
function temperatureFactor(
	{ engineSpace, countsAmbient }: ProfileSpec,
	get: Get,
	{ insulationC, environment }: ConductorConditions,
	{ outsideC, engineSpaceC }: AmbientSettings
): Factor | null {
	const inEngineSpace = environment === 'engine-space';
	if (inEngineSpace && engineSpace && (engineSpaceC <= engineSpace.upToC || !countsAmbient)) {
		const row = engineSpace.factors.findLast((row) => row.insulationC <= insulationC) ?? engineSpace.factors[0]!;
		const { value, source, confidence } = get(engineSpaceKey(row.insulationC))!;
		return { name: 'engine space', factor: value, source, unverified: confidence === 'memory' };
	}
	const ambientC = inEngineSpace ? engineSpaceC : outsideC;
	if (!countsAmbient || ambientC <= TABLE_AMBIENT_C) return null;
	return {
		name: `${celsiusText(ambientC)} around the conductor`,
		factor: ambientFactor(insulationC, ambientC, TABLE_AMBIENT_C),
		source: AMBIENT_EQUATION_SOURCE
	};
}

function bundleFactorOf(spec: ProfileSpec, get: Get, { bundleCount }: ConductorConditions, nominalV: number): Factor | null {
	if (nominalV < get('bundleFromV')!.value) return null;
	const step = bundleSteps(spec).findLast(({ from }) => bundleCount >= from);
	if (!step) return null;
	const { value, source, confidence } = get(bundleKey(step.from))!;
	return { name: `${bundleCount} conductors bundled`, factor: value, source, unverified: confidence === 'memory' };
}
