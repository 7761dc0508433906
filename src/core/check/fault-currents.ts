import type { NodeIndex } from '#core/network';
import type { Study } from '#core/rules';

/** Greatest short-circuit current at a node, amps, to the return beside it; null where a short is not defined. */
export const faultCurrentA = ({ faults }: Study, node: NodeIndex): number | null => faults.short(node, 'greatest')?.currentA ?? null;
