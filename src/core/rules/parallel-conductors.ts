import { areaMm2, gaugeText } from '#core/conductors';
import { studKey, type ConductorId } from '#core/diagram';
import { ampsText, metresText } from '#core/units';
import { exceeds, lengthAssumptions } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { groupBy } from './group-by.ts';
import type { ConductorView } from './study.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { ofForm } from './watch.ts';
import { capital, listed } from './words.ts';

const LEAST_AREA_MM2 = areaMm2({ system: 'awg', size: '1/0' });
/** Lengths within this share of the longest count as equal: common practice, no source. */
const LENGTH_TOLERANCE = 0.05;

/** Conductors between the same two studs, where there are several. */
const betweenSameStuds = ofForm(({ diagram, form }): readonly { readonly ids: readonly ConductorId[] }[] => {
	const groups = groupBy([...form.nodeOfEnd.keys()], (id) => {
		const { from, to } = diagram.conductors[id]!;
		return [studKey(from), studKey(to)].sort().join(' ');
	});
	return [...groups.values()].filter(({ length }) => length > 1).map((ids) => ({ ids }));
});

export const parallelConductors = defineRuleForEach(betweenSameStuds, {
	meta: {
		id: 'parallel-conductors',
		title: 'Conductors in parallel are alike, and thick',
		severity: 'warning',
		group: 'conductors',
		why: 'Unlike conductors share unlike: the shorter or thicker one is overloaded while the fuse sees only the sum. If one comes loose, the other carries all.',
		source: { default: 'NFPA 70 310.10(G), 1/0 AWG and larger, from memory; IEC 60364-4-43 433.4' }
	},

	messages: {
		unequal: ({ names, shares }: { names: string; shares: string }) => ({
			message: `${capital(names)} lie in parallel and differ in size or length: ${shares}.`,
			remedy: 'Use one thicker conductor, or conductors of the same size and length.'
		}),
		thin: ({ names, gauge }: { names: string; gauge: string }) => ({
			message: `${capital(names)} (${gauge}) lie in parallel; conductors thinner than 1/0 AWG should not share a current.`,
			remedy: 'Use one thicker conductor.'
		})
	},

	/** One report for each pair or group between the same two studs. */
	*checkOne({ ids }, study) {
		const views = ids.map(study.conductor).filter(({ conductor }) => conductor.use !== 'spare');
		if (views.length < 2) return;
		const [first] = views as [ConductorView, ...ConductorView[]];
		const areas = views.map(({ conductor }) => areaMm2(conductor.gauge));
		const lengths = views.map(({ lengthM }) => lengthM);
		const isUnequal =
			exceeds(Math.max(...areas), Math.min(...areas)) || exceeds(Math.max(...lengths) * (1 - LENGTH_TOLERANCE), Math.min(...lengths));
		if (!isUnequal && !exceeds(LEAST_AREA_MM2, areas[0]!)) return;
		const names = listed(views.map(({ name }) => name));
		const shares = listed(
			views.map(
				({ name, conductor, lengthM, continuous }) =>
					`${name} ${gaugeText(conductor.gauge)} ${metresText(lengthM)} (${ampsText(continuous.currentA)})`
			)
		);
		const at = subjects(views.map(({ id }) => conductorSubject(id)));
		if (isUnequal) yield { message: 'unequal', data: { names, shares }, at, assumptions: lengthAssumptions(views) };
		else yield { message: 'thin', data: { names, gauge: gaugeText(first.conductor.gauge) }, at, unverified: true };
	}
});
