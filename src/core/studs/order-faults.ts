/** What is wrong with an order, thing by thing; the rules say the same of a diagram as drawn. */
import { areaMm2 } from '#core/conductors';
import { terminalRef, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import { isHardware } from './order.ts';
import { findTerminal, hasOwnFuse } from './terminal.ts';
import { itemLabel, LARGEST_RING_MM2 } from './words.ts';

export interface OrderFault {
	/** Place in the order, from the seat up, of what lies wrong. */
	readonly index: number;
	readonly message: string;
}

/** Faults from the seat up; none where every lug lies copper on copper below the hardware, and the fuse is the only way. */
export function orderFaults(diagram: Diagram, stud: StudKey, order: readonly StackItem[]): OrderFault[] {
	const terminal = findTerminal(diagram, terminalRef(stud));
	if (!terminal || terminal.kind !== 'stud') return [];
	const label = (item: StackItem) => itemLabel(diagram, terminal.kind, item);
	const last = order.findLastIndex((item) => !isHardware(item));
	const fuse = order.findIndex(({ kind }) => kind === 'fuse');
	const faults: OrderFault[] = [];
	for (const [index, item] of order.entries()) {
		if (isHardware(item) && index < last) {
			const above = label(order[order.findIndex((other, place) => place > index && !isHardware(other))]!);
			faults.push({ index, message: `The ${label(item)} lies under the ${above}: the current of what is above must pass it.` });
		}
		if (item.kind === 'lug' && index < fuse && hasOwnFuse(diagram, terminalRef(stud)))
			faults.push({ index, message: `The ${label(item)} lies under the fuse: nothing protects it.` });
		const lower = order[index - 1];
		if (item.kind === 'block' && lower?.kind === 'lug' && areaMm2(diagram.conductors[lower.conductor]!.gauge) <= LARGEST_RING_MM2)
			faults.push({ index, message: `The plate of ${label(item)} lies on the ${label(lower)}, which is smaller than it.` });
	}
	return faults;
}
