/** On which layers of a stud a finding is to be seen. */
import { isHardware, type Stack } from '#core/studs';

interface Concern {
	readonly rule: string;
	readonly subjects: readonly { readonly kind: string; readonly id: string }[];
}

/** Where a rule speaks of the stud as a whole, the layer that shows it: by default the topmost. */
const SHOWN_ON: Readonly<Record<string, (stack: Stack) => number[]>> = {
	'washer-in-current-path': ({ layers }) => {
		const last = layers.findLastIndex(({ item }) => !isHardware(item));
		return [...layers.keys()].filter((index) => index < last && isHardware(layers[index]!.item));
	},
	'stack-order': (stack) => terminals(stack).slice(-1),
	'stud-crowded': (stack) => terminals(stack).slice(stack.terminal.maxTerminals),
	'lugs-clash': ({ layers }) => {
		const widest = Math.max(...layers.map(({ item, widthMm }) => (item.kind === 'lug' ? widthMm : 0)));
		return [layers.findIndex(({ item, widthMm }) => item.kind === 'lug' && widthMm === widest)];
	}
};

const terminals = ({ layers }: Stack): number[] =>
	[...layers.keys()].filter((index) => layers[index]!.item.kind === 'lug' || layers[index]!.item.kind === 'block');

/** Indices into the stack's layers, at least one: those of the lugs and plates it names, else where such a fault is seen. */
export function layersConcerned(stack: Stack, { rule, subjects }: Concern): number[] {
	const named = [...stack.layers.keys()].filter((index) => {
		const { item } = stack.layers[index]!;
		if (item.kind === 'lug') return subjects.some(({ kind, id }) => kind === 'conductor' && id === item.conductor);
		return item.kind === 'block' && subjects.some(({ kind, id }) => kind === 'part' && id === item.block);
	});
	if (named.length > 0) return named;
	const shown = SHOWN_ON[rule]?.(stack).filter((index) => index >= 0) ?? [];
	return shown.length > 0 ? shown : [stack.layers.length - 1];
}
