import { describe, expect, test } from 'vitest';
import { jointsOf, stackOf } from '#core/studs';
import { circuit } from '../../support/circuit.ts';

/** Feeder, panel and radio on an M8 end stud; 184 A go along the bar. */
const endStud = (...items: string[]) =>
	stackOf(
		circuit(
			{ b: ['battery'], d: ['fused-bus'], p: ['load'], r: ['load'] },
			[
				['b.pos', 'd.L', { gauge: '4/0' }],
				['d.L', 'p.pos', { gauge: '4' }],
				['d.L', 'r.pos', { gauge: '6' }]
			],
			{ stacks: { 'd.L': items } }
		),
		'd.L'
	)!;

const currents = (...injectedA: number[]) => ({ layers: injectedA.map((_, index) => index), byCase: [{ caseId: 'peak', injectedA }] });
const watts = (joints: ReturnType<typeof jointsOf>) => joints.reduce((sum, { heatW }) => sum + heatW, 0);

describe('the joints of a stack', () => {
	// Kirchhoff by hand, 20 µΩ a face on M8 (common practice): 0.02e-3 × (184² + 71² + 25²) = 0.79 W.
	test('carry what lies above them', () => {
		const joints = jointsOf(endStud('W1', 'W2', 'W3'), currents(255, -46, -25));
		expect(joints.map(({ currentA }) => currentA)).toEqual([184, 71, 25]);
		expect(joints.map(({ below, above }) => [below, above])).toEqual([
			[null, 0],
			[0, 1],
			[1, 2]
		]);
		expect(watts(joints)).toBeCloseTo(0.79, 2);
		expect(joints[0]!.dropV).toBeCloseTo(184 * 20e-6, 9);
	});

	// The feeder on top: 0.02e-3 × (184² + 230² + 255²) = 3.04 W.
	test('grow hot with the feeder on top', () => {
		const joints = jointsOf(endStud('W2', 'W3', 'W1'), currents(-46, -25, 255));
		expect(joints.map(({ currentA }) => currentA)).toEqual([184, 230, 255]);
		expect(watts(joints)).toBeCloseTo(3.04, 2);
	});

	test('take the case in which each is hottest', () => {
		const joints = jointsOf(endStud('W1', 'W2', 'W3'), {
			layers: [0, 1, 2],
			byCase: [
				{ caseId: 'peak', injectedA: [100, -46, -25] },
				{ caseId: 'charging', injectedA: [-120, 0, 0] }
			]
		});
		expect(joints.map(({ currentA, caseId }) => [currentA, caseId])).toEqual([
			[120, 'charging'],
			[71, 'peak'],
			[25, 'peak']
		]);
	});

	test('add a washer that current has to pass', () => {
		const stack = endStud('W1', 'washer', 'W2', 'W3');
		const joints = jointsOf(stack, { layers: [0, 2, 3], byCase: [{ caseId: 'peak', injectedA: [255, -46, -25] }] });
		// 20 µΩ and 100 µΩ, common practice: 71² × 120e-6 = 0.60 W.
		expect(joints[1]).toMatchObject({ below: 0, above: 2, currentA: 71 });
		expect(joints[1]!.heatW).toBeCloseTo(0.605, 3);
	});

	test('of a clamp are none', () => {
		const clamp = stackOf(circuit({ d: ['positive-bus'], l: ['load'] }, [['d.1', 'l.pos', { gauge: '14' }]]), 'l.pos')!;
		expect(jointsOf(clamp, currents(5))).toEqual([]);
	});
});
