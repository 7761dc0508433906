import { gaugeText, resistanceOhm, thinnestGauge } from '#core/conductors';
import type { CaseId, Gauge } from '#core/diagram';
import type { LoadBranch } from '#core/network';
import type { Sourced } from '#core/tables';
import { ampsText, percentText, voltsText } from '#core/units';
import { deviceName, exceeds, lengthAssumptions } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { greatest } from './extremes.ts';
import { continuousLoadA, pathDrop, type PathDrop, type Step } from './path-drop.ts';
import type { Severity } from './finding.ts';
import { continuousCaseIds } from './stack-currents.ts';
import type { Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { warmOhm } from './warm-conductor.ts';
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

const share = ({ dropV, nominalV }: Pick<Data, 'dropV' | 'nominalV'>): string =>
	`${voltsText(dropV)}, ${percentText((100 * dropV) / nominalV)} of ${nominalV} V`;
const limitText = ({ limitPercent, nominalV }: Data): string =>
	`${percentText(limitPercent)} (${voltsText((nominalV * limitPercent) / 100)})`;
const ownWords = (data: Data): string =>
	`${capital(data.name)} loses ${share(data)}, on the way there and back to its own ${ampsText(data.currentA)} in “${data.caseName}”`;
const mostWords = ({ most }: Data): string => ` The largest part is lost in ${most}.`;

export const voltageDrop = defineRuleForEach('loads', {
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
			message: `${ownWords(data)}; a critical circuit may lose ${limitText(data)}.${mostWords(data)}`,
			remedy: data.remedy
		}),
		ordinary: (data: Data) => ({
			message: `${ownWords(data)}; ${limitText(data)} is the limit.${mostWords(data)}`,
			remedy: data.remedy
		}),
		together: (data: Data & { readonly ownV: number }) => ({
			message: `${capital(data.name)} passes on its own (${share({ ...data, dropV: data.ownV })}), but with all else in “${data.caseName}” it loses ${share(data)}; ${limitText(data)} is the limit.${mostWords(data)}`,
			remedy: data.remedy
		}),
		warm: (data: Data & { readonly ownV: number }) => ({
			message: `${capital(data.name)} passes with its conductors as warm as the sizing tables take them (${share({ ...data, dropV: data.ownV })}), but when they have carried their currents for hours it loses ${share(data)}; ${limitText(data)} is the limit.${mostWords(data)}`,
			remedy: data.remedy
		})
	},

	/** One report for each load, about the continuous case in which it is worst. */
	*checkOne(load, study) {
		const drops = dropsOf(study, load);
		const verdict = verdictOn(study, load, drops);
		if (!verdict) return;
		const { message, severity, percent, worst } = verdict;
		const { drop, caseId } = worst;
		const lostIn = (step: Step) => (message === 'together' ? step.dropV : message === 'warm' ? warmV(study, step) : step.ownV);
		const dropV = drop.steps.reduce((sum, step) => sum + lostIn(step), 0);
		const most = largest(drop.steps, lostIn);
		const name = partName(study.part(load.part));
		const allowedV = (drop.nominalV * percent.value) / 100;
		const data = {
			name,
			currentA: worst.currentA,
			dropV,
			ownV: drop.ownV,
			nominalV: drop.nominalV,
			limitPercent: percent.value,
			caseName: study.diagram.cases[caseId]!.label,
			most: listed(most.map((step) => `${stepName(study, step)} (${voltsText(lostIn(step))})`)),
			remedy: message === 'together' ? sharedRemedy(name) : ownRemedy(study, most, dropV - allowedV)
		};
		const views = drop.steps.flatMap(({ branch: { origin } }) => (origin.kind === 'conductor' ? [study.conductor(origin.id)] : []));
		yield {
			message,
			severity,
			data,
			at: subjects([
				partSubject(load.part),
				...most.map(({ branch: { origin } }) => (origin.kind === 'conductor' ? conductorSubject(origin.id) : partSubject(origin.part)))
			]),
			caseId,
			source: percent.source,
			assumptions: lengthAssumptions(views)
		};
	}
});

interface CaseDrop {
	readonly drop: PathDrop;
	readonly caseId: CaseId;
	readonly currentA: number;
}

/** In every continuous case in which it draws. */
const dropsOf = (study: Study, load: LoadBranch): CaseDrop[] =>
	continuousCaseIds(study).flatMap((caseId, place) => {
		const drop = pathDrop(study, place, load);
		return drop ? [{ drop, caseId, currentA: continuousLoadA(study, place, load) }] : [];
	});

interface Verdict {
	readonly message: 'critical' | 'ordinary' | 'together' | 'warm';
	readonly severity: Severity;
	readonly percent: Sourced<number>;
	readonly worst: CaseDrop;
}

/**
 * The sizing rules count a circuit's own current: more than they allow is an error. What other loads take from
 * shared conductors on top is real for the load as well, but no fault of its circuit: a warning.
 */
function verdictOn(study: Study, load: LoadBranch, drops: readonly CaseDrop[]): Verdict | null {
	if (drops.length === 0) return null;
	const { criticalPercent, ordinaryPercent, ordinaryWarnPercent } = study.profile.drop;
	const own = ({ drop }: CaseDrop) => (100 * drop.ownV) / drop.nominalV;
	const whole = ({ drop }: CaseDrop) => (100 * drop.dropV) / drop.nominalV;
	const worstOwn = greatest(drops, own)!;
	const worstWhole = greatest(drops, whole)!;
	const limit = load.critical ? criticalPercent : ordinaryPercent;
	const message = load.critical ? 'critical' : 'ordinary';
	if (exceeds(own(worstOwn), limit.value)) return { message, severity: 'error', percent: limit, worst: worstOwn };
	if (exceeds(whole(worstWhole), limit.value)) return { message: 'together', severity: 'warning', percent: limit, worst: worstWhole };
	if (!load.critical && exceeds(own(worstOwn), ordinaryWarnPercent.value)) {
		return { message, severity: 'warning', percent: ordinaryWarnPercent, worst: worstOwn };
	}
	const warm = ({ drop }: CaseDrop) => (100 * drop.steps.reduce((sum, step) => sum + warmV(study, step), 0)) / drop.nominalV;
	const worstWarm = greatest(drops, warm)!;
	return exceeds(warm(worstWarm), limit.value) ? { message: 'warm', severity: 'note', percent: limit, worst: worstWarm } : null;
}

/** What a load’s own current loses in a step whose copper is as hot as its worst continuous current makes it. */
const warmV = (study: Study, { branch: { origin }, ownA, ownV }: Step): number =>
	origin.kind === 'conductor' ? ownA * warmOhm(study.conductor(origin.id)) : ownV;

/** The step that loses most, with its twin on the other pole, which usually loses as much. */
function largest(steps: readonly Step[], lostIn: (step: Step) => number): Step[] {
	const [first, ...rest] = [...steps].sort((a, b) => Math.round((lostIn(b) - lostIn(a)) * 1e6));
	if (!first) return [];
	const twin = rest.find((step) => step.branch.kind === first.branch.kind && exceeds(lostIn(step), 0.75 * lostIn(first)));
	return twin ? [first, twin] : [first];
}

const stepName = (study: Study, { branch: { origin } }: Step): string =>
	origin.kind === 'conductor' ? study.conductor(origin.id).name : deviceName(study, origin);

const sharedRemedy = (name: string): string => `Thicken what ${name} shares with the other loads, or feed it from nearer the battery.`;

/** The thinnest size for the worst conductors that saves enough. */
function ownRemedy(study: Study, most: readonly Step[], excessV: number): string {
	const chosen = most.flatMap(({ branch: { origin, resistanceOhm: nowOhm }, ownA }) =>
		origin.kind === 'conductor' ? [{ view: study.conductor(origin.id), nowOhm, ownA }] : []
	);
	const [first] = chosen;
	if (!first) return 'Use thicker or shorter conductors, or fewer parts on the way.';
	const savedV = (gauge: Gauge) =>
		chosen.reduce((sum, { view, nowOhm, ownA }) => sum + ownA * (nowOhm - resistanceOhm({ gauge }, view.lengthM)), 0);
	const { gauge: now } = first.view.conductor;
	const gauge = thinnestGauge(now, (g) => !exceeds(excessV, savedV(g)));
	const names = listed(chosen.map(({ view }) => view.name));
	return gauge
		? `Use ${gaugeText(gauge)} for ${names}, or shorten ${chosen.length > 1 ? 'them' : 'it'}.`
		: `Thicken or shorten ${names} and the other conductors on the way, or feed the load at a higher voltage.`;
}
