/** Where a short-circuit current comes from. */
import { faultCurrentA } from '#core/check';
import type { Branch, NodeIndex } from '#core/network';
import type { Study } from '#core/rules';
import type { Explanation } from './explanation.ts';
import { thevenin } from './thevenin.ts';
import { nodeName } from './volts-lost.ts';
import { explanation } from './write-out.ts';

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

	const at = nodeName(study, node);
	const back = nodeName(study, short.to);
	return explanation({
		...common,
		value: short.currentA,
		words: `A dead short from ${at} to the return beside it, ${back}.`,
		...thevenin(short, { condition: 'greatest', where: `at ${at} against ${back}`, shortOhm: null })
	});
}
