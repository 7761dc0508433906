import type { NodeIndex } from '#core/network';
import type { Study } from './study.ts';

interface Terminals {
	readonly positive: NodeIndex;
	readonly negative: NodeIndex;
}

/**
 * How a two-pole part is joined to what feeds it:
 * "fed" both ways and the right way round, "reversed", or left open on one side or both.
 */
export type Standing = 'fed' | 'reversed' | 'no-return' | 'not-fed' | 'both-positive' | 'both-negative' | 'open';

/** Open-circuit volts below which two terminals are taken to be on one pole. */
export const SAME_POLE_V = 0.5;

export function standing({ form, nets }: Study, { positive, negative }: Terminals): Standing {
	const [plus, minus] = [form.poles[positive]!, form.poles[negative]!];
	if (plus === 'shorted' || minus === 'shorted') return 'fed'; // nothing can be said until the short is gone
	if (plus === 'floating' && minus === 'floating') return 'open';
	if (plus === 'floating') return minus === 'positive' ? 'reversed' : 'not-fed';
	if (minus === 'floating') return plus === 'negative' ? 'reversed' : 'no-return';

	const volts = nets.voltsBetween(positive, negative);
	// Two systems that share no metal: current cannot come back.
	if (volts === null) return 'no-return';
	if (volts > SAME_POLE_V) return 'fed';
	if (volts < -SAME_POLE_V) return 'reversed';
	return plus === 'negative' ? 'both-negative' : 'both-positive';
}
