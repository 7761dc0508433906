import { ASSUMED_LENGTH_M } from '#core/network';
import { listed, type Finding, type Study } from '#core/rules';
import { metresText } from '#core/units';

/** Values used because the diagram does not give them, in words. */
export function assumptionsOf({ conductors, stacks }: Study, findings: readonly Finding[]): string[] {
	const lengths = conductors.filter(({ lengthAssumed }) => lengthAssumed).map(({ name }) => name);
	const closed = stacks.filter(({ hardwareAssumed }) => hardwareAssumed).length;
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
