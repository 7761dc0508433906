/** Orders on a stud as hands change them: only what is drawn takes part, not washers that are merely assumed. */
import type { Diagram, StackItem } from '#core/diagram';
import { isHardware, type Layer, type Stack } from '#core/studs';

/** From the seat up, without what is only assumed. */
export function drawnLayers(diagram: Diagram, stack: Stack): readonly Layer[] {
	if (!stack.hardwareAssumed) return stack.layers;
	const hardware = (items: readonly StackItem[]) => items.filter(isHardware).length;
	const assumed = hardware(stack.layers.map(({ item }) => item)) - hardware(diagram.stacks[stack.key] ?? []);
	return stack.layers.slice(0, stack.layers.length - assumed);
}

export const moved = (order: readonly StackItem[], from: number, to: number): StackItem[] => {
	const next = [...order];
	const [item] = next.splice(from, 1);
	next.splice(to, 0, item!);
	return next;
};

export const sameOrder = (a: readonly StackItem[], b: readonly StackItem[]): boolean => JSON.stringify(a) === JSON.stringify(b);
