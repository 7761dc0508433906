import { defineRule } from './define.ts';
import { partSubject, subjects, WHOLE_DIAGRAM } from './subjects.ts';
import { listed, partName } from './words.ts';

export const voltageCollapse = defineRule({
	meta: {
		id: 'voltage-collapse',
		title: 'The sources can feed the loads of every operating case',
		severity: 'error',
		group: 'conductors',
		why: 'A load of constant power draws more as its voltage falls. Past a point no current is enough: the voltage runs away and everything cuts out.',
		source: { default: 'circuit theory: V² = V·E − R·P has no real solution when P > E²/(4·R)' }
	},

	messages: {
		collapsed: ({ caseName, loads }: { caseName: string; loads: string }) => ({
			message: `In “${caseName}” no voltage exists at which ${loads} can be fed. Currents and voltage drops of this case are left out of all other checks.`,
			remedy: 'Use thicker or shorter conductors, more batteries in parallel or a higher system voltage, or take loads out of this case.'
		})
	},

	*check(study) {
		for (const { id, operatingCase, point } of study.cases) {
			if (point.status !== 'collapsed') continue;
			const parts = [...new Set(point.collapsedLoads.map((index) => study.form.loads[index]!.part))];
			yield {
				message: 'collapsed',
				data: {
					caseName: operatingCase.label,
					loads: parts.length > 0 ? listed(parts.map((part) => partName(study.part(part)))) : 'the loads'
				},
				at: parts.length > 0 ? subjects(parts.map(partSubject)) : [WHOLE_DIAGRAM],
				caseId: id
			};
		}
	}
});
