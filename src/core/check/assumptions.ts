import { ASSUMED_LENGTH_M } from '#core/network';
import { derived, gathered, listed, type Finding, type Study } from '#core/rules';
import { metresText } from '#core/units';

/** Values used because the diagram does not give them, in words. */
export function assumptionsOf(study: Study, findings: readonly Finding[]): string[] {
	const lengths = withoutLength(study);
	const closed = closedByAssumption(study);
	return [
		...new Set([
			...(lengths.length > 0 ? [`${metresText(ASSUMED_LENGTH_M)} of length for ${listed(lengths)}.`] : []),
			...(closed > 0
				? [`A flat washer, a lock washer and a nut on ${closed} ${closed === 1 ? 'stud' : 'studs'} where none are drawn.`]
				: []),
			...findings.flatMap(({ assumptions }) => assumptions)
		])
	];
}

/** Names of conductors whose length is assumed. */
const withoutLength = gathered(
	(study) => study.conductors,
	(_, { lengthAssumed, name }) => (lengthAssumed ? [name] : [])
);

const closedByAssumption = derived(({ stacks }) => stacks.filter(({ hardwareAssumed }) => hardwareAssumed).length);
