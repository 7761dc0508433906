import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { change, parseDiagram, terminalRef, type Command, type Diagram, type OperatingCase } from '#core/diagram';
import { buildNetwork, type Network } from '#core/network';
import { buildStudy } from '#core/rules';
import { solveCase } from '#core/solver';

/** An example as the program opens it; it must need no mending. */
export function example(name: string): Diagram {
	const result = parseDiagram(readFileSync(`static/examples/${name}.json`, 'utf8'));
	if (!result.ok || result.notes.length > 0) throw new Error(`${name} does not open as it was saved.`);
	return result.diagram;
}

/** The diagram after these commands, none of which may be refused. */
export function changed(diagram: Diagram, ...commands: Command[]): Diagram {
	return commands.reduce((current, command) => {
		expect(command.refuse(current)).toBeNull();
		return change(current, command).diagram;
	}, diagram);
}

/** What the solver says of a diagram, by names as on the drawing. */
export function figures(diagram: Diagram) {
	const study = buildStudy(diagram);
	const { network } = study;
	const point = (caseId: string) => study.cases.find(({ id }) => id === caseId)!.point;
	const node = (key: string) => network.nodeOf.get(key)!;
	const indexIn = (list: readonly { readonly part: string; readonly index: number }[], part: string) =>
		list.find((entry) => entry.part === part)!.index;
	const volts = (caseId: string, plus: string, minus: string) => point(caseId).nodeV[node(plus)]! - point(caseId).nodeV[node(minus)]!;
	return {
		study,
		/** Volts from one stud to another. */
		volts,
		/** Amps a battery delivers. */
		batteryA: (caseId: string, part: string) => point(caseId).batteryA[indexIn(network.batteries, part)]!,
		loadA: (caseId: string, part: string) => point(caseId).loadA[indexIn(network.loads, part)]!,
		loadV: (caseId: string, part: string) => point(caseId).loadV[indexIn(network.loads, part)]!,
		/** Amps through a conductor, whichever way. */
		conductorA: (caseId: string, id: string) => Math.abs(point(caseId).branchA[network.branchOfConductor.get(id)!]!),
		/** Volts lost in these conductors' copper alone, without their lugs' joints: what a drop table gives. */
		copperV: (caseId: string, ...ids: string[]) =>
			ids.reduce((sum, id) => {
				const { branch, conductor, lengthM } = study.conductor(id);
				const joints = branch.resistanceOhm - copperOhm(conductor.gauge, lengthM);
				expect(joints).toBeGreaterThan(0);
				return sum + Math.abs(point(caseId).branchA[branch.index]!) * (branch.resistanceOhm - joints);
			}, 0),
		/** Amps through an internal link of a part, such as a bar segment or a fuse, whichever way. */
		linkA: (caseId: string, link: string) => Math.abs(point(caseId).branchA[network.branchOfLink.get(link)!]!),
		letThroughA: (id: string, end: 'from' | 'to') => study.protection(id)[end].currentA,
		/** Amps into a dead short between two studs, chargers off. */
		shortA: (plus: string, minus: string) => shortA(diagram, plus, minus)
	};
}

/** ASTM B258 areas and 0.01787 Ω·mm²/m (10.75 Ω·cmil/ft), worked out here again. */
function copperOhm(gauge: Diagram['conductors'][string]['gauge'], lengthM: number): number {
	if (gauge.system === 'iec') return (0.01787 * lengthM) / Number(gauge.size);
	const number = gauge.size.endsWith('/0') ? 1 - Number(gauge.size[0]) : Number(gauge.size);
	const diameterMm = 0.127 * 92 ** ((36 - number) / 39);
	return (0.01787 * lengthM) / ((Math.PI / 4) * diameterMm ** 2);
}

/** The network with batteries at their short-circuit figures, no load but the short, and nothing charging. */
function shortA(diagram: Diagram, plus: string, minus: string): number {
	const network = buildNetwork(diagram);
	for (const key of [plus, minus]) if (!network.nodeOf.has(key)) throw new Error(`${terminalRef(key).part} has no such terminal.`);
	const shorted: Network = {
		...network,
		batteries: network.batteries.map((battery) => ({ ...battery, emfV: battery.faultEmfV, resistanceOhm: battery.faultResistanceOhm })),
		sources: [],
		loads: [
			{
				index: 0,
				part: 'SHORT',
				link: 'short',
				positive: network.nodeOf.get(plus)!,
				negative: network.nodeOf.get(minus)!,
				draw: { kind: 'resistance', ohms: 1e-6 },
				followsSource: null,
				reversible: true,
				critical: false
			}
		]
	};
	const closed: OperatingCase = { label: '', order: 0, duration: 'surge', loads: 1, sources: 0, levels: {} };
	return solveCase(shorted, 'short', closed).loadA[0]!;
}

/** Within 3 % of a figure worked out by hand. */
export const near = (value: number, hand: number, percent = 3): void => {
	expect(Math.abs(value - hand), `${value.toPrecision(4)} against ${hand} by hand`).toBeLessThanOrEqual((percent / 100) * Math.abs(hand));
};

/** Short-circuit currents: within 10 %. */
export const nearFault = (value: number, hand: number): void => near(value, hand, 10);
