/** Figures of a check put into five bands, for a drawing coloured by one of them. */
import type { CheckResult, ConductorFigures } from '#core/check';
import type { Conductor, ConductorId, Diagram, StudKey } from '#core/diagram';
import type { Pole } from '#core/network';
import { ampsText, kelvinText, percentText, voltsText } from '#core/units';
import { BAND_LOOKS, type BandIndex, type BandLook } from './lens-bands.ts';
import { LIMITS, type MeasuredLens } from './lens-limits.ts';

export const LENSES = ['polarity', 'loading', 'volts-lost', 'protection', 'fault-current', 'temperature-rise'] as const;
export type LensId = (typeof LENSES)[number];

export interface LensValue {
	/** In the lens's unit; Infinity where nothing limits it. */
	readonly value: number;
	readonly unit: string;
	readonly text: string;
	readonly band: BandIndex;
}

export interface LensBand extends BandLook {
	readonly band: BandIndex;
	/** From this value up to, not including, the next band's. */
	readonly from: number;
	/** Infinity in the last band. */
	readonly to: number;
	/** "25 to 50 %". */
	readonly limits: string;
	/** Why it begins there. */
	readonly source: string;
	readonly words: string;
}

export interface LensView {
	readonly lens: LensId;
	readonly title: string;
	/** What is shown, and of what it is a share. */
	readonly about: string;
	readonly unit: string;
	/** In ascending order. Polarity has four, the others five. */
	readonly legend: readonly LensBand[];
	/** Null: the lens says nothing of it, and why is in `about`. */
	readonly conductors: Readonly<Record<ConductorId, LensValue | null>>;
	readonly studs: Readonly<Record<StudKey, LensValue | null>>;
}

interface Lens {
	readonly title: string;
	readonly about: string;
	readonly unit: string;
	readonly words: readonly [string, string, string, string, string];
	text(value: number): string;
	conductor(figures: ConductorFigures, conductor: Conductor): number | null;
	stud(check: Checked, key: StudKey): number | null;
}

const none = (): null => null;
const percentOf = (value: number, of: number): number => (value === 0 ? 0 : (100 * value) / of);
const wholePercent = (value: number): string => (value === Infinity ? 'unlimited' : percentText(value));

const MEASURED: Readonly<Record<MeasuredLens, Lens>> = {
	loading: {
		title: 'Loading',
		about: 'Current in the worst continuous case, as a share of the amperage. Starter supplies and studs have none.',
		unit: '%',
		words: ['idle', 'light', 'ordinary', 'near its limit', 'over its amperage'],
		text: percentText,
		conductor: ({ continuousA, ampacityA, isCranking }) => (isCranking ? null : percentOf(continuousA, ampacityA)),
		stud: none
	},
	'volts-lost': {
		title: 'Volts lost',
		about: 'Along each conductor in its worst continuous case, lugs included; at each stud, how far it is from the supply of its pole.',
		unit: 'mV',
		words: ['hardly any', 'little', 'noticeable', 'more than a critical circuit may lose', 'a lamp dims'],
		text: (value) => voltsText(value / 1000),
		conductor: ({ dropV }) => 1000 * dropV,
		stud: ({ studLostV }, key) => (Object.hasOwn(studLostV, key) ? 1000 * studLostV[key]!.volts : null)
	},
	protection: {
		title: 'Protection',
		about: 'Let-through as a share of the greatest device allowed. Returns and starter supplies have none, nor have studs.',
		unit: '%',
		words: ['far below the limit', 'below the limit', 'up to the limit', 'over the limit', 'far over, or unprotected'],
		text: wholePercent,
		conductor: ({ letThroughA, greatestDeviceA, pole, isCranking }) =>
			pole === 'negative' || isCranking ? null : percentOf(letThroughA, greatestDeviceA),
		stud: none
	},
	'fault-current': {
		title: 'Fault current',
		about: 'Into a dead short to the return beside it, batteries full; of a conductor, at its worse end. Returns have none.',
		unit: 'A',
		words: ['low', 'a blade fuse breaks it', 'a strip fuse breaks it', 'beyond a strip fuse', 'needs high breaking capacity'],
		text: ampsText,
		conductor: ({ faultA }) => faultA,
		stud: ({ studFaultA }, key) => (Object.hasOwn(studFaultA, key) ? studFaultA[key]! : null)
	},
	'temperature-rise': {
		title: 'Temperature rise',
		about:
			'Estimated rise above what is around it, in the worst continuous case. Starter supplies run for seconds only and have none, nor have studs.',
		unit: 'K',
		words: ['cool', 'warm', 'hot', 'too hot to hold', 'insulation suffers'],
		text: (value) => kelvinText(value),
		conductor: ({ workingC, ambientC, isCranking }) => (isCranking ? null : workingC - ambientC),
		stud: none
	}
};

/** What a lens says of the conductors alone, with its legend. */
export const lensOfConductors = (diagram: Diagram, conductors: CheckResult['conductors'], lens: LensId): LensView =>
	lensValues(diagram, { conductors, studPole: {}, studLostV: {}, studFaultA: {} }, lens);

type Checked = Pick<CheckResult, 'conductors' | 'studPole' | 'studLostV' | 'studFaultA'>;

/** The drawing through a lens. Plain data, from a check and the diagram it is of. */
export const lensValues = (diagram: Diagram, check: Checked, lens: LensId): LensView =>
	lens === 'polarity' ? polarity(check) : measured(diagram, check, lens);

function measured(diagram: Diagram, check: Checked, id: MeasuredLens): LensView {
	const lens = MEASURED[id];
	const spec = LIMITS[id](diagram);
	const limits = spec.map(({ value }) => value);
	const valueOf = (value: number | null): LensValue | null =>
		value === null || Number.isNaN(value) ? null : { value, unit: lens.unit, text: lens.text(value), band: bandOf(value, limits) };
	const edges = [0, ...limits, Infinity];
	return {
		lens: id,
		title: lens.title,
		about: lens.about,
		unit: lens.unit,
		legend: BAND_LOOKS.map((look, band) => ({
			...look,
			band: band as BandIndex,
			from: edges[band]!,
			to: edges[band + 1]!,
			limits: limitsText(lens, edges[band]!, edges[band + 1]!),
			source: band === 0 ? '' : spec[band - 1]!.source,
			words: lens.words[band]!
		})),
		conductors: mapRecord(check.conductors, (figures, key) => {
			const conductor = Object.hasOwn(diagram.conductors, key) ? diagram.conductors[key]! : null;
			return conductor && valueOf(lens.conductor(figures, conductor));
		}),
		studs: mapRecord(check.studPole, (_, key) => valueOf(lens.stud(check, key)))
	};
}

const bandOf = (value: number, limits: readonly number[]): BandIndex => limits.filter((limit) => value >= limit).length as BandIndex;

function limitsText({ text }: Lens, from: number, to: number): string {
	if (from === 0) return `below ${text(to)}`;
	return to === Infinity ? `${text(from)} and more` : `${text(from)} to ${text(to)}`;
}

/** Poles take the bands that differ most: negative, none, positive, and shorted, which must be seen at once. */
const POLES: Readonly<Record<Pole, { readonly band: BandIndex; readonly limits: string; readonly words: string }>> = {
	negative: { band: 0, limits: '−', words: 'negative' },
	floating: { band: 1, limits: 'none', words: 'on no battery or source' },
	positive: { band: 3, limits: '+', words: 'positive, with the midpoints of strings' },
	shorted: { band: 4, limits: '+ and −', words: 'reaches both terminals of one source' }
};

function polarity(check: Checked): LensView {
	const valueOf = (pole: Pole): LensValue => ({ value: POLES[pole].band, unit: '', text: POLES[pole].words, band: POLES[pole].band });
	return {
		lens: 'polarity',
		title: 'Polarity',
		about: 'Which pole each conductor and stud belongs to with every switch closed.',
		unit: '',
		legend: Object.values(POLES).map(({ band, limits, words }) => ({
			...BAND_LOOKS[band],
			band,
			from: band,
			to: band + 1,
			limits,
			words,
			source: ''
		})),
		conductors: mapRecord(check.conductors, ({ pole }) => valueOf(pole)),
		studs: mapRecord(check.studPole, valueOf)
	};
}

const mapRecord = <From, To>(record: Readonly<Record<string, From>>, to: (value: From, key: string) => To): Record<string, To> =>
	Object.fromEntries(Object.entries(record).map(([key, value]) => [key, to(value, key)]));
