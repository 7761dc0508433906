/** Where a short-circuit current comes from. */
import { faultCurrentA } from '#core/check';
import type { Branch, NodeIndex } from '#core/network';
import type { Study } from '#core/rules';
import type { Explanation, Input } from './explanation.ts';
import { nodeName } from './volts-lost.ts';
import { explanation, input } from './write-out.ts';

const SOURCE = 'Thévenin’s theorem: volts before the short over the resistance of everything that feeds it';

/** The end of a branch with the greater fault current. */
export const worseEnd = (study: Study, { a, b }: Pick<Branch, 'a' | 'b'>): NodeIndex =>
	(faultCurrentA(study, b) ?? -1) > (faultCurrentA(study, a) ?? -1) ? b : a;

export function explainFaultAt(study: Study, node: NodeIndex, name: string): Explanation {
	const short = study.faults.short(node, 'greatest');
	const common = { symbol: 'Ik', name, unit: 'A', source: SOURCE };
	if (!short)
		return explanation({
			...common,
			value: 0,
			words: 'No short to a return is defined here: it is not on a positive pole with a way back.',
			expression: '0',
			inputs: []
		});

	const { openV, loopOhm, currentA, to } = short;
	const isFed = loopOhm !== Infinity && openV > 0;
	// What chargers of another rail add, held at their limit.
	const limitedA = currentA - (isFed ? openV / loopOhm : 0);
	const addsLimited = limitedA > 1e-9 || !isFed;
	const inputs: Input[] = [
		...(isFed
			? [
					input('U0', `volts at ${nodeName(study, node)} against ${nodeName(study, to)} before the short`, openV, 'V', {
						origin: 'computed',
						source: 'batteries full, behind their resistance into a short; sources at their limit',
						confidence: 'common-practice'
					}),
					input('Rk', 'resistance of all that feeds it, there and back', loopOhm, 'Ω', {
						origin: 'computed',
						source: 'batteries into a short, conductors at 20 °C, joints, fuses and switches, in series and parallel',
						confidence: 'common-practice'
					})
				]
			: []),
		...(addsLimited
			? [
					input('Is', 'sources that give no more than their limit', limitedA, 'A', {
						origin: 'diagram',
						source: 'ratings on the drawing',
						confidence: 'given'
					})
				]
			: [])
	];
	return explanation({
		...common,
		value: currentA,
		words: `A dead short from ${nodeName(study, node)} to the return beside it, ${nodeName(study, to)}.`,
		expression: [...(isFed ? ['U0 / Rk'] : []), ...(addsLimited ? ['Is'] : [])].join(' + '),
		inputs
	});
}
