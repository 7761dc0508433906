/** Where the current and the volts of a load come from. */
import type { LoadBranch } from '#core/network';
import { partName, type Study } from '#core/rules';
import { levelsOf, type OperatingPoint } from '#core/solver';
import type { OperatingCase } from '#core/diagram';
import { caseLabel, SOLVED, voltsInput } from './branch.ts';
import type { Explanation, Input } from './explanation.ts';
import type { LinkRef } from './figure-id.ts';
import { explanation, input } from './write-out.ts';

/** A load in one state of the system, of the drawing or supposed. */
export interface LoadState {
	readonly load: LoadBranch;
	readonly operatingCase: OperatingCase;
	readonly point: OperatingPoint;
}

export const loadOf = ({ network }: Study, { part, link }: LinkRef): LoadBranch | undefined =>
	network.loads.find((load) => load.part === part && load.link === link);

export function explainLoadCurrent(study: Study, { load, operatingCase, point }: LoadState, title = 'Current of'): Explanation {
	const { index, draw, followsSource } = load;
	const name = partName(study.part(load.part));
	const common = {
		symbol: 'I',
		name: `${title} ${name}`,
		value: point.loadA[index]!,
		unit: 'A',
		caseName: operatingCase.label.trim() || point.caseId,
		source: 'its rated draw on the drawing, at the volts the solver finds'
	};
	if (point.loadA[index] === 0) {
		const words = point.loadFed[index] ? 'It is off, or takes nothing, in this case.' : 'It is not fed in this case.';
		return explanation({ ...common, words, expression: '0', inputs: [] });
	}
	const volts = input('U', `volts at ${name}`, point.loadV[index]!, 'V', {
		origin: 'computed',
		source: SOLVED,
		figure: study.cases.some((result) => result.point === point)
			? { of: 'load', part: load.part, link: load.link, caseId: point.caseId, figure: 'volts' }
			: null
	});
	if (followsSource !== null) {
		const source = study.network.sources[followsSource]!;
		const { nodeV, sourceA } = point;
		return explanation({
			...common,
			words: 'What its output delivers, over its efficiency, at the volts of its input.',
			expression: 'Us * Is / (n * U)',
			inputs: [
				input('Us', 'volts at its output', nodeV[source.positive]! - nodeV[source.negative]!, 'V', { origin: 'computed', source: SOLVED }),
				input('Is', 'current its output delivers', sourceA[followsSource]!, 'A', { origin: 'computed', source: SOLVED }),
				input('n', 'efficiency', source.efficiency, '', { origin: 'diagram', source: 'the part on the drawing', confidence: 'given' }),
				volts
			]
		});
	}
	const level = levelsOf(study.network, operatingCase).load[index]!;
	const times = startTimesIn(operatingCase, load);
	const factors: Input[] = [
		input('k', 'how much of it is on in this case', level / times, '', {
			origin: 'diagram',
			source: 'the operating case',
			confidence: 'given'
		}),
		...(times > 1
			? [
					input('s', 'times its rated draw while it starts', times, '', {
						origin: 'diagram',
						source: 'the load on the drawing',
						confidence: 'given'
					})
				]
			: [])
	];
	const share = factors.map(({ symbol }) => symbol).join(' * ');
	const given = { origin: 'diagram', source: 'the load on the drawing', confidence: 'given' } as const;
	if (draw.kind === 'current')
		return explanation({
			...common,
			words: 'Its rated current, whatever its volts.',
			expression: `Ir * ${share}`,
			inputs: [input('Ir', 'rated current', draw.amps, 'A', given), ...factors]
		});
	if (draw.kind === 'power')
		return explanation({
			...common,
			words: 'Its rated power over its volts: with fewer volts it draws more amps.',
			expression: `P * ${share} / U`,
			inputs: [input('P', 'rated power', draw.watts, 'W', given), ...factors, volts]
		});
	return explanation({
		...common,
		words: 'Its volts over its resistance.',
		expression: `U * ${share} / R`,
		inputs: [volts, ...factors, input('R', 'resistance of the load', draw.ohms, 'Ω', given)]
	});
}

const startTimesIn = ({ duration, starting = {} }: OperatingCase, { part, startTimes = 1 }: LoadBranch): number => {
	const starters = Object.keys(starting);
	return duration === 'surge' && (starters.length === 0 || starters.includes(part)) ? startTimes : 1;
};

export function explainLoadVolts(study: Study, { load, operatingCase, point }: LoadState, title = 'Volts at'): Explanation {
	const name = partName(study.part(load.part));
	return explanation({
		symbol: 'U',
		name: `${title} ${name}`,
		value: point.loadV[load.index]!,
		unit: 'V',
		words: 'Between its terminals.',
		expression: point.loadV[load.index] === 0 ? '0' : 'Up - Um',
		inputs:
			point.loadV[load.index] === 0
				? []
				: [
						voltsInput(study, 'Up', load.positive, point, `volts at its + terminal`),
						voltsInput(study, 'Um', load.negative, point, `volts at its − terminal`)
					],
		caseName: operatingCase.label.trim() || point.caseId,
		source: SOLVED
	});
}

export function explainLoad(study: Study, ref: LinkRef, caseId: string, figure: 'current' | 'volts'): Explanation | null {
	const load = loadOf(study, ref);
	const result = study.cases.find(({ id }) => id === caseId);
	if (!load || !result || result.point.status !== 'solved') return null;
	const state = { load, operatingCase: { ...result.operatingCase, label: caseLabel(study, caseId) }, point: result.point };
	return figure === 'current' ? explainLoadCurrent(study, state) : explainLoadVolts(study, state);
}
