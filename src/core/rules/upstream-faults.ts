/** Which faults of positive conductors lie before the devices that limit another let-through. */
import type { Form, NodeIndex } from '#core/network';
import type { LetThrough } from '#core/protection';

interface Walk {
	/** True when a battery's positive terminal was reached. */
	readonly reached: boolean;
	/** Branches of the way to it, when reached. */
	readonly way: readonly number[];
}

/**
 * By let-through: those faults whose devices are on the only way to its own, so that no battery reaches these but
 * through them. Answers are kept by the let-through, which returns on common loops share.
 */
export function upstreamFaults<Fault extends { readonly letThrough: LetThrough }>(
	form: Form,
	faults: readonly Fault[]
): (letThrough: LetThrough) => readonly Fault[] {
	const devicesOf = ({ limitedBy }: LetThrough): number[] =>
		limitedBy.flatMap(({ part, link }) => form.branchOfLink.get(`${part}.${link}`) ?? []);
	const barring = faults.map((fault) => ({ fault, barred: new Set(devicesOf(fault.letThrough)) })).filter(({ barred }) => barred.size > 0);
	const byDevice = new Map<number, typeof barring>();
	for (const entry of barring) {
		for (const device of entry.barred) byDevice.set(device, [...(byDevice.get(device) ?? []), entry]);
	}

	const posts = new Set(form.batteries.map(({ positive }) => positive));
	const none: ReadonlySet<number> = new Set();
	const answer = (letThrough: LetThrough): readonly Fault[] => {
		const wanted = devicesOf(letThrough);
		if (wanted.length === 0) return barring.map(({ fault }) => fault);
		// What does not bar the first device, nor one way to it, cannot be on the only way.
		const { reached, way } = walkToBattery(form, posts, wanted.slice(0, 1), none);
		const near = new Set(reached ? [wanted[0]!, ...way].flatMap((device) => byDevice.get(device) ?? []) : barring);
		return [...near].filter(({ barred }) => !walkToBattery(form, posts, wanted, barred).reached).map(({ fault }) => fault);
	};

	const known = new WeakMap<LetThrough, readonly Fault[]>();
	return (letThrough) => {
		if (!known.has(letThrough)) known.set(letThrough, answer(letThrough));
		return known.get(letThrough)!;
	};
}

/** From the ends of the wanted branches, those barred apart, to the nearest battery without passing barred ones. */
function walkToBattery(
	{ branches, branchesAt }: Form,
	posts: ReadonlySet<NodeIndex>,
	wanted: readonly number[],
	barred: ReadonlySet<number>
): Walk {
	const cameBy = new Map<NodeIndex, number>();
	const other = (index: number, node: NodeIndex): NodeIndex => (branches[index]!.a === node ? branches[index]!.b : branches[index]!.a);
	for (const index of wanted) {
		if (barred.has(index)) continue;
		cameBy.set(branches[index]!.a, -1);
		cameBy.set(branches[index]!.b, -1);
	}
	// A map is walked in the order of entry, and what is added meanwhile is walked as well.
	for (const [node, index] of cameBy) {
		if (posts.has(node)) {
			const way: number[] = [];
			for (let at = node, by = index; by >= 0; by = cameBy.get(at)!) {
				way.push(by);
				at = other(by, at);
			}
			return { reached: true, way };
		}
		for (const next of branchesAt[node]!) {
			if (!barred.has(next) && !cameBy.has(other(next, node))) cameBy.set(other(next, node), next);
		}
	}
	return { reached: false, way: [] };
}
