/**
 * A load's start: what it draws for a moment, how far its volts dip, and whether a fuse before it may open. Worked out
 * in the continuous case in which it draws most, with this load starting and all else as there.
 */
import type { Branch } from '#core/network';
import { deviceName, partName, type Study } from '#core/rules';
import { openingAt, type Opening } from '#core/faults';
import { solveCase } from '#core/solver';
import { caseLabel, SOLVED } from './branch.ts';
import type { Explanation } from './explanation.ts';
import type { LinkRef, StartDeviceFigure, StartFigure } from './figure-id.ts';
import { explainLoadCurrent, explainLoadVolts, loadOf, type LoadState } from './load.ts';
import { explainOpening } from './opening.ts';
import { wayFrom } from './way.ts';
import { explanation, input } from './write-out.ts';

export interface Start {
	/** Running on, and starting. */
	readonly before: LoadState;
	readonly during: LoadState;
	readonly times: number;
	/** How long it lasts; null where the drawing does not say. */
	readonly seconds: number | null;
	/** Fuses and breakers between supply and load, with what each carries meanwhile. */
	readonly devices: readonly StartDevice[];
}

export interface StartDevice {
	readonly branch: Branch;
	readonly ref: LinkRef;
	readonly name: string;
	readonly currentA: number;
	/** Null where its curve is not known. */
	readonly opening: Opening | null;
	/** Null as above, or where how long the start lasts is not known and it does not hold anyway. */
	readonly verdict: StartVerdict | null;
}

/** "holds" through the start; "may-open", or may not, by its band; "opens" before the start is over. */
export type StartVerdict = 'holds' | 'may-open' | 'opens';

const starts = new WeakMap<Study, Map<string, Start | null>>();

/** Null for a load that draws no more at start than rated, or runs in no continuous case. Kept. */
export function startOf(study: Study, ref: LinkRef): Start | null {
	let known = starts.get(study);
	if (!known) starts.set(study, (known = new Map()));
	const key = `${ref.part}.${ref.link}`;
	if (!known.has(key)) known.set(key, workOut(study, ref));
	return known.get(key)!;
}

function workOut(study: Study, ref: LinkRef): Start | null {
	const load = loadOf(study, ref);
	const link = study.part(ref.part).links.find(({ id }) => id === ref.link);
	if (!load || link?.kind !== 'load' || !link.starting || link.starting.times <= 1) return null;
	const runs = study.cases.filter(
		({ operatingCase, point }) => operatingCase.duration === 'continuous' && point.status === 'solved' && point.loadA[load.index]! > 1e-9
	);
	const [first, ...others] = runs;
	if (!first) return null;
	const base = others.reduce((most, run) => (run.point.loadA[load.index]! > most.point.loadA[load.index]! ? run : most), first);

	const label = caseLabel(study, base.id);
	const startCase = { ...base.operatingCase, label, duration: 'surge' as const, starting: { [ref.part]: true as const } };
	const point = solveCase(study.network, base.id, startCase);
	if (point.status !== 'solved') return null;
	const { seconds } = link.starting;
	return {
		before: { load, operatingCase: { ...base.operatingCase, label }, point: base.point },
		during: { load, operatingCase: startCase, point },
		times: link.starting.times,
		seconds,
		devices: devicesBefore(study, point, load.positive).map(({ branch, currentA }) => startDevice(study, branch, currentA, seconds))
	};
}

const devicesBefore = ({ network }: Study, point: LoadState['point'], node: number) =>
	(wayFrom(network, point, node, 'positive')?.steps ?? []).filter(({ branch }) => branch.device !== null);

function startDevice(study: Study, branch: Branch, currentA: number, seconds: number | null): StartDevice {
	const opening = openingAt(branch.device!, currentA);
	const { origin } = branch;
	const ref = origin.kind === 'link' ? { part: origin.part, link: origin.link } : { part: '', link: '' };
	return { branch, ref, name: deviceName(study, ref), currentA, opening, verdict: opening && verdictOn(opening, seconds) };
}

function verdictOn({ earliestS, latestS }: Opening, seconds: number | null): StartVerdict | null {
	if (earliestS === Infinity) return 'holds';
	if (seconds === null) return null;
	if (seconds < earliestS) return 'holds';
	return seconds < latestS ? 'may-open' : 'opens';
}

export function explainStart(study: Study, ref: LinkRef, figure: StartFigure): Explanation | null {
	const start = startOf(study, ref);
	if (!start) return null;
	if (figure === 'current') return explainLoadCurrent(study, start.during, 'Starting current of');
	if (figure === 'volts') return explainLoadVolts(study, start.during, 'Volts while it starts, at');
	const { before, during } = start;
	const { load } = before;
	const [beforeV, duringV] = [before.point.loadV[load.index]!, during.point.loadV[load.index]!];
	return explanation({
		symbol: 'd',
		name: `Dip at the start of ${partName(study.part(ref.part))}`,
		value: beforeV - duringV,
		unit: 'V',
		words: 'How far the volts at its terminals fall below those it runs on.',
		expression: 'Ub - Us',
		inputs: [
			input('Ub', 'volts while it runs', beforeV, 'V', {
				origin: 'computed',
				source: SOLVED,
				figure: { of: 'load', ...ref, caseId: before.point.caseId, figure: 'volts' }
			}),
			input('Us', 'volts while it starts', duringV, 'V', {
				origin: 'computed',
				source: SOLVED,
				figure: { of: 'start', ...ref, figure: 'volts' }
			})
		],
		caseName: before.operatingCase.label,
		source: SOLVED
	});
}

export function explainStartDevice(study: Study, ref: LinkRef, device: LinkRef, figure: StartDeviceFigure): Explanation | null {
	const start = startOf(study, ref);
	const found = start?.devices.find((own) => own.ref.part === device.part && own.ref.link === device.link);
	if (!start || !found) return null;
	const { branch, name, currentA } = found;
	const while_ = `while ${partName(study.part(ref.part))} starts`;
	if (figure === 'current') {
		const { nodeV } = start.during.point;
		const volts = (symbol: string, node: number) =>
			input(symbol, `volts on one side of ${name}`, nodeV[node]!, 'V', { origin: 'computed', source: SOLVED });
		return explanation({
			symbol: 'I',
			name: `Current in ${name} ${while_}`,
			value: currentA,
			unit: 'A',
			words: `The volts across it over its resistance, ${while_}.`,
			expression: 'abs(U1 - U2) / R',
			inputs: [
				volts('U1', branch.a),
				{ ...volts('U2', branch.b), name: `volts on the other side of ${name}` },
				input('R', `resistance of ${name}`, branch.resistanceOhm, 'Ω', {
					origin: 'computed',
					source: 'about 80 mV at its rating: common practice, no source',
					confidence: 'common-practice'
				})
			],
			caseName: start.during.operatingCase.label,
			source: SOLVED
		});
	}
	const current = input('I', `current in it ${while_}`, currentA, 'A', {
		origin: 'computed',
		source: SOLVED,
		figure: { of: 'start-device', ...ref, device, figure: 'current' }
	});
	return explainOpening(branch.device!, current, figure === 'opens-from' ? 'earliest' : 'latest', `${name} ${while_}`);
}
