import { setParams } from '#core/diagram';
import { describe } from '#core/parts';
import { ampsText } from '#core/units';
import type { RemedyKind } from './types.ts';

/** Ratings in which buses, switches and shunts are made, amps: common practice, no source. */
const RATINGS_A = [50, 100, 150, 200, 250, 300, 350, 400, 500, 600, 750, 1000, 1500, 2000];
const MOST_OFFERED = 3;

/** The same part of a higher rating. */
export const largerRating: RemedyKind = {
	rules: ['bus-overloaded', 'device-overloaded'],

	*propose({ diagram }, { subjects, numbers }) {
		const part = subjects.find(({ kind }) => kind === 'part')?.id;
		if (part === undefined || !Object.hasOwn(diagram.parts, part)) return;
		const { params, definition } = describe(diagram.parts[part]!);
		const { currentA } = numbers;
		const now = params.ratedA;
		if (!definition || currentA === undefined || typeof now !== 'number' || now !== numbers.ratedA) return;
		for (const rating of RATINGS_A.filter((amps) => amps >= currentA && amps > now).slice(0, MOST_OFFERED)) {
			yield {
				title: `Use a ${definition.name.toLowerCase()} rated ${ampsText(rating)} for ${diagram.parts[part]!.label.trim() || part}`,
				commands: [setParams({ parts: [part], params: { ratedA: rating } })],
				group: 'rating'
			};
		}
	}
};
