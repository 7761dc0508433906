import { ampsText, fixedText } from '#core/units';
import { batteryMismatch } from './clashing-batteries.ts';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, partName } from './words.ts';

export const reversedBattery = defineRule({
	meta: {
		id: 'reversed-battery',
		title: 'Batteries joined together point the same way',
		severity: 'fatal',
		group: 'topology',
		why: 'A reversed battery adds its voltage to the others around a loop of bare copper: a short circuit of both at once, with nothing switched on.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		reversed: ({ name, excessV, currentA }: { name: string; excessV: number; currentA: number }) => ({
			message: `${capital(name)} is reversed: ${ampsText(currentA)} flows through it with everything switched off, driven by ${fixedText(excessV, 1)} V.`,
			remedy: `Exchange the conductors on the two posts of ${name}.`
		})
	},

	*check(study) {
		const { clashes, reversed } = batteryMismatch(study);
		if (!reversed) return;
		const involved = new Set(clashes.flatMap(({ loop }) => loop.map(({ part }) => part)));
		const others = study.parts.map(({ id }) => id).filter((id) => involved.has(id) && id !== reversed.part);
		yield {
			message: 'reversed',
			data: {
				name: partName(study.part(reversed.part)),
				excessV: Math.max(...clashes.map(({ excessV }) => Math.abs(excessV))),
				currentA: Math.abs(study.atRest.batteryA[reversed.index]!)
			},
			at: subjects([reversed.part, ...others].map(partSubject))
		};
	}
});
