/** Where the volts of a stud come from: a supply's terminals, less what is lost on the way. */
import type { CaseId, OperatingCase, StudKey } from '#core/diagram';
import type { BatteryBranch, Branch, Network, NodeIndex } from '#core/network';
import { deviceName, partName, type Study } from '#core/rules';
import type { OperatingPoint } from '#core/solver';
import { SOLVED } from './branch.ts';
import type { Explanation, Input, Related } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function explainStudVolts(study: Study, key: StudKey, caseId: CaseId): Explanation | null {
	const { network } = study;
	const node = network.nodeOf.get(key);
	const result = study.cases.find(({ id }) => id === caseId);
	if (node === undefined || !result || result.point.status !== 'solved') return null;
	const { point, operatingCase } = result;
	const common = {
		symbol: 'U',
		name: `Volts at ${study.studName(key)}`,
		value: point.nodeV[node]!,
		unit: 'V',
		caseName: operatingCase.label.trim() || caseId,
		source: SOLVED
	};
	const way = wayToSupply(network, point, operatingCase, node);
	if (!way) {
		const alone = input('U1', 'volts against the most negative terminal of its island', point.nodeV[node]!, 'V', {
			origin: 'computed',
			source: SOLVED
		});
		return explanation({
			...common,
			words: 'No battery or source is on its metal in this case, so it has no volts of its own.',
			expression: 'U1',
			inputs: [alone]
		});
	}
	const post = postInputs(study, point, operatingCase, way.post);
	const drops = way.steps.map(({ branch, lostV }, index) => dropInput(study, branch, lostV, `d${index + 1}`));
	return explanation({
		...common,
		words:
			'Against the most negative battery terminal of its island: the volts of the nearest supply, less what each element on the way loses (negative where current comes the other way).',
		expression: [post.expression, ...drops.map(({ symbol }) => symbol)].join(' - '),
		inputs: [...post.inputs, ...drops],
		related: way.steps.flatMap(({ branch: { origin } }): Related[] =>
			origin.kind === 'conductor'
				? [{ figure: { of: 'conductor', id: origin.id, figure: 'resistance' }, name: `Resistance of ${study.conductorName(origin.id)}` }]
				: []
		)
	});
}

interface Post {
	readonly kind: 'battery' | 'source';
	readonly index: number;
	readonly pole: 'positive' | 'negative';
}

/** Nearest supply terminal by number of elements, over closed ones only. */
function wayToSupply(network: Network, point: OperatingPoint, operatingCase: OperatingCase, start: NodeIndex) {
	const posts = new Map<NodeIndex, Post>();
	const note = (kind: Post['kind']) => (supply: { readonly index: number; readonly positive: NodeIndex; readonly negative: NodeIndex }) => {
		if (!isOn(network, point, operatingCase, kind, supply.index)) return;
		for (const pole of ['negative', 'positive'] as const)
			if (!posts.has(supply[pole])) posts.set(supply[pole], { kind, index: supply.index, pole });
	};
	network.batteries.forEach(note('battery'));
	network.sources.forEach(note('source'));

	const cameBy = new Map<NodeIndex, { readonly branch: Branch; readonly next: NodeIndex } | null>([[start, null]]);
	const queue = [start];
	for (const node of queue) {
		const post = posts.get(node);
		if (post) {
			const steps: { branch: Branch; lostV: number }[] = [];
			let at = node;
			for (let step = cameBy.get(at); step; step = cameBy.get(at)) {
				steps.push({ branch: step.branch, lostV: lostOn(step.branch, at, point) });
				at = step.next;
			}
			return { post, steps };
		}
		for (const index of network.branchesAt[node]!) {
			const branch = network.branches[index]!;
			const far = branch.a === node ? branch.b : branch.a;
			if (cameBy.has(far) || !isClosed(branch, point)) continue;
			cameBy.set(far, { branch, next: node });
			queue.push(far);
		}
	}
	return null;
}

/** Volts lost in a branch to the current that flows from `from`; negative where it comes the other way. */
const lostOn = ({ index, a, resistanceOhm }: Branch, from: NodeIndex, { branchA }: OperatingPoint): number =>
	(a === from ? branchA[index]! : -branchA[index]!) * resistanceOhm;

export const emfOf = ({ emfV, lowEmfV = emfV }: BatteryBranch, { battery }: OperatingCase): number => (battery === 'low' ? lowEmfV : emfV);

/** Batteries that their electronics have not disconnected, and sources that deliver. */
function isOn(
	{ batteries, sources }: Network,
	point: OperatingPoint,
	operatingCase: OperatingCase,
	kind: Post['kind'],
	index: number
): boolean {
	if (kind === 'source') return point.sourceA[index]! > 1e-9 && sources[index] !== undefined;
	const battery = batteries[index]!;
	const acrossV = point.nodeV[battery.positive]! - point.nodeV[battery.negative]!;
	return Math.abs(emfOf(battery, operatingCase) - point.batteryA[index]! * battery.resistanceOhm - acrossV) < 1e-9;
}

/** An open switch carries nothing whatever the volts across it. */
const isClosed = ({ index, a, b, resistanceOhm }: Branch, { branchA, nodeV }: OperatingPoint): boolean =>
	Math.abs(nodeV[a]! - nodeV[b]! - branchA[index]! * resistanceOhm) < 1e-9;

function postInputs(
	study: Study,
	point: OperatingPoint,
	operatingCase: OperatingCase,
	{ kind, index, pole }: Post
): { expression: string; inputs: Input[] } {
	const supply = kind === 'battery' ? study.network.batteries[index]! : study.network.sources[index]!;
	const name = partName(study.part(supply.part));
	const negative = input('Un', `volts at the − terminal of ${name}`, point.nodeV[supply.negative]!, 'V', {
		origin: 'computed',
		source: SOLVED
	});
	if (pole === 'negative') return { expression: 'Un', inputs: [negative] };
	if (kind === 'source') {
		const volts = point.nodeV[supply.positive]! - point.nodeV[supply.negative]!;
		return {
			expression: 'Un + Us',
			inputs: [
				negative,
				input('Us', `volts ${name} gives`, volts, 'V', {
					origin: 'computed',
					source: `${SOLVED}; it holds its set voltage up to its rated current`
				})
			]
		};
	}
	const battery = study.network.batteries[index]!;
	const deliveredA = point.batteryA[index]!;
	const emfV = emfOf(battery, operatingCase);
	return {
		expression: 'Un + Eb - Ib * Rb',
		inputs: [
			negative,
			input('Eb', `open-circuit volts of ${name}`, emfV, 'V', {
				origin: 'diagram',
				source: 'the battery on the drawing, or its chemistry (common practice)',
				confidence: 'common-practice'
			}),
			input('Ib', `current ${name} delivers`, deliveredA, 'A', { origin: 'computed', source: SOLVED }),
			input('Rb', `resistance of ${name} in use`, battery.resistanceOhm, 'Ω', {
				origin: 'diagram',
				source: 'the battery on the drawing, or its chemistry (common practice)',
				confidence: 'common-practice'
			})
		]
	};
}

function dropInput(study: Study, { origin }: Branch, lostV: number, symbol: string): Input {
	const isConductor = origin.kind === 'conductor';
	return input(symbol, `lost in ${isConductor ? study.conductor(origin.id).name : deviceName(study, origin)}`, lostV, 'V', {
		origin: 'computed',
		source: SOLVED
	});
}
