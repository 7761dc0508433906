/** Random two-pole systems for property tests: a tree of positive metal with some loops, the same for negative. */
import * as fc from 'fast-check';
import { battery, fuse, load, network, source, wire, type TestNetwork } from './network.ts';

/** Resistances over many decades, as between a bus bar and a long thin conductor. */
const ohms = (least: number, most: number) =>
	fc.double({ min: Math.log10(least), max: Math.log10(most), noNaN: true }).map((exponent) => 10 ** exponent);

interface Options {
	readonly leastOhm?: number;
	readonly mostOhm?: number;
	/** Kinds of load to draw from. */
	readonly loads?: readonly ('ohms' | 'amps' | 'watts')[];
	readonly sources?: boolean;
	/** All negatives on one node: then no current into one node lowers the voltage of another. */
	readonly oneReturn?: boolean;
	readonly most?: number;
}

export function anyNetwork({
	leastOhm = 1e-4,
	mostOhm = 1,
	loads = ['ohms'],
	sources = false,
	oneReturn = false,
	most = 25
}: Options = {}): fc.Arbitrary<TestNetwork> {
	const negative = (at: number): string => (oneReturn ? 'n0' : `n${at}`);
	return fc.integer({ min: 2, max: most }).chain((size) => {
		const at = fc.nat({ max: size - 1 });
		const edge = fc.record({
			to: at,
			ohm: ohms(leastOhm, mostOhm),
			device: fc.option(fc.constantFrom(5, 10, 40, 100, 225), { nil: null })
		});
		return fc
			.record({
				tree: fc.array(edge, { minLength: size - 1, maxLength: size - 1 }),
				loops: fc.array(fc.tuple(at, edge), { maxLength: 4 }),
				returns: fc.array(edge, { minLength: size - 1, maxLength: size - 1 }),
				batteries: fc.array(fc.record({ at, emfV: fc.double({ min: 12, max: 14, noNaN: true }), ohm: ohms(1e-3, 0.1) }), {
					minLength: 1,
					maxLength: 3
				}),
				loads: fc.array(fc.record({ at, kind: fc.constantFrom(...loads), amount: fc.double({ min: 0.1, max: 1, noNaN: true }) }), {
					maxLength: 8
				}),
				sources: fc.array(
					fc.record({ at, maxA: fc.double({ min: 1, max: 60, noNaN: true }), setV: fc.double({ min: 12, max: 15, noNaN: true }) }),
					{ maxLength: sources ? 3 : 0 }
				)
			})
			.map((spec) =>
				network({
					batteries: spec.batteries.map(({ at, emfV, ohm }, i) => battery(`B${i}`, `p${at}`, negative(at), { emfV, resistanceOhm: ohm })),
					branches: [
						...spec.tree.map(({ to, ohm, device }, i) => positive(`T${i}`, i + 1, to % (i + 1), ohm, device)),
						...spec.loops.map(([from, { to, ohm, device }], i) => positive(`L${i}`, from, to, ohm, device)),
						...(oneReturn ? [] : spec.returns).map(({ to, ohm }, i) => wire(`R${i}`, `n${i + 1}`, `n${to % (i + 1)}`, ohm))
					],
					loads: spec.loads.map(({ at, kind, amount }, i) =>
						load(
							`D${i}`,
							`p${at}`,
							negative(at),
							kind === 'ohms' ? { ohms: 10 * amount } : kind === 'amps' ? { amps: amount } : { watts: 12 * amount }
						)
					),
					sources: spec.sources.map(({ at, maxA, setV }, i) => source(`S${i}`, `p${at}`, negative(at), { maxA, setV }))
				})
			);
	});
}

const positive = (id: string, a: number, b: number, ohm: number, ratingA: number | null) =>
	ratingA === null ? wire(id, `p${a}`, `p${b}`, ohm) : fuse(id, `p${a}`, `p${b}`, ratingA, ohm);
