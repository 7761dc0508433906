/** Whatever a user draws, however senseless, network, solver and protection answer with finite numbers. */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { studKey, type TerminalRef } from '#core/diagram';
import { buildNetwork } from '#core/network';
import { describe as describePart, newParams, partDefinitions } from '#core/parts';
import { letThroughBound, protectionOf, unprotectedRun } from '#core/protection';
import { solveCase } from '#core/solver';
import { circuit } from '../../support/circuit.ts';
import { allOn } from '../../support/network.ts';

// Many random systems: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

const kinds = partDefinitions.map(({ kind }) => kind);
const terminalsOf = (kind: string) =>
	describePart({ kind, label: '', at: { x: 0, y: 0 }, rotation: 0, params: newParams(kind), note: '' }).terminals;

const anyDiagram = fc
	.record({
		parts: fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 12 }),
		// More batteries and loads than chance would give: most diagrams should have something to solve.
		batteries: fc.nat({ max: 3 }),
		loads: fc.nat({ max: 4 }),
		conductors: fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 40 }),
		mounts: fc.array(fc.nat(), { maxLength: 3 })
	})
	.map((spec) => {
		const parts = [...spec.parts, ...Array<string>(spec.batteries).fill('battery'), ...Array<string>(spec.loads).fill('load')];
		const studs: TerminalRef[] = parts.flatMap((kind, i) => terminalsOf(kind).map(({ id }) => ({ part: `p${i}`, terminal: id })));
		const stud = (n: number) => studKey(studs[n % studs.length]!);
		const blocks = parts.flatMap((kind, i) => (terminalsOf(kind).some(({ mountingPlate }) => mountingPlate) ? [`p${i}`] : []));
		return circuit(
			Object.fromEntries(parts.map((kind, i) => [`p${i}`, [kind]])),
			spec.conductors.map(([from, to]) => [stud(from), stud(to)]),
			{ mounts: Object.fromEntries(spec.mounts.flatMap((n, i) => (blocks[i] ? [[blocks[i], stud(n)]] : []))) }
		);
	});

test('any diagram is solved or said to collapse, with finite numbers', () => {
	fc.assert(
		fc.property(anyDiagram, fc.boolean(), (diagram, sources) => {
			const net = buildNetwork(diagram);
			const point = solveCase(net, 'any', allOn({ sources: sources ? 1 : 0 }));
			for (const values of [point.nodeV, point.branchA, point.batteryA, point.sourceA, point.loadA, point.loadV]) {
				expect(values.every(Number.isFinite)).toBe(true);
			}
			if (point.status === 'solved') expect(point.residualA).toBeLessThan(1e-3);
			point.loadFed.forEach((fed, i) => {
				if (!fed) expect(point.loadA[i]).toBe(0);
			});
		}),
		{ numRuns: 150 }
	);
});

test('any conductor has a let-through, within its bound, and a run where it is not negative', () => {
	fc.assert(
		fc.property(anyDiagram, (diagram) => {
			const net = buildNetwork(diagram);
			for (const [id, { from }] of net.nodeOfEnd) {
				const protection = protectionOf(net, id);
				expect(protection.currentA).not.toBeNaN();
				expect(letThroughBound(net, id)).toBeGreaterThanOrEqual(protection.currentA);
				for (const end of ['from', 'to'] as const) {
					const run = unprotectedRun(net, id, end, { lengthM: () => 1, limitA: () => 10 });
					if (net.poles[from] === 'negative') expect(run).toBeNull();
					else expect(run!.lengthM).toBeGreaterThanOrEqual(1);
				}
			}
		}),
		{ numRuns: 60 }
	);
});
