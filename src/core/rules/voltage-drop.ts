import { compareGauges, gaugeText, resistanceOhm, thinnestGauge } from '#core/conductors';
import type { LoadBranch } from '#core/network';
import type { Sourced } from '#core/tables';
import { ampsText, percentText, voltsText } from '#core/units';
import { deviceName, lengthAssumptions } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { pathDrop, type PathDrop } from './path-drop.ts';
import type { CaseResult, ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly currentA: number;
	readonly dropV: number;
	readonly nominalV: number;
	readonly limitPercent: number;
	readonly caseName: string;
	readonly most: string;
	readonly remedy: string;
}

const lost = ({ name, currentA, dropV, nominalV, caseName }: Data): string =>
	`${capital(name)} loses ${voltsText(dropV)}, ${percentText((100 * dropV) / nominalV)} of ${nominalV} V, on the way there and back at ${ampsText(currentA)} in "${caseName}"`;
const most = (data: Data): string => (data.most ? ` The largest part is lost in ${data.most}.` : '');

export const voltageDrop = defineRule({
	meta: {
		id: 'voltage-drop',
		title: 'A load gets the voltage it needs',
		severity: 'error',
		group: 'conductors',
		why: 'Lamps dim, pumps slow down and stall, radios and fridges switch off at voltages the battery still has.',
		source: {
			'us-small-craft': 'ABYC E-11 3 % circuits (voluntary), 46 CFR 169.672 10 %',
			default: 'ABYC E-11 3 % and 10 % circuits (voluntary)'
		}
	},

	messages: {
		critical: (data: Data) => ({
			message: `${lost(data)}; a critical circuit may lose ${percentText(data.limitPercent)} (${voltsText((data.nominalV * data.limitPercent) / 100)}).${most(data)}`,
			remedy: data.remedy
		}),
		ordinary: (data: Data) => ({
			message: `${lost(data)}; ${percentText(data.limitPercent)} (${voltsText((data.nominalV * data.limitPercent) / 100)}) is the limit.${most(data)}`,
			remedy: data.remedy
		})
	},

	/** One report for each load, about the continuous case in which it loses most. */
	*check(study) {
		for (const load of study.network.loads) {
			const worst = worstCase(study, load);
			if (!worst) continue;
			const { drop, result } = worst;
			const percent = (100 * drop.dropV) / drop.nominalV;
			const limit = limitFor(study, load, percent);
			if (!limit) continue;

			const conductors = drop.steps.flatMap(({ branch, dropV }) =>
				branch.origin.kind === 'conductor' ? [{ view: study.conductor(branch.origin.id), dropV }] : []
			);
			const [largest, ...rest] = [...drop.steps].sort((a, b) => Math.round((b.dropV - a.dropV) * 1e6));
			// The return of the same circuit usually loses as much: name both.
			const twin = rest.find(({ branch, dropV }) => branch.origin.kind === largest?.branch.origin.kind && dropV > 0.75 * largest.dropV);
			const top = [largest, twin].flatMap((step) => step ?? []);
			yield {
				message: load.critical ? 'critical' : 'ordinary',
				severity: limit.severity,
				data: {
					name: partName(study.part(load.part)),
					currentA: result.point.loadA[load.index]!,
					dropV: drop.dropV,
					nominalV: drop.nominalV,
					limitPercent: limit.percent.value,
					caseName: result.operatingCase.label,
					most: listed(top.map(({ branch, dropV }) => `${stepName(study, branch.origin)} (${voltsText(dropV)})`)),
					remedy: remedyFor(
						conductors.map(({ view, dropV }) => ({ view, currentA: dropV / view.branch.resistanceOhm })),
						top.flatMap(({ branch }) => (branch.origin.kind === 'conductor' ? [branch.origin.id] : [])),
						drop.dropV - (drop.nominalV * limit.percent.value) / 100
					)
				},
				at: subjects([
					partSubject(load.part),
					...top.map(({ branch: { origin } }) => (origin.kind === 'conductor' ? conductorSubject(origin.id) : partSubject(origin.part)))
				]),
				caseId: result.id,
				source: limit.percent.source,
				unverified: limit.percent.confidence === 'memory',
				assumptions: lengthAssumptions(conductors.map(({ view }) => view))
			};
		}
	}
});

function worstCase(study: Study, load: LoadBranch): { drop: PathDrop; result: CaseResult } | null {
	let worst: { drop: PathDrop; result: CaseResult } | null = null;
	for (const result of study.cases) {
		const { point, operatingCase } = result;
		if (operatingCase.duration !== 'continuous' || point.status !== 'solved' || !point.loadFed[load.index]) continue;
		const drop = pathDrop(study, point, load);
		if (drop && (!worst || drop.dropV > worst.drop.dropV)) worst = { drop, result };
	}
	return worst;
}

function limitFor(
	{ profile }: Study,
	load: LoadBranch,
	percent: number
): { percent: Sourced<number>; severity: 'error' | 'warning' } | null {
	const { criticalPercent, ordinaryPercent, ordinaryWarnPercent } = profile.drop;
	if (load.critical) return percent > criticalPercent.value ? { percent: criticalPercent, severity: 'error' } : null;
	if (percent > ordinaryPercent.value) return { percent: ordinaryPercent, severity: 'error' };
	return percent > ordinaryWarnPercent.value ? { percent: ordinaryWarnPercent, severity: 'warning' } : null;
}

const stepName = (study: Study, origin: PathDrop['steps'][number]['branch']['origin']): string =>
	origin.kind === 'conductor' ? study.conductor(origin.id).name : deviceName(study, origin);

/** The thinnest size for the worst conductors that saves what is lost too much, at the same current. */
function remedyFor(path: readonly { view: ConductorView; currentA: number }[], worst: readonly string[], excessV: number): string {
	const chosen = path.filter(({ view }) => worst.includes(view.id));
	const [first] = chosen;
	if (!first) return 'Use thicker or shorter conductors, or fewer parts on the way.';
	const savedV = (gauge: ConductorView['conductor']['gauge']) =>
		chosen.reduce((sum, { view, currentA }) => sum + currentA * (view.branch.resistanceOhm - resistanceOhm({ gauge }, view.lengthM)), 0);
	const gauge = thinnestGauge(first.view.conductor.gauge, (g) => compareGauges(g, first.view.conductor.gauge) > 0 && savedV(g) >= excessV);
	const names = listed(chosen.map(({ view }) => view.name));
	return gauge
		? `Use ${gaugeText(gauge)} for ${names}, or shorten ${chosen.length > 1 ? 'them' : 'it'}.`
		: `Thicken or shorten ${names} and the other conductors on the way, or feed the load at a higher voltage.`;
}
