import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

export const solidConductor = defineRule({
	meta: {
		id: 'solid-conductor',
		title: 'Conductors in vehicles and boats are stranded',
		severity: 'error',
		group: 'conductors',
		why: 'One solid wire bends back and forth with every wave and pothole until it breaks inside its insulation.',
		source: { 'us-small-craft': '33 CFR 183.425(a)', default: '33 CFR 183.425(a) for boats; common practice for vehicles' }
	},

	messages: {
		solid: ({ names, one, craft }: { names: string; one: boolean; craft: string }) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} of solid wire in a ${craft}.`,
			remedy: 'Use stranded copper of the same size.'
		})
	},

	*check({ conductors, diagram }) {
		const { craft } = diagram.system;
		const solid = conductors.filter(({ conductor }) => conductor.solid === true);
		if (craft === 'cabin' || solid.length === 0) return;
		const data = { names: listed(solid.map(({ name }) => name)), one: solid.length === 1, craft };
		yield { message: 'solid', data, at: subjects(solid.map(({ id }) => conductorSubject(id))) };
	}
});
