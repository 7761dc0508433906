/** Where the current of a short comes from that was dropped between two terminals, before anything opens. */
import type { StudKey } from '#core/diagram';
import { shortAt, type Condition } from '#core/faults';
import type { Study } from '#core/rules';
import type { Explanation } from './explanation.ts';
import { thevenin } from './thevenin.ts';
import { explanation } from './write-out.ts';

interface Asked {
	readonly at: StudKey;
	readonly to: StudKey;
	readonly shortOhm: number;
	readonly condition: Condition;
}

const SOURCE = 'Thévenin’s theorem: volts before the short over the resistance of everything that feeds it and of the short itself';

export function explainShort(study: Study, { at, to, shortOhm, condition }: Asked): Explanation | null {
	const { network, diagram } = study;
	const [from, back] = [network.nodeOf.get(at), network.nodeOf.get(to)];
	if (from === undefined || back === undefined) return null;
	const short = shortAt(network, diagram.conductors, condition, from, back, shortOhm);
	return explanation({
		symbol: 'Ik',
		name: `Short from ${study.studName(at)} to ${study.studName(to)}`,
		value: short.currentA,
		unit: 'A',
		words: 'Before any fuse or breaker opens.',
		...thevenin(short, { condition, where: 'between the two', shortOhm }),
		source: SOURCE
	});
}
