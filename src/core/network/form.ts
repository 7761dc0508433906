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

/** What does not depend on resistances: worked out once for each form. */
export function byForm<Value>(work: (network: Network) => Value): (network: Network) => Value {
	const made = new WeakMap<object, { readonly value: Value }>();
	return (network) => {
		const form = formOf(network);
		let known = made.get(form);
		if (!known) made.set(form, (known = { value: work(network) }));
		return known.value;
	};
}
