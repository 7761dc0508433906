/** What an operating case comes to: the current of the bank, the conductor loaded most, the load with the least volts. */
import type { CaseId } from '#core/diagram';
import { partName, type CaseResult, type ConductorView, type Study } from '#core/rules';
import { caseLabel, SOLVED, voltsInput } from './branch.ts';
import type { Explanation } from './explanation.ts';
import type { CaseFigure } from './figure-id.ts';
import { explanation, input } from './write-out.ts';

/** One result of a case for its table. Plain data. */
export interface CaseResultCell {
	/** "C3 87 %"; the figure opens by `case`. */
	readonly text: string;
	/** What it is about: "C3". Empty for the bank. */
	readonly of: string;
	/** What to select for it; null for the bank. */
	readonly item: { readonly kind: 'conductor' | 'part'; readonly id: string } | null;
	/** Over the amperage, or so low that a lamp dims. */
	readonly isOver: boolean;
}

export type CaseCells = Readonly<Record<CaseFigure, CaseResultCell | null>>;

/** By case; null for a case without an operating point. */
export const caseCells = (study: Study): Readonly<Record<CaseId, CaseCells | null>> =>
	Object.fromEntries(study.cases.map((result) => [result.id, result.point.status === 'solved' ? cellsOf(study, result) : null]));

function cellsOf(study: Study, result: CaseResult): CaseCells {
	const { point } = result;
	const most = mostLoaded(study, result);
	const least = leastVolts(study, result);
	const text = (figure: CaseFigure): string => explainCase(study, result.id, figure)!.text;
	return {
		battery: point.batteryA.length > 0 ? { text: text('battery'), of: '', item: null, isOver: false } : null,
		loading: most && {
			text: text('loading'),
			of: most.view.name,
			item: { kind: 'conductor', id: most.view.id },
			isOver: most.percent > 100 * (1 + 1e-6)
		},
		volts: least && { text: text('volts'), of: partName(study.part(least.part)), item: { kind: 'part', id: least.part }, isOver: false }
	};
}

function mostLoaded({ conductors }: Study, { point }: CaseResult): { readonly view: ConductorView; readonly percent: number } | null {
	let most: { view: ConductorView; percent: number } | null = null;
	for (const view of conductors) {
		if (view.conductor.use === 'cranking') continue;
		const percent = (100 * Math.abs(point.branchA[view.branch.index]!)) / view.ampacity.currentA;
		if (percent > (most?.percent ?? 1e-9)) most = { view, percent };
	}
	return most;
}

/** Among loads that draw. */
function leastVolts({ network }: Study, { point }: CaseResult) {
	const drawing = network.loads.filter(({ index, followsSource }) => followsSource === null && point.loadA[index]! > 1e-9);
	const [first, ...others] = drawing;
	return first ? others.reduce((least, load) => (point.loadV[load.index]! < point.loadV[least.index]! ? load : least), first) : null;
}

export function explainCase(study: Study, id: CaseId, figure: CaseFigure): Explanation | null {
	const result = study.cases.find((own) => own.id === id);
	if (!result || result.point.status !== 'solved') return null;
	const { point } = result;
	const common = { caseName: caseLabel(study, id), source: SOLVED };
	if (figure === 'battery') {
		const inputs = study.network.batteries.map(({ index, part, link }, number) =>
			input(`I${number + 1}`, `current ${partName(study.part(part))} delivers`, point.batteryA[index]!, 'A', {
				origin: 'computed',
				source: SOLVED,
				figure: { of: 'supply', part, link, caseId: id, figure: 'current' }
			})
		);
		return explanation({
			...common,
			symbol: 'I',
			name: 'Current of all batteries',
			value: point.batteryA.reduce((sum, amps) => sum + amps, 0),
			unit: 'A',
			words: 'What they deliver, added up; negative while they are charged.',
			expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0',
			inputs
		});
	}
	if (figure === 'volts') {
		const load = leastVolts(study, result);
		if (!load) return null;
		return explanation({
			...common,
			symbol: 'U',
			name: `Least volts at a load: ${partName(study.part(load.part))}`,
			value: point.loadV[load.index]!,
			unit: 'V',
			words: 'Of all loads that draw, the one with the fewest volts between its terminals.',
			expression: 'Up - Um',
			inputs: [
				voltsInput(study, 'Up', load.positive, point, 'volts at its + terminal'),
				voltsInput(study, 'Um', load.negative, point, 'volts at its − terminal')
			]
		});
	}
	const most = mostLoaded(study, result);
	if (!most) return null;
	const { view, percent } = most;
	return explanation({
		...common,
		symbol: 'p',
		name: `Conductor loaded most: ${view.name}`,
		value: percent,
		unit: '%',
		words: 'Of all conductors but starter supplies, the one whose current is the greatest share of its amperage.',
		expression: '100 * abs(U1 - U2) / R / Z',
		inputs: [
			voltsInput(study, 'U1', view.branch.a, point),
			voltsInput(study, 'U2', view.branch.b, point),
			input('R', `resistance of ${view.name}, lugs included`, view.branch.resistanceOhm, 'Ω', {
				origin: 'computed',
				source: 'copper over its length and a joint at each end',
				figure: { of: 'conductor', id: view.id, figure: 'resistance' }
			}),
			input('Z', 'amperage after all factors', view.ampacity.currentA, 'A', {
				origin: 'computed',
				source: view.ampacity.table,
				confidence: view.ampacity.unverified ? 'memory' : 'derived',
				figure: { of: 'conductor', id: view.id, figure: 'amperage' }
			})
		]
	});
}
