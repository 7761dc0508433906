import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { aroundPartC, isIn, numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';
import { celsiusText } from '#core/units';

interface Data {
	readonly name: string;
	readonly madeForC: number;
	readonly aroundC: number;
	readonly place: string;
}

export const deviceTooHot = defineRule({
	meta: {
		id: 'device-too-hot',
		title: 'A device is made for the heat of its place',
		severity: 'warning',
		group: 'protection',
		why: 'Electronics above their temperature switch off or die; fuses open early and breakers trip with nothing wrong.',
		source: { default: 'the temperature given for the part, and the ambient temperatures of the diagram and its areas' }
	},

	messages: {
		tooHot: ({ name, madeForC, aroundC, place }: Data) => ({
			message: `${capital(name)} is made for up to ${celsiusText(madeForC)}; ${place} it is ${celsiusText(aroundC)}.`,
			remedy: 'Move it to a cooler place, or use one made for that temperature.'
		})
	},

	*check(study) {
		for (const part of study.parts) {
			const madeForC = numberOf(part, 'madeForC');
			if (madeForC === null) continue;
			const isHot = isIn(study, part.id, 'engine');
			const aroundC = aroundPartC(study, part.id);
			if (!exceeds(aroundC, madeForC)) continue;
			const place = isHot ? 'in the engine space' : 'where it stands';
			yield { message: 'tooHot', data: { name: partName(part), madeForC, aroundC, place }, at: [partSubject(part.id)] };
		}
	}
});
