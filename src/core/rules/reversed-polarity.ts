import { defineRule } from './define.ts';
import { SAME_POLE_V, standing } from './load-poles.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const reversedPolarity = defineRule({
	meta: {
		id: 'reversed-polarity',
		title: 'Positive terminals are on the positive pole',
		severity: 'error',
		group: 'topology',
		why: 'Electronics connected the wrong way round are destroyed at once, and their protective diodes blow the fuse or burn.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		load: ({ name }: { name: string }) => ({
			message: `${capital(name)} is connected the wrong way round: its + is on the negative pole or its − on the positive.`,
			remedy: `Exchange the two conductors of ${name}, or mark it as working either way round if it does.`
		}),
		source: ({ name }: { name: string }) => ({
			message: `${capital(name)} is connected the wrong way round to the batteries: its output + is on their negative.`,
			remedy: `Exchange the two output conductors of ${name}.`
		})
	},

	*check(study) {
		const reported = new Set<string>();
		for (const load of study.form.loads) {
			if (load.reversible || standing(study, load) !== 'reversed' || reported.has(load.part)) continue;
			reported.add(load.part);
			yield { message: 'load', data: { name: partName(study.part(load.part)) }, at: [partSubject(load.part)] };
		}
		for (const source of study.form.sources) {
			const volts = study.nets.voltsBetween(source.positive, source.negative);
			if (volts === null || volts > -SAME_POLE_V || reported.has(source.part)) continue;
			reported.add(source.part);
			yield { message: 'source', data: { name: partName(study.part(source.part)) }, at: [partSubject(source.part)] };
		}
	}
});
