import { voltsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Charging voltage of a 12 V block, by chemistry: common practice, no source. */
const CHARGING_V: Readonly<Record<string, { readonly fromV: number; readonly toV: number }>> = {
	'lithium-iron-phosphate': { fromV: 14.2, toV: 14.6 },
	'lead-acid': { fromV: 14.1, toV: 14.8 }
};

interface Data {
	readonly name: string;
	readonly setV: number;
	readonly batteries: string;
	readonly fromV: number;
	readonly toV: number;
}

export const chargeVoltage = defineRule({
	meta: {
		id: 'charge-voltage',
		title: 'A charger is set to the voltage of the battery it charges',
		severity: 'warning',
		group: 'batteries',
		why: 'A tenth of a volt too much gasses and heats a battery, too little never fills it; the wrong system voltage destroys it or does nothing.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		mismatch: ({ name, setV, batteries, fromV, toV }: Data) => ({
			message: `${capital(name)} charges to ${voltsText(setV)}; ${batteries} should be charged to ${voltsText(fromV)} to ${voltsText(toV)}.`,
			remedy: `Set it to a voltage in that range, or use a charger with a profile for these batteries.`
		}),
		wrongSystem: ({ name, setV, batteries, fromV, toV }: Data) => ({
			message: `${capital(name)} charges to ${voltsText(setV)}, but ${batteries} need ${voltsText(fromV)} to ${voltsText(toV)}: it is made for another system voltage.`,
			remedy: 'Use a charger for this system voltage.'
		})
	},

	/** One report for each charger, controller, alternator or converter whose output reaches a battery. */
	*check({ form, nets, part }) {
		for (const source of form.sources) {
			const top = form.batteries.filter(({ positive }) => nets.of(positive) === nets.of(source.positive));
			const chemistries = new Set(top.map((battery) => String(part(battery.part).params['chemistry'])));
			const [chemistry, ...others] = chemistries;
			const railV = nets.voltsBetween(source.positive, source.negative);
			const range = chemistry === undefined ? undefined : CHARGING_V[chemistry];
			if (!range || others.length > 0 || railV === null || railV <= 0) continue;
			// The string's number of 12 V blocks, by its open-circuit voltage.
			const blocks = Math.max(1, Math.round((2 * railV) / 12.9) / 2);
			const [fromV, toV] = [range.fromV * blocks, range.toV * blocks];
			if (!exceeds(fromV, source.setV) && !exceeds(source.setV, toV)) continue;
			const isOtherSystem = exceeds(source.setV, 1.25 * toV) || exceeds(0.75 * fromV, source.setV);
			yield {
				message: isOtherSystem ? 'wrongSystem' : 'mismatch',
				severity: isOtherSystem ? 'error' : 'warning',
				data: {
					name: partName(part(source.part)),
					setV: source.setV,
					batteries: listed(top.map((battery) => partName(part(battery.part)))),
					fromV,
					toV
				},
				at: subjects([source.part, ...top.map((battery) => battery.part)].map(partSubject))
			};
		}
	}
});
