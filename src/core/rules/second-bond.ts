import { ampsText } from '#core/units';
import { chassisOf } from './chassis.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

/** Less is not felt: common practice, no source. */
const LEAST_A = 1;

export const secondBond = defineRule({
	meta: {
		id: 'second-bond',
		title: 'The negative is bonded to the chassis in one place',
		severity: 'warning',
		group: 'conductors',
		why: 'Between two bonds the chassis lies in parallel with the negative conductor and carries part of its current, past shunt and fuses.',
		source: {
			'us-small-craft': '33 CFR 183.415',
			'abyc-e11': 'ABYC E-11, single point, from memory',
			default: 'common practice, no source'
		}
	},

	messages: {
		loop: ({ names, currentA }: { names: string; currentA: number }) => ({
			message: `${capital(names)} bond the negative to the chassis in more than one place, and up to ${ampsText(currentA)} flows through the metalwork between them.`,
			remedy: 'Keep one bond, near the negative bus, and take the others off.'
		})
	},

	/** Only where no load needs the chassis to return by: else the missing negative conductor is the cause. */
	*check(study) {
		const { bonds, returning } = chassisOf(study);
		if (bonds.length < 2 || returning.length > 0) return;
		const joined = bonds
			.map((bond) => ({ bond, ...study.branchCurrent(bond.branch.index) }))
			.filter(({ currentA }) => exceeds(currentA, LEAST_A));
		if (joined.length < 2) return;
		const worst = greatest(joined, ({ currentA }) => currentA)!;
		yield {
			message: 'loop',
			data: { names: listed(joined.map(({ bond }) => bond.name)), currentA: worst.currentA },
			at: subjects(joined.map(({ bond }) => conductorSubject(bond.id))),
			caseId: worst.caseId,
			unverified: study.profile.basedOn === 'abyc-e11'
		};
	}
});
