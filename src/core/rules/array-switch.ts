import { voltsText } from '#core/units';
import { arraysOf, coldVolts, type SolarArray } from './arrays.ts';
import { chassisOf } from './chassis.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { choiceOf, numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

export const arraySwitch = defineRule({
	meta: {
		id: 'array-switch',
		title: 'An array can be switched off, at its voltage',
		severity: 'error',
		group: 'protection',
		why: 'An array cannot be turned off while the sun shines: a plug or AC switch pulled under load draws an arc that does not go out.',
		source: { default: 'NFPA 70 690.13, 690.15, from memory; IEC 60364-7-712, from memory' }
	},

	messages: {
		none: ({ name }: { name: string }) => ({
			message: `The array of ${name} cannot be switched off.`,
			remedy: 'Put a switch for direct current under load between array and controller, in both poles where neither is bonded.'
		}),
		onePole: ({ name }: { name: string }) => ({
			message: `The array of ${name} is switched in one pole, and neither of its poles is bonded: with the switch open the other still has voltage against the metalwork after a first fault.`,
			remedy: 'Use a switch with two poles.'
		}),
		plug: ({ name }: { name: string }) => ({
			message: `The array of ${name} is parted by its plug alone.`,
			remedy: 'Cover it before pulling the plug, or put a switch for direct current under load before it.'
		}),
		volts: ({ name, switchV, arrayV }: { name: string; switchV: number; arrayV: number }) => ({
			message: `The array switch of ${name} is made for ${voltsText(switchV)}; the array reaches ${voltsText(arrayV)}.`,
			remedy: 'Use a switch for at least that voltage of direct current.'
		})
	},

	/** Only where something is said of a switch, or that there is none. */
	*check(study) {
		for (const array of arraysOf(study)) {
			const name = partName(array.view);
			const at = [partSubject(array.view.id)] as const;
			const said = choiceOf(array.view, 'arraySwitch');
			if (said === 'no') yield { message: 'none', data: { name }, at, unverified: true };
			else if (said === 'plug') yield { message: 'plug', severity: 'warning', data: { name }, at, unverified: true };
			else if (said === 'one' && !isBonded(study, array)) yield { message: 'onePole', data: { name }, at, unverified: true };
			else if (said === 'one' || said === 'both') {
				const switchV = numberOf(array.view, 'arraySwitchV');
				const arrayV = coldVolts(array)?.value ?? (array.vocV === null ? null : array.inSeries * array.vocV);
				if (switchV !== null && arrayV !== null && exceeds(arrayV, switchV))
					yield { message: 'volts', data: { name, switchV, arrayV }, at, unverified: true };
			}
		}
	}
});

/** Where no bond is drawn the system's word is taken; where one is, it must reach the controller: an isolated converter parts them. */
function isBonded(study: Study, { view }: SolarArray): boolean {
	if (study.diagram.system.negative !== 'bonded') return false;
	const { nodes, bonds } = chassisOf(study);
	const chassis = new Set([...nodes].map(study.nets.of));
	return bonds.length === 0 || view.terminals.some(({ id }) => chassis.has(study.nets.of(study.form.nodeOf.get(`${view.id}.${id}`)!)));
}
