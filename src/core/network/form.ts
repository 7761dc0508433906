import type { Network } from './types.ts';

const forms = new WeakMap<Network, object>();

/**
 * The same object for networks known to differ in nothing but resistances: what does not depend on those is kept by
 * it. A copy changed in any other way is a network of its own.
 */
export const formOf = (network: Network): object => forms.get(network) ?? network;

/** Says that a network differs from another in nothing but resistances. */
export function ofSameForm(network: Network, as: Network): Network {
	forms.set(network, formOf(as));
	return network;
}
