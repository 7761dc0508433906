import { ofSameForm, type BatteryBranch, type SourceBranch } from '#core/network';
import { solveCase } from '#core/solver';
import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { choiceOf, isSet, numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** What an alternator delivers for hours, as a share of what is stamped on it: common practice, no source. */
const HOT_SHARE = 0.7;
/** Share of the hot output above which it ages fast: common practice, no source. */
const LONG_SHARE = 0.6;
/** Greatest current lithium takes, as a multiple of its capacity, measured in vehicles: common practice, no source. */
const TAKEN_C = 0.33;

interface Data {
	readonly name: string;
	readonly batteries: string;
	readonly takenA: number;
	readonly hotA: number;
	readonly limitA: number;
}

export const alternatorOverloaded = defineRule({
	meta: {
		id: 'alternator-overloaded',
		title: 'An alternator is not run flat out for hours by a lithium bank',
		severity: 'warning',
		group: 'batteries',
		why: 'A lead-acid battery takes less and less; lithium takes all there is until it is full. An alternator held at its limit cooks its own windings.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		over: ({ name, batteries, takenA, hotA }: Data) => ({
			message: `${capital(batteries)}, nearly empty, ${batteries.includes(' and ') ? 'take' : 'takes'} about ${ampsText(takenA)} from ${name}, which gives ${ampsText(hotA)} when hot.`,
			remedy: 'Charge through a DC-DC charger that limits the current, or use a regulator that watches the heat of the alternator.'
		}),
		long: ({ name, batteries, takenA, hotA, limitA }: Data) => ({
			message: `${capital(batteries)}, nearly empty, ${batteries.includes(' and ') ? 'take' : 'takes'} about ${ampsText(takenA)} from ${name} for hours; of its ${ampsText(hotA)} when hot, ${ampsText(limitA)} is what it bears for long.`,
			remedy: 'Charge through a DC-DC charger that limits the current, or use a regulator that watches the heat of the alternator.'
		})
	},

	*check(study) {
		const { network, nets, part } = study;
		for (const source of network.sources) {
			const view = part(source.part);
			if (!('hotA' in view.params) || isSet(view, 'heatSensed')) continue;
			const lithium = network.batteries.filter(
				({ positive, part: id }) => nets.of(positive) === nets.of(source.positive) && choiceOf(part(id), 'chemistry') !== 'lead-acid'
			);
			if (lithium.length === 0) continue;
			const hotA = numberOf(view, 'hotA') ?? HOT_SHARE * source.maxA;
			const takenA = Math.min(takenBy(study, source, lithium), TAKEN_C * lithium.reduce((sum, { capacityAh }) => sum + capacityAh, 0));
			const limitA = LONG_SHARE * hotA;
			if (!exceeds(takenA, limitA)) continue;
			const isOver = exceeds(takenA, hotA);
			yield {
				message: isOver ? 'over' : 'long',
				severity: isOver ? 'error' : 'warning',
				data: {
					name: partName(view),
					batteries: listed(lithium.map(({ part: id }) => partName(part(id)))),
					takenA,
					hotA,
					limitA
				},
				at: subjects([source, ...lithium].map((item) => partSubject(item.part))),
				assumptions: numberOf(view, 'hotA') === null ? [`Output of ${partName(view)} when hot taken as 0.7 of its rated output.`] : []
			};
		}
	}
});

/** More than any alternator gives, so that only batteries and conductors limit the current. */
const PLENTY_A = 1e5;

/** Amps into these batteries, nearly empty, at the regulator's voltage and all else off. */
function takenBy({ network }: Study, source: SourceBranch, lithium: readonly BatteryBranch[]): number {
	const sources = network.sources.map((other) => (other === source ? { ...other, maxA: PLENTY_A } : other));
	const point = solveCase(ofSameForm({ ...network, sources }, network), 'taken', {
		label: '',
		order: 0,
		duration: 'continuous',
		loads: 0,
		sources: 0,
		levels: { [source.part]: 1 },
		battery: 'low'
	});
	return point.status === 'solved' ? lithium.reduce((sum, { index }) => sum + Math.max(0, -point.batteryA[index]!), 0) : Infinity;
}
