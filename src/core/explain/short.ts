/** Where the current of a short comes from that was dropped between two terminals, before anything opens. */
import type { StudKey } from '#core/diagram';
import { shortAt, type Condition } from '#core/faults';
import type { Study } from '#core/rules';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

interface Asked {
	readonly at: StudKey;
	readonly to: StudKey;
	readonly shortOhm: number;
	readonly condition: Condition;
}

const SOURCE = 'Thévenin’s theorem: volts before the short over the resistance of everything that feeds it and of the short itself';

const FEEDING: Readonly<Record<Condition, string>> = {
	greatest: 'batteries full, behind their resistance into a short; sources at their limit',
	least: 'batteries nearly empty, behind their resistance in use'
};
const COPPER: Readonly<Record<Condition, string>> = {
	greatest: 'batteries into a short, conductors at 20 °C, joints, fuses and switches, in series and parallel',
	least: 'batteries in use, conductors warm, joints, fuses and switches, in series and parallel'
};

export function explainShort(study: Study, { at, to, shortOhm, condition }: Asked): Explanation | null {
	const { network, diagram } = study;
	const [from, back] = [network.nodeOf.get(at), network.nodeOf.get(to)];
	if (from === undefined || back === undefined) return null;
	const { openV, loopOhm, currentA } = shortAt(network, diagram.conductors, condition, from, back, shortOhm);
	const isFed = loopOhm !== Infinity && openV > 0;
	const limitedA = currentA - (isFed ? openV / (loopOhm + shortOhm) : 0);
	const addsLimited = limitedA > 1e-9 || !isFed;
	return explanation({
		symbol: 'Ik',
		name: `Short from ${study.studName(at)} to ${study.studName(to)}`,
		value: currentA,
		unit: 'A',
		words: 'Before any fuse or breaker opens.',
		expression: [...(isFed ? ['U0 / (Rk + Rs)'] : []), ...(addsLimited ? ['Is'] : [])].join(' + '),
		inputs: [
			...(isFed
				? [
						input('U0', 'volts between the two before the short', openV, 'V', {
							origin: 'computed',
							source: FEEDING[condition],
							confidence: 'common-practice'
						}),
						input('Rk', 'resistance of all that feeds it, there and back', loopOhm, 'Ω', {
							origin: 'computed',
							source: COPPER[condition],
							confidence: 'common-practice'
						}),
						input('Rs', 'resistance of the short itself', shortOhm, 'Ω', { origin: 'diagram', source: 'as chosen', confidence: 'given' })
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
		],
		source: SOURCE
	});
}
