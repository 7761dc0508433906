import { gaugeText } from '#core/conductors';
import { ampsText, voltsText, wattsText } from '#core/units';
import { amperageSource, amperageText, deviceName, exceeds, gaugeForCurrent } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { cutOff, invertersOf } from './inverter-input.ts';
import { feedOf, onlyConductorAt } from './load-feed.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const inverterLowVoltageCurrent = defineRule({
	meta: {
		id: 'inverter-low-voltage-current',
		title: 'An inverter’s conductors and fuse carry its current at its lowest voltage',
		severity: 'error',
		group: 'conductors',
		why: 'An inverter draws constant power: as the battery empties its current rises, and what was enough at full charge is not at the end.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		conductor: ({ name, watts, volts, currentA, conductors, thicker }: Conductor) => ({
			message: `${capital(name)} draws ${wattsText(watts)}: ${ampsText(currentA)} at ${voltsText(volts)}, where it switches off. ${capital(conductors)} carries less.`,
			remedy: thicker ? `Use at least ${thicker}.` : 'Use a smaller inverter or a higher system voltage.'
		}),
		fuse: ({ name, watts, volts, currentA, device, ratingA }: Fuse) => ({
			message: `${capital(name)} draws ${wattsText(watts)}: ${ampsText(currentA)} at ${voltsText(volts)}, where it switches off. ${capital(device)} is ${ampsText(ratingA)} and opens before that.`,
			remedy: 'Fit a larger fuse if the conductors allow it; otherwise thicker conductors with it.'
		})
	},

	/** What carries too much in an operating case as drawn is said by the rules on conductors and fuses. */
	*check(study) {
		for (const inverter of invertersOf(study)) {
			const { load, watts } = inverter;
			const view = study.part(load.part);
			const name = partName(view);
			const { volts, assumptions } = cutOff(study, inverter, capital(name));
			const currentA = watts / volts;
			const own = [onlyConductorAt(study, load.positive), onlyConductorAt(study, load.negative)].filter((found) => found !== null);
			const thin = own.filter(
				({ ampacity, continuous }) => exceeds(currentA, ampacity.currentA) && !exceeds(continuous.currentA, ampacity.currentA)
			);
			if (thin.length > 0) {
				yield {
					message: 'conductor',
					data: { name, watts, volts, currentA, conductors: amperages(thin), thicker: gaugeForCurrent(study, thin[0]!, currentA) },
					at: subjects([partSubject(load.part), ...thin.map(({ id }) => conductorSubject(id))]),
					source: `common practice, no source; ${amperageSource(thin[0]!.ampacity)}`,
					unverified: thin.some(({ ampacity }) => ampacity.unverified),
					assumptions
				};
			}
			const device = feedOf(study, load)?.letThrough.limitedBy;
			if (device?.length !== 1 || !exceeds(currentA, device[0]!.currentA) || alreadyOver(study, device[0]!)) continue;
			yield {
				message: 'fuse',
				severity: 'warning',
				data: { name, watts, volts, currentA, device: deviceName(study, device[0]!), ratingA: device[0]!.currentA },
				at: subjects([partSubject(load.part), partSubject(device[0]!.part)]),
				assumptions
			};
		}
	}
});

interface Common {
	readonly name: string;
	readonly watts: number;
	readonly volts: number;
	readonly currentA: number;
}
type Conductor = Common & { readonly conductors: string; readonly thicker: string | null };
type Fuse = Common & { readonly device: string; readonly ratingA: number };

const amperages = (views: readonly ConductorView[]): string =>
	listed(views.map(({ name, conductor, ampacity }) => `${name} (${gaugeText(conductor.gauge)}, ${amperageText(ampacity)})`));

function alreadyOver(study: Study, { part, link, currentA }: { part: string; link: string; currentA: number }): boolean {
	const index = study.form.branchOfLink.get(`${part}.${link}`);
	return index === undefined || exceeds(study.branchCurrent(index).currentA, study.profile.fuseLoadShare.value * currentA);
}
