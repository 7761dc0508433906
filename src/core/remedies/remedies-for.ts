import type { Diagram } from '#core/diagram';
import type { Finding } from '#core/rules';
import { addAdapter } from './add-adapter.ts';
import { addDisconnect } from './add-disconnect.ts';
import { addFuse } from './add-fuse.ts';
import { arrangeStud } from './arrange-stud.ts';
import { assess } from './assess.ts';
import { automaticColour } from './automatic-colour.ts';
import { findingsOf, studyOf } from './findings.ts';
import { fuseType } from './fuse-type.ts';
import { largerRating } from './larger-rating.ts';
import { moveFuse } from './move-fuse.ts';
import { nextFreeLabel } from './next-free-label.ts';
import { orderPositions } from './order-positions.ts';
import { otherFuse } from './other-fuse.ts';
import { returnPastShunt } from './return-past-shunt.ts';
import { swapPoles } from './swap-poles.ts';
import { thickerConductor } from './thicker-conductor.ts';
import { toAnotherStud } from './to-another-stud.ts';
import type { Remedy, RemedyKind } from './types.ts';

const KINDS: readonly RemedyKind[] = [
	moveFuse,
	otherFuse,
	thickerConductor,
	addFuse,
	fuseType,
	returnPastShunt,
	arrangeStud,
	toAnotherStud,
	addAdapter,
	orderPositions,
	addDisconnect,
	swapPoles,
	nextFreeLabel,
	automaticColour,
	largerRating
];

/** Rules for whose findings a mend can be computed; not every finding of theirs has one. */
export const MENDABLE_RULES: ReadonlySet<string> = new Set(KINDS.flatMap(({ rules }) => rules));

/**
 * What would mend a finding of this diagram, safe ones first. Each was tried on a copy: it takes the finding away, and
 * makes no more errors than there were, unless it lays open what a fatal finding hid. Empty where the diagram has no
 * such finding or nothing is known to mend it.
 */
export function remediesFor(diagram: Diagram, { key }: Pick<Finding, 'key'>): Remedy[] {
	const finding = findingsOf(diagram).find((other) => other.key === key);
	if (!finding) return [];
	const offered: Remedy[] = [];
	const groups = new Map<string, Remedy>();
	for (const kind of KINDS.filter(({ rules }) => rules.includes(finding.rule))) {
		for (const proposal of kind.propose(studyOf(diagram), finding)) {
			const taken = proposal.group === undefined ? undefined : groups.get(proposal.group);
			if (taken?.safe) continue;
			const remedy = assess(diagram, finding, proposal);
			if (!remedy || (taken && !remedy.safe)) continue;
			if (taken) offered.splice(offered.indexOf(taken), 1);
			offered.push(remedy);
			if (proposal.group !== undefined) groups.set(proposal.group, remedy);
		}
	}
	return offered.toSorted((a, b) => Number(b.safe) - Number(a.safe));
}
