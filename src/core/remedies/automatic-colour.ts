import { editConductors } from '#core/diagram';
import { conductorsIn, namesOf } from './thicker-conductor.ts';
import type { RemedyKind } from './types.ts';

/** The colour the scheme gives its pole. */
export const automaticColour: RemedyKind = {
	rules: ['colour-fault'],

	*propose(study, finding) {
		const conductors = conductorsIn(finding);
		if (conductors.length === 0) return;
		yield {
			title: `Give ${namesOf(study, conductors)} the colour of ${conductors.length > 1 ? 'their' : 'its'} pole`,
			commands: [editConductors({ conductors, set: { colour: 'auto' } })]
		};
	}
};
