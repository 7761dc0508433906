/** Why a size or rating is what it is when everything is sized: what would be found at the next one down. */
import { gaugesOf, compareGauges, gaugeText } from '#core/conductors';
import { editConductors, type ConductorId, type Diagram } from '#core/diagram';
import { ampsText } from '#core/units';
import { applied, studyOf } from './findings.ts';
import { toMend } from './size-findings.ts';

export function whyNoThinner(diagram: Diagram, id: ConductorId): string {
	const { gauge } = diagram.conductors[id]!;
	const thinner = gaugesOf(gauge.system).findLast((other) => compareGauges(other, gauge) < 0);
	const { currentA } = studyOf(diagram).conductor(id).continuous;
	const carries = `carries ${ampsText(currentA)}`;
	if (!thinner) return `${carries}; there is no thinner one`;
	const before = new Set(toMend(diagram).map(({ severity, key }) => `${severity} ${key}`));
	const after = applied(diagram, [editConductors({ conductors: [id], set: { gauge: thinner } })]);
	const found = after && toMend(after).find(({ severity, key }) => !before.has(`${severity} ${key}`));
	return found ? `${carries}; ${gaugeText(thinner)} would not pass “${found.title}”` : carries;
}

export function whyThisFuse(diagram: Diagram, part: string, link: string, ratingA: number): string {
	const study = studyOf(diagram);
	const index = study.network.branchOfLink.get(`${part}.${link}`)!;
	const { currentA } = study.branchCurrent(index);
	const surgeA = Math.max(
		0,
		...study.cases.filter(({ point }) => point.status === 'solved').map(({ point }) => Math.abs(point.branchA[index]!))
	);
	const share = `carries ${ampsText(currentA)}, at most ${Math.round(100 * study.profile.fuseLoadShare.value)} % of ${ampsText(ratingA)}`;
	return surgeA > currentA * 1.05 ? `${share}, and ${ampsText(surgeA)} for a moment` : share;
}
