import { ampsText } from '#core/units';
import { chassisOf } from './chassis.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import type { Severity } from './finding.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Less is a sensor or a leak: common practice, no source. */
const LEAST_A = 0.5;

export const chassisUsedAsReturn = defineRule({
	meta: {
		id: 'chassis-used-as-return',
		title: 'Load current returns through conductors, not through chassis or hull',
		severity: 'warning',
		group: 'conductors',
		why: 'Metalwork is no conductor of known size: joints corrode, an aluminium hull is eaten away, and the current finds ways through bearings and shields.',
		source: {
			'rv-nec-552': 'NFPA 70 552.10(B), which permits it',
			default: 'common practice, no source'
		}
	},

	messages: {
		returns: ({ names, one, currentA }: { names: string; one: boolean; currentA: number }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} no other way back than the chassis: ${ampsText(currentA)} returns through metalwork.`,
			remedy: 'Run a negative conductor from the load to the negative bus; keep the chassis for faults.'
		})
	},

	/** One report for all loads: the return is missing once. */
	*check(study) {
		const loads = chassisOf(study).returning;
		if (loads.length === 0) return;
		const returned = study.cases
			.filter(({ point }) => point.status === 'solved')
			.map(({ id, point }) => ({ id, currentA: loads.reduce((sum, { index }) => sum + point.loadA[index]!, 0) }));
		const worst = greatest(returned, ({ currentA }) => currentA);
		if (!worst || !exceeds(worst.currentA, LEAST_A)) return;
		const parts = [...new Set(loads.map(({ part }) => part))];
		yield {
			message: 'returns',
			severity: severityOf(study),
			data: { names: listed(parts.map((part) => partName(study.part(part)))), one: parts.length === 1, currentA: worst.currentA },
			at: subjects(parts.map(partSubject)),
			caseId: worst.id
		};
	}
});

function severityOf({ diagram, profile }: Study): Severity {
	if (profile.basedOn === 'rv-nec-552') return 'note';
	return diagram.system.craft === 'vehicle' ? 'warning' : 'error';
}
