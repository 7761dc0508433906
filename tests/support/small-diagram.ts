import { emptyDiagram, newConductor, type Diagram } from '#core/diagram';

const part = (kind: string, label: string, x: number, y: number): Diagram['parts'][string] => ({
	kind,
	label,
	at: { x, y },
	rotation: 0,
	params: {},
	note: ''
});

/**
 * Battery B1 with fuse block F1 on its post, two conductors from there to bus D1 and back, a load P1, and the order
 * on two studs kept. Kinds are as in the parts library, which the diagram does not look into.
 */
export function smallDiagram(): Diagram {
	const diagram = emptyDiagram();
	return {
		...diagram,
		cases: { ...diagram.cases, peak: { ...diagram.cases['peak']!, levels: { P1: 0.5 } } },
		parts: {
			B1: part('battery', 'B1', 0, 0),
			F1: part('fuse-block', 'F1', 30, 0),
			D1: part('distribution-bus', 'D1', 400, 0),
			P1: part('load', 'P1', 800, 0)
		},
		conductors: {
			C1: { ...newConductor({ part: 'F1', terminal: 'out' }, { part: 'D1', terminal: 'L' }), label: 'C1+', bends: [{ x: 100, y: -50 }] },
			C2: { ...newConductor({ part: 'D1', terminal: 'p1' }, { part: 'P1', terminal: 'pos' }), label: 'C2+' },
			C3: { ...newConductor({ part: 'P1', terminal: 'neg' }, { part: 'B1', terminal: 'neg' }), label: 'C2-' }
		},
		mounts: { F1: { part: 'B1', terminal: 'pos' } },
		stacks: {
			'B1.pos': [{ kind: 'block', block: 'F1' }, { kind: 'washer' }, { kind: 'nut' }],
			'D1.L': [{ kind: 'lug', conductor: 'C1', end: 'to' }, { kind: 'washer' }, { kind: 'lock-washer' }, { kind: 'nut' }]
		}
	};
}
