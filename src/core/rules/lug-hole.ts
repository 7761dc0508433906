import { studKey } from '#core/diagram';
import { holeFit, threadText } from '#core/studs';
import { millimetresText } from '#core/units';
import { defineRuleForEach } from './define.ts';
import { conductorSubject, studSubject } from './subjects.ts';

interface Data {
	readonly name: string;
	readonly hole: string;
	readonly stud: string;
	readonly size: string;
	readonly slackMm: number;
}

export const lugHole = defineRuleForEach('conductors', {
	meta: {
		id: 'lug-hole',
		title: 'The hole of a lug fits its stud',
		severity: 'error',
		group: 'studs',
		why: 'A hole drilled out loses the metal that carries the current; one too wide lets the lug shift, and leaves the washer nothing to press on.',
		source: { default: 'holes by ISO 273 and as rings are sold; how much slack is too much is common practice, no source' }
	},

	messages: {
		small: ({ name, hole, stud, size }: Data) => ({
			message: `The lug of ${name} is made for ${hole} and does not go over the ${size} stud ${stud}.`,
			remedy: `Crimp on a lug for ${size}. Never drill a lug out.`
		}),
		large: ({ name, hole, stud, size, slackMm }: Data) => ({
			message: `The lug of ${name} is made for ${hole} and has ${millimetresText(slackMm, 2)} of slack on the ${size} stud ${stud}.`,
			remedy: `Crimp on a lug for ${size}.`
		})
	},

	/** Only where a hole is given; lugs without one are taken to fit. */
	*checkOne({ id, name, conductor }, study) {
		for (const end of ['from', 'to'] as const) {
			const hole = conductor[`${end}Hole`];
			const { part, terminal } = conductor[end];
			const thread = hole && study.part(part).terminals.find((other) => other.id === terminal)?.thread;
			if (!hole || !thread) return;
			const { verdict, slackMm } = holeFit(hole, thread);
			if (verdict === 'fits') return;
			const key = studKey(conductor[end]);
			yield {
				message: verdict === 'too-small' ? 'small' : 'large',
				severity: verdict === 'loose' ? 'warning' : 'error',
				data: { name, hole: threadText(hole), stud: study.studName(key), size: threadText(thread), slackMm },
				at: [conductorSubject(id), studSubject(key)]
			};
		}
	}
});
