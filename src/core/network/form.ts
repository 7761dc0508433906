import type { Form, Network } from './types.ts';

const forms = new WeakMap<Form, object>();

/**
 * The same object for networks known to differ in nothing but resistances: what does not depend on those is kept by
 * it. A copy changed in any other way is a network of its own.
 */
export const formOf = (network: Form): object => forms.get(network) ?? network;

/** Says that a network differs from another in nothing but resistances. */
export function ofSameForm(network: Network, as: Network): Network {
	forms.set(network, formOf(as));
	return network;
}

/** What does not depend on resistances: worked out once for each form. */
export function byForm<Value>(work: (form: Form) => Value): (network: Form) => Value {
	const made = new WeakMap<object, { readonly value: Value }>();
	return (network) => {
		const form = formOf(network);
		let known = made.get(form);
		if (!known) made.set(form, (known = { value: work(network) }));
		return known.value;
	};
}
