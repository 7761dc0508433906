/** What stands in a band of a lens, and where the band begins. */
import { figuresOfAll } from '#core/check';
import type { ConductorId } from '#core/diagram';
import type { Study } from '#core/rules';
import type { Explanation, Related } from './explanation.ts';
import type { ConductorFigure } from './figure-id.ts';
import type { BandIndex } from './lens-bands.ts';
import { LIMITS, type LimitIndex, type MeasuredLens } from './lens-limits.ts';
import { lensOfConductors, type LensId } from './lens.ts';
import { explanation, input } from './write-out.ts';

/** What a conductor's colour is made of. */
const FIGURE: Readonly<Record<MeasuredLens, ConductorFigure>> = {
	loading: 'loading',
	'volts-lost': 'volts-lost',
	protection: 'let-through',
	'fault-current': 'fault-current',
	'temperature-rise': 'working-temperature'
};

/** More are on the drawing. */
const MOST_LISTED = 24;

export function explainBand(study: Study, { lens, band }: { readonly lens: LensId; readonly band: BandIndex }): Explanation | null {
	const view = lensOfConductors(study.diagram, figuresOfAll(study), lens);
	const own = view.legend.find((each) => each.band === band);
	if (!own) return null;
	const inIt = study.conductors.filter(({ id }) => view.conductors[id]?.band === band);
	const valueOf = (id: ConductorId): number => view.conductors[id]!.value;
	const listed = lens === 'polarity' ? inIt : inIt.toSorted((a, b) => valueOf(b.id) - valueOf(a.id));
	const count = `${inIt.length} ${inIt.length === 1 ? 'conductor' : 'conductors'}`;
	const more = inIt.length > MOST_LISTED ? `; below are the ${MOST_LISTED} with the greatest figures` : '';
	return explanation({
		symbol: 'n',
		name: `${view.title}: ${own.words}`,
		value: inIt.length,
		unit: '',
		text: count,
		words: `${view.about} In this band: ${count}${more}.`,
		expression: '',
		inputs: lens === 'polarity' ? [] : limitInputs(study, lens, band),
		related: lens === 'polarity' ? [] : listed.slice(0, MOST_LISTED).map(({ id, name }) => relatedOf(lens, id, name)),
		source: own.source === '' ? 'figures of the conductors' : own.source
	});
}

const relatedOf = (lens: MeasuredLens, id: ConductorId, name: string): Related => ({
	figure: { of: 'conductor', id, figure: FIGURE[lens] },
	name
});

/** From and up to, each with where it comes from. */
const limitInputs = (study: Study, lens: MeasuredLens, band: BandIndex) =>
	([band - 1, band] as const).flatMap((limit, place) => {
		if (!isLimit(limit)) return [];
		const { name, value, unit, text, source, confidence } = explainBandLimit(study, { lens, limit });
		return [
			input(place === 0 ? 'from' : 'to', name, value!, unit, {
				text,
				origin: 'computed',
				source,
				confidence,
				figure: { of: 'band-limit', lens, limit }
			})
		];
	});

const isLimit = (index: number): index is LimitIndex => index >= 0 && index <= 3;

export function explainBandLimit(study: Study, { lens, limit }: { readonly lens: MeasuredLens; readonly limit: LimitIndex }): Explanation {
	const { value, expression, inputs, source } = LIMITS[lens](study.diagram)[limit];
	const { unit, legend } = lensOfConductors(study.diagram, {}, lens);
	return explanation({
		symbol: 'L',
		name: `Beginning of the band “${legend[limit + 1]!.words}”`,
		value,
		unit,
		words: 'A conductor whose figure is at least this stands in the band.',
		expression,
		inputs,
		source
	});
}
