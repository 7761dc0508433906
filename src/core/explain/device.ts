/** Where the figures of a fuse, breaker, switch, shunt or bar come from. */
import { nodeName } from './volts-lost.ts';
import type { Branch } from '#core/network';
import { breakingAmps, deviceName, type Study } from '#core/rules';
import { explainBranchCurrent, SOLVED } from './branch.ts';
import type { Explanation, Input } from './explanation.ts';
import type { DeviceFigure, FigureId, LinkRef } from './figure-id.ts';
import { explainOpening } from './opening.ts';
import { explanation, input } from './write-out.ts';
import { roundedText } from '#core/units';

export const branchOf = ({ network }: Study, { part, link }: LinkRef): Branch | undefined => {
	const index = network.branchOfLink.get(`${part}.${link}`);
	return index === undefined ? undefined : network.branches[index];
};

const figure = ({ part, link }: LinkRef, of: DeviceFigure): FigureId => ({ of: 'device', part, link, figure: of });

export function explainDevice(study: Study, ref: LinkRef, wanted: DeviceFigure): Explanation | null {
	const branch = branchOf(study, ref);
	if (!branch) return null;
	const name = deviceName(study, ref);
	if (wanted === 'current') return current(study, ref, branch, name);
	if (wanted === 'loading') return branch.ratedA === null ? null : loading(study, ref, branch, branch.ratedA, name);
	if (!branch.device) return null;
	if (wanted === 'fault-current') return fault(study, branch, name);
	if (wanted === 'breaking') return breaking(study, branch, name);
	const { currentA } = study.faults.throughDevice(branch);
	const into = input('I', 'short-circuit current through it', currentA, 'A', {
		origin: 'computed',
		source: 'batteries full, a dead short right behind it',
		confidence: 'common-practice',
		figure: figure(ref, 'fault-current')
	});
	return explainOpening(branch.device, into, wanted === 'opens-from' ? 'earliest' : 'latest', `${name} into a dead short`);
}

function current(study: Study, ref: LinkRef, branch: Branch, name: string): Explanation {
	const isDevice = branch.device !== null;
	return explainBranchCurrent(study, branch, study.branchCurrent(branch.index), {
		name: `Greatest continuous current in ${name}`,
		which: 'the continuous case in which it carries most',
		resistance: input('R', `resistance of ${name}`, branch.resistanceOhm, 'Ω', {
			origin: 'computed',
			source: isDevice ? 'about 80 mV at its rating: common practice, no source' : 'the metal inside the part: common practice, no source',
			confidence: 'common-practice'
		})
	});
}

function loading(study: Study, ref: LinkRef, branch: Branch, ratedA: number, name: string): Explanation {
	const { currentA, caseId } = study.branchCurrent(branch.index);
	return explanation({
		symbol: 'p',
		name: `Loading of ${name}`,
		value: (100 * currentA) / ratedA,
		unit: '%',
		words: 'Current in the worst continuous case, as a share of its rating.',
		expression: '100 * I / F',
		inputs: [
			input('I', 'current in its worst continuous case', currentA, 'A', {
				origin: 'computed',
				source: SOLVED,
				figure: figure(ref, 'current')
			}),
			input('F', 'rating', ratedA, 'A', { origin: 'diagram', source: 'its rating on the drawing', confidence: 'given' })
		],
		caseName: caseId === null ? null : study.diagram.cases[caseId]!.label.trim() || caseId,
		source: SOLVED
	});
}

function fault(study: Study, branch: Branch, name: string): Explanation {
	const { currentA, from, openV, sourceOhm } = study.faults.throughDevice(branch);
	const common = { symbol: 'Ik', name: `Short-circuit current ${name} has to break`, value: currentA, unit: 'A' };
	if (!(currentA > 0) || !(openV > 0))
		return explanation({
			...common,
			words: 'No battery feeds a short behind it; what limits itself gives no more than its rating.',
			expression: 'Is',
			inputs: [
				input('Is', 'what sources of limited current give', currentA, 'A', {
					origin: 'diagram',
					source: 'ratings on the drawing',
					confidence: 'given'
				})
			],
			source: 'ratings of the sources that feed it'
		});
	return explanation({
		...common,
		words: `A dead short right behind it, batteries full, its own resistance not counted: a fuse must break what it lets pass at first. It comes from ${nodeName(study, from)}.`,
		expression: 'U0 / Rs',
		inputs: [
			input('U0', 'volts before the short', openV, 'V', {
				origin: 'computed',
				source: 'batteries full, behind their resistance into a short',
				confidence: 'common-practice'
			}),
			input('Rs', 'resistance of all that feeds it, there and back', sourceOhm, 'Ω', {
				origin: 'computed',
				source: 'batteries into a short, conductors at 20 °C, joints, fuses and switches, in series and parallel',
				confidence: 'common-practice'
			})
		],
		source: 'Thévenin’s theorem: volts before the short over the resistance of everything that feeds it'
	});
}

function breaking(study: Study, branch: Branch, name: string): Explanation | null {
	const { openV } = study.faults.throughDevice(branch);
	const volts = openV > 0 ? openV : study.diagram.system.nominalV;
	const limit = breakingAmps(branch.device!, volts);
	if (!limit) return null;
	const { value, source, confidence } = limit;
	const given: Input = input('Ib', `what it breaks at ${roundedText(volts, 1)} V`, value, 'A', {
		origin: branch.device!.breakingA === null ? 'table' : 'diagram',
		source,
		confidence
	});
	return explanation({
		symbol: 'B',
		name: `Breaking capacity of ${name}`,
		value,
		unit: 'A',
		words: 'The greatest current it interrupts at the volts it would see.',
		expression: 'Ib',
		inputs: [given],
		source
	});
}
