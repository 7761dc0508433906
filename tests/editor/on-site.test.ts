/** Answers on a short, on readings and on the order of assembly, as the window gets them. */
import { describe, expect, test } from 'vitest';
import { change, editReadings, terminalRef, type TakenReading } from '#core/diagram';
import { buildNetwork, ofSameForm } from '#core/network';
import { solveCase } from '#core/solver';
import { answer } from '../../src/editor/answers.ts';
import type { ShortOffer } from '../../src/editor/short-offer.ts';
import { ridgePostAfter } from '../support/examples/ridge-post.ts';

const ridge = ridgePostAfter();
const short = (item: `stud:${string}` | `conductor:${string}`, rest: object = {}) =>
	answer(ridge, 'short', { item, end: null, to: null, shortOhm: 0, condition: 'greatest', ...rest });

const followed = (...asked: Parameters<typeof short>): ShortOffer => {
	const offer = short(...asked);
	if (!offer.ok) throw new Error(offer.why);
	return offer;
};

describe('a short on Ridge Post', () => {
	test('at the radio: its own fuse opens, the radio is dark, and steps hang together', () => {
		const offer = followed('stud:RAD.pos');
		expect(offer.openings[0]!.mayBeFirst).toBe(true);
		expect(offer.openings[0]!.unverified).toBe(true);
		expect(offer.clears).toBe(true);
		for (const steps of Object.values(offer.runs)) {
			expect(steps[0]!.fromS).toBe(0);
			for (const [i, step] of steps.slice(1).entries()) expect(step.fromS).toBe(steps[i]!.toS);
			expect(steps.at(-1)!.toS).toBe(Infinity);
			expect(steps.at(-1)!.currentA).toBeLessThan(1);
			expect(steps.at(-1)!.dark.map(({ key }) => key)).toContain('part:RAD');
			expect(steps[0]!.opens?.name).toBe(offer.openings[0]!.name);
		}
	});

	test('more ohms, less current; hot copper and tired batteries, less still', () => {
		const dead = followed('stud:RAD.pos').currentA;
		const chafed = followed('stud:RAD.pos', { shortOhm: 0.05 }).currentA;
		expect(chafed).toBeLessThan(dead);
		expect(followed('stud:RAD.pos', { shortOhm: 0.05, condition: 'least' }).currentA).toBeLessThan(chafed);
		// Ohm's law: two currents give volts and loop, which give the third.
		const loopOhm = (0.05 * chafed) / (dead - chafed);
		expect(followed('stud:RAD.pos', { shortOhm: 0.01 }).currentA).toBeCloseTo((dead * loopOhm) / (loopOhm + 0.01), 6);
	});

	test('the return can be chosen among those offered, the circuit’s own first', () => {
		const own = followed('stud:RAD.pos');
		expect(own.returns[0]!.name).toBe(own.to);
		const battery = own.returns.find(({ name }) => /^B1/.test(name))!;
		const other = followed('stud:RAD.pos', { to: battery.key });
		expect(other.to).toBe(battery.name);
		// The battery's own post is nearer to the source than the radio's end of the return.
		expect(other.currentA).toBeGreaterThan(own.currentA);
	});

	test('of a conductor the end that is fed least is taken, unless one is asked for', () => {
		const id = Object.entries(ridge.conductors).find(([, { to }]) => to.part === 'RAD' && to.terminal === 'pos')![0];
		expect(followed(`conductor:${id}`).end).toBe('to');
		expect(followed(`conductor:${id}`, { end: 'from' }).currentA).toBeGreaterThan(followed(`conductor:${id}`).currentA);
	});

	test('a return, or what is not there, is refused with a reason', () => {
		expect(short('stud:RAD.neg')).toEqual({ ok: false, why: 'not-positive' });
		expect(short('stud:NOBODY.pos')).toEqual({ ok: false, why: 'gone' });
	});
});

describe('readings on Ridge Post', () => {
	const caseId = 'peak';
	const black = terminalRef('B1.neg');
	const keys = [...buildNetwork(ridge).nodeOf.keys()].filter((key) => !key.includes('@') && key !== 'B1.neg');

	/** Volts at every stud with one conductor's resistance raised. */
	const measured = (raised: string | null, ohms: number) => {
		const network = buildNetwork(ridge);
		const index = raised === null ? -1 : network.branchOfConductor.get(raised)!;
		const branches = network.branches.map((branch) =>
			branch.index === index ? { ...branch, resistanceOhm: branch.resistanceOhm + ohms } : branch
		);
		const { nodeV } = solveCase(ofSameForm({ ...network, branches }, network), caseId, ridge.cases[caseId]!);
		const readings: Record<string, TakenReading> = {};
		keys.forEach((key, i) => {
			const volts = nodeV[network.nodeOf.get(key)!]! - nodeV[network.nodeOf.get('B1.neg')!]!;
			readings[`r${i}`] = {
				case: caseId,
				at: terminalRef(key),
				to: black,
				volts: Number(volts.toFixed(3)),
				order: i,
				date: '2024-05-01',
				by: ''
			};
		});
		return change(ridge, editReadings({ readings })).diagram;
	};
	const ask = { caseId, noiseV: 0.001 };

	test('as the model says, they agree', () => {
		expect(answer(measured(null, 0), 'readings', ask).verdict).toBe('agrees');
	});

	test('a lug of the radio’s supply raised by 20 mΩ is found, with its ohms', () => {
		const [id] = Object.entries(ridge.conductors).find(([, { to }]) => to.part === 'RAD' && to.terminal === 'pos')!;
		const offer = answer(measured(id, 0.02), 'readings', ask);
		expect(offer.verdict).toBe('found');
		const [suspect] = offer.suspects;
		expect(suspect!.key).toBe(`conductor:${id}`);
		expect(Math.abs(suspect!.extraOhm - 0.02)).toBeLessThan(3 * suspect!.uncertaintyOhm + 1e-4);
		// P = I²·R.
		expect(suspect!.heatW).toBeCloseTo(suspect!.currentA ** 2 * suspect!.extraOhm, 6);
	});

	test('a planned reading has the model’s value and no part in the verdict', () => {
		const planned: TakenReading = { case: caseId, at: terminalRef('RAD.pos'), to: black, volts: null, order: 1, date: null, by: '' };
		const offer = answer(change(ridge, editReadings({ readings: { p: planned } })).diagram, 'readings', ask);
		expect(offer.verdict).toBe('too-few');
		const network = buildNetwork(ridge);
		const { nodeV } = solveCase(network, caseId, ridge.cases[caseId]!);
		expect(offer.modelV['p']).toBeCloseTo(nodeV[network.nodeOf.get('RAD.pos')!]! - nodeV[network.nodeOf.get('B1.neg')!]!, 9);
	});
});

test('the order of assembly arrives as plain data', () => {
	const steps = answer(ridge, 'assembly', null);
	expect(steps.length).toBeGreaterThan(20);
	expect(structuredClone(steps)).toEqual(steps);
});
