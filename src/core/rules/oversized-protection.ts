import { gaugeText } from '#core/conductors';
import { ampsText } from '#core/units';
import { alsoText, amperageSource, amperageText, gaugeForDevice, largestRatingA, limitedByText, limitText } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { returnBeside } from './load-feed.ts';
import { overcurrentFaults } from './overcurrent.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly amperage: string;
	readonly devices: string;
	readonly limitA: number;
	readonly limit: string;
	readonly ratingA: number;
	readonly thicker: string | null;
	/** The return that would have to grow with it, in words. */
	readonly beside: string;
	readonly also: string;
}

const orThicker = ({ thicker, name, beside }: Data): string =>
	thicker ? `, or use at least ${thicker}${beside && ` for ${name}${beside}`}` : '';
const tooMuch = ({ limitA, limit, also }: Data): string => `at most ${ampsText(limitA)} is allowed (${limit}).${also}`;

export const oversizedProtection = defineRule({
	meta: {
		id: 'oversized-protection',
		title: 'A fuse or breaker is no larger than its conductor allows',
		severity: 'error',
		group: 'protection',
		why: 'A fuse larger than the conductor lets it overheat for hours, or for good, without opening.',
		source: { 'us-small-craft': '33 CFR 183.455(c)', default: 'common practice, no source' }
	},

	messages: {
		single: (data: Data) => ({
			message: `${capital(data.name)} (${data.gauge}, ${data.amperage}) is protected by ${data.devices}; ${tooMuch(data)}`,
			remedy: `Fit at most ${ampsText(data.ratingA)}${orThicker(data)}.`
		}),
		sum: (data: Data) => ({
			message: `${capital(data.name)} (${data.gauge}, ${data.amperage}) is fed in parallel through ${data.devices}; ${tooMuch(data)}`,
			remedy: `Fit devices that add up to at most ${ampsText(data.ratingA)}, or one of at most ${ampsText(data.ratingA)} at the start of ${data.name}${orThicker(data)}.`
		})
	},

	*check(study) {
		for (const { kind, view, limit, letThrough, alike } of overcurrentFaults(study)) {
			if (kind !== 'oversized') continue;
			const parts = [...new Set(letThrough.limitedBy.map(({ part }) => part))];
			yield {
				message: letThrough.limitedBy.length > 1 ? 'sum' : 'single',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					amperage: amperageText(view.ampacity),
					devices: limitedByText(study, letThrough),
					limitA: limit.currentA,
					limit: limitText(limit, view.ampacity.currentA),
					ratingA: largestRatingA(limit.currentA),
					thicker: gaugeForDevice(study, view, letThrough.currentA),
					beside: returnBeside(study, view),
					also: alsoText(study, alike)
				},
				at: subjects([conductorSubject(view.id), ...parts.map(partSubject), ...alike.map(conductorSubject)]),
				source: `${limit.source}; ${amperageSource(view.ampacity)}`,
				unverified: view.ampacity.unverified || limit.unverified
			};
		}
	}
});
