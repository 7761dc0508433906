import { percentText, voltsText } from '#core/units';
import { continuousCases } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import { chargingDrop } from './path-drop.ts';
import { partSubject, subjects } from './subjects.ts';
import { listed, partName } from './words.ts';

/** 0.2 V at 12 V, and in proportion: common practice, no source. */
const LIMIT_SHARE = 0.2 / 12;

export const chargingDropRule = defineRule({
	meta: {
		id: 'charging-drop',
		title: 'A charger’s voltage reaches the battery',
		severity: 'warning',
		group: 'conductors',
		why: 'A charger regulates the voltage at its own terminals: what is lost on the way it takes for a full battery, and the last part of the charge never ends.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		drop: ({ drops, limitV, one }: { drops: string; limitV: number; one: boolean }) => ({
			message: `More than ${voltsText(limitV)} is lost between charger and battery, there and back, to the charger’s own current: ${drops}.`,
			remedy: `Use thicker or shorter conductors for ${one ? 'it' : 'them'}, or sense the voltage at the battery’s posts.`
		})
	},

	/** One report for all chargers, each in the continuous case in which it loses most; the worst first. */
	*check(study) {
		const { nominalV } = study.diagram.system;
		const limitV = LIMIT_SHARE * nominalV;
		const over = study.form.sources.flatMap((source) => {
			const drops = continuousCases(study).flatMap((result, place) => {
				const dropV = chargingDrop(study, place, result, source);
				return dropV === null ? [] : [{ source, result, dropV }];
			});
			const worst = greatest(drops, ({ dropV }) => dropV);
			return worst && exceeds(worst.dropV, limitV) ? [worst] : [];
		});
		over.sort((a, b) => b.dropV - a.dropV);
		const [first] = over;
		if (!first) return;
		const texts = over.map(
			({ source, dropV }) => `${partName(study.part(source.part))} ${voltsText(dropV)} (${percentText((100 * dropV) / nominalV)})`
		);
		yield {
			message: 'drop',
			data: { drops: listed(texts), limitV, one: over.length === 1 },
			at: subjects(over.map(({ source }) => partSubject(source.part))),
			caseId: first.result.id
		};
	}
});
