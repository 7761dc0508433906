import { gaugeText } from '#core/conductors';
import { ampsText } from '#core/units';
import { amperageSource, amperageText, exceeds, gaugeForCurrent } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { conductorSubject } from './subjects.ts';
import { capital } from './words.ts';

/** Share of the amperage from which a conductor is close to its limit: common practice, no source. */
const CLOSE = 0.9;

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly currentA: number;
	readonly amperage: string;
	readonly caseName: string;
	readonly thicker: string | null;
}

const remedy = ({ name, thicker }: Data): string =>
	thicker
		? `Use at least ${thicker} for ${name}, or less load.`
		: `No thicker size of this kind carries it: share the load between two circuits, or use insulation for a higher temperature.`;

export const undersizedConductor = defineRuleForEach('conductors', {
	meta: {
		id: 'undersized-conductor',
		title: 'A conductor carries no more than its amperage',
		severity: 'error',
		group: 'conductors',
		why: 'Above its amperage a conductor grows hotter than its insulation is made for, all day and with nothing wrong: it hardens, cracks, and in a bundle it burns.',
		source: {
			'us-small-craft': '33 CFR 183.425(b), Table 5',
			default: 'common practice, with 33 CFR 183.425 Table 5'
		}
	},

	messages: {
		over: (data: Data) => ({
			message: `${capital(data.name)} (${data.gauge}) carries ${ampsText(data.currentA)} continuously in “${data.caseName}”; its amperage is ${data.amperage}.`,
			remedy: remedy(data)
		}),
		close: (data: Data) => ({
			message: `${capital(data.name)} (${data.gauge}) carries ${ampsText(data.currentA)} continuously in “${data.caseName}”, more than 90 % of its amperage, ${data.amperage}.`,
			remedy: remedy(data)
		})
	},

	*checkOne(view, study) {
		const { ampacity, continuous, conductor } = view;
		// 33 CFR 183.425(g): cranking-motor conductors are exempt.
		if (conductor.use === 'cranking' || continuous.caseId === null) return;
		const isOver = exceeds(continuous.currentA, ampacity.currentA);
		if (!isOver && !exceeds(continuous.currentA, CLOSE * ampacity.currentA)) return;
		yield {
			message: isOver ? 'over' : 'close',
			severity: isOver ? 'error' : 'warning',
			data: {
				name: view.name,
				gauge: gaugeText(conductor.gauge),
				currentA: continuous.currentA,
				amperage: amperageText(ampacity),
				caseName: study.diagram.cases[continuous.caseId]!.label,
				thicker: gaugeForCurrent(study, view, continuous.currentA / (isOver ? 1 : CLOSE))
			},
			at: [conductorSubject(view.id)],
			caseId: continuous.caseId,
			source: isOver ? amperageSource(ampacity) : `common practice, no source; ${amperageSource(ampacity)}`,
			unverified: ampacity.unverified
		};
	}
});
