import { percentText, voltsText } from '#core/units';
import { caseName, continuousCases } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest, least } from './extremes.ts';
import { invertersOf } from './inverter-input.ts';
import { pathDrop } from './path-drop.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

/** Common practice, no source. */
const CONTINUOUS_PERCENT = 3;
/** Room above the voltage at which it switches off. */
const ROOM_V = 0.3;

export const inverterDrop = defineRule({
	meta: {
		id: 'inverter-drop',
		title: 'An inverter keeps its voltage under load',
		severity: 'warning',
		group: 'conductors',
		why: 'What is lost on the way brings its switch-off voltage nearer: it goes off with the battery half full, or at every motor that starts.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		drop: ({ name, dropV, percent, caseName }: { name: string; dropV: number; percent: number; caseName: string }) => ({
			message: `${capital(name)} loses ${voltsText(dropV)}, ${percentText(percent)}, on the way there and back in “${caseName}”; 3 % is usual for an inverter.`,
			remedy: 'Use shorter or thicker conductors, or place the inverter nearer to the battery.'
		}),
		surge: ({ name, volts, cutOffV, caseName }: { name: string; volts: number; cutOffV: number; caseName: string }) => ({
			message: `In “${caseName}” ${name} has ${voltsText(volts)} left, and switches off below ${voltsText(cutOffV)}.`,
			remedy: 'Use shorter or thicker conductors, a larger battery, or start less at a time.'
		})
	},

	/** A continuous drop beyond the profile's limit for all loads is that rule's to report. */
	*check(study) {
		const { ordinaryWarnPercent, ordinaryPercent, criticalPercent } = study.profile.drop;
		for (const { load, cutOffV } of invertersOf(study)) {
			const name = partName(study.part(load.part));
			const at = [partSubject(load.part)] as const;
			const generalPercent = load.critical ? criticalPercent.value : Math.min(ordinaryWarnPercent.value, ordinaryPercent.value);
			const drops = continuousCases(study).flatMap((result, place) => {
				const drop = pathDrop(study, place, load);
				return drop
					? [{ result, dropV: drop.ownV, percent: (100 * drop.ownV) / drop.nominalV, wholePercent: (100 * drop.dropV) / drop.nominalV }]
					: [];
			});
			const worst = greatest(drops, ({ percent }) => percent);
			if (
				worst &&
				exceeds(worst.percent, CONTINUOUS_PERCENT) &&
				!drops.some(({ percent, wholePercent }) => exceeds(percent, generalPercent) || exceeds(wholePercent, ordinaryPercent.value))
			) {
				yield {
					message: 'drop',
					data: { name, dropV: worst.dropV, percent: worst.percent, caseName: caseName(worst.result) },
					at,
					caseId: worst.result.id
				};
			}
			if (cutOffV === null) continue;
			const surges = study.cases
				.filter(
					({ point, operatingCase }) => operatingCase.duration === 'surge' && point.status === 'solved' && point.loadA[load.index]! > 0
				)
				.map((result) => ({ result, volts: result.point.loadV[load.index]! }));
			const low = least(surges, ({ volts }) => volts);
			if (low && exceeds(cutOffV + ROOM_V, low.volts)) {
				yield {
					message: 'surge',
					severity: 'error',
					data: { name, volts: low.volts, cutOffV, caseName: caseName(low.result) },
					at,
					caseId: low.result.id
				};
			}
		}
	}
});
