/** Where the current of a battery or source comes from. */
import type { Network, NodeIndex } from '#core/network';
import { deviceName, partName, type Study } from '#core/rules';
import type { OperatingPoint } from '#core/solver';
import { caseLabel, SOLVED, voltsInput } from './branch.ts';
import type { Explanation, Input } from './explanation.ts';
import type { LinkRef } from './figure-id.ts';
import { emfOf } from './stud.ts';
import { explanation, input } from './write-out.ts';

const same =
	({ part, link }: LinkRef) =>
	(other: LinkRef): boolean =>
		other.part === part && other.link === link;

export function explainSupply(study: Study, ref: LinkRef, caseId: string, figure: 'current' | 'volts'): Explanation | null {
	const result = study.cases.find(({ id }) => id === caseId);
	if (!result || result.point.status !== 'solved') return null;
	const { point, operatingCase } = result;
	const battery = study.network.batteries.find(same(ref));
	const source = study.network.sources.find(same(ref));
	const supply = battery ?? source;
	if (!supply) return null;
	const name = partName(study.part(ref.part));
	const common = { caseName: caseLabel(study, caseId), source: SOLVED };
	const posts = [
		voltsInput(study, 'Up', supply.positive, point, 'volts at its + terminal'),
		voltsInput(study, 'Um', supply.negative, point, 'volts at its − terminal')
	];
	const acrossV = point.nodeV[supply.positive]! - point.nodeV[supply.negative]!;
	if (figure === 'volts')
		return explanation({
			...common,
			symbol: 'U',
			name: `Volts at ${name}`,
			value: acrossV,
			unit: 'V',
			words: 'Between its terminals.',
			expression: 'Up - Um',
			inputs: posts
		});
	if (source) {
		const flows = flowsAt(study, point, source.positive, (kind, index) => kind === 'source' && index === source.index);
		return explanation({
			...common,
			symbol: 'I',
			name: `Current ${name} delivers`,
			value: point.sourceA[source.index]!,
			unit: 'A',
			words: 'All that leaves its + terminal: it holds its set voltage up to its rated current.',
			expression: flows.map(({ symbol }) => symbol).join(' + ') || '0',
			inputs: flows
		});
	}
	const deliveredA = point.batteryA[battery!.index]!;
	const emfV = emfOf(battery!, operatingCase);
	// Its electronics have disconnected it: then nothing flows whatever the volts.
	const isOut = deliveredA === 0 && Math.abs(emfV - acrossV) > 1e-9;
	return explanation({
		...common,
		symbol: 'I',
		name: `Current ${name} delivers`,
		value: deliveredA,
		unit: 'A',
		words: isOut
			? 'It is disconnected in this case.'
			: 'Its open-circuit volts less those between its terminals, over its resistance; negative while it is charged.',
		expression: isOut ? '0' : '(E - (Up - Um)) / R',
		inputs: isOut
			? []
			: [
					input('E', operatingCase.battery === 'low' ? 'open-circuit volts, nearly empty' : 'open-circuit volts in use', emfV, 'V', {
						origin: 'diagram',
						source: 'the battery on the drawing, or its chemistry (common practice)',
						confidence: 'common-practice'
					}),
					...posts,
					input('R', 'resistance in use', battery!.resistanceOhm, 'Ω', {
						origin: 'diagram',
						source: 'the battery on the drawing, or its chemistry (common practice)',
						confidence: 'common-practice'
					})
				]
	});
}

type Element = 'branch' | 'battery' | 'source' | 'load';

/** What leaves a node over everything that lands there, except one thing. */
function flowsAt(study: Study, point: OperatingPoint, node: NodeIndex, isLeftOut: (kind: Element, index: number) => boolean): Input[] {
	const { branches, batteries, sources, loads } = study.network satisfies Network;
	const found: { readonly name: string; readonly amps: number }[] = [];
	const add = (name: string, amps: number) => found.push({ name, amps });
	branches.forEach(({ index, a, b, origin }) => {
		if (a === b || (a !== node && b !== node)) return;
		const name = origin.kind === 'conductor' ? study.conductorName(origin.id) : deviceName(study, origin);
		add(name, a === node ? point.branchA[index]! : -point.branchA[index]!);
	});
	const pole =
		(kind: Element, sign: 1 | -1, amps: Float64Array) => (item: { index: number; part: string; positive: number; negative: number }) => {
			if (isLeftOut(kind, item.index) || item.positive === item.negative) return;
			if (item.positive === node) add(partName(study.part(item.part)), sign * amps[item.index]!);
			if (item.negative === node) add(partName(study.part(item.part)), -sign * amps[item.index]!);
		};
	batteries.forEach(pole('battery', -1, point.batteryA));
	sources.forEach(pole('source', -1, point.sourceA));
	loads.forEach(pole('load', 1, point.loadA));
	return found.map(({ name, amps }, index) =>
		input(`I${index + 1}`, `leaves over ${name}`, amps, 'A', { origin: 'computed', source: SOLVED })
	);
}
