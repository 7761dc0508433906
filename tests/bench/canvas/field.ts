/** A diagram of any size: parts of common kinds on a jittered grid, each joined to its neighbours. */
import { emptyDiagram, newConductor, type Diagram } from '#core/diagram';
import { describe, newParams } from '#core/parts';

const KINDS = ['load', 'fused-bus', 'negative-bus', 'circuit-breaker', 'load', 'shunt', 'inline-fuse', 'positive-bus'];
const PITCH_MM = 420;

export function field(count: number): Diagram {
	const diagram = emptyDiagram();
	const columns = Math.ceil(Math.sqrt(count * 1.6));
	const params = new Map(KINDS.map((kind) => [kind, newParams(kind)]));
	let seed = 42;
	const random = (): number => (seed = (seed * 1103515245 + 12345) % 2147483648) / 2147483648;

	for (let i = 0; i < count; i++) {
		const kind = KINDS[i % KINDS.length]!;
		const at = {
			x: (i % columns) * PITCH_MM + Math.round(random() * 80),
			y: Math.floor(i / columns) * PITCH_MM + Math.round(random() * 80)
		};
		diagram.parts[`P${i}`] = { kind, label: `P${i}`, at, rotation: 0, params: params.get(kind)!, note: '' };
	}
	const terminal = (i: number, which: number) => {
		const { terminals } = describe(diagram.parts[`P${i}`]!);
		return { part: `P${i}`, terminal: terminals[which % terminals.length]!.id };
	};
	// Three conductors for every two parts, as in ordinary drawings: to the right, and every second one downward too.
	for (let i = 0; i < count; i++) {
		const join = (to: number, k: number): void => {
			if (to < count)
				diagram.conductors[`C${i}-${k}`] = {
					...newConductor(terminal(i, k + 1), terminal(to, k)),
					gauge: { system: 'awg', size: i % 5 ? '10' : '2/0' }
				};
		};
		if ((i + 1) % columns !== 0) join(i + 1, 0);
		if (i % 2 === 0) join(i + columns, 1);
	}
	return diagram;
}
