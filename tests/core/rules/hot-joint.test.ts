import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { hotJoint } from '../../../src/core/rules/hot-joint.ts';

/** A load on a bus of four M8 studs, of 20 µΩ a face; M6 has 50 µΩ. */
const bus = (draw: number, thread: 'M8' | 'M6' = 'M8') =>
	circuit(
		{
			b: ['battery', { resistanceMilliohm: 0.01, capacityAh: 1000, stud: 'M12' }],
			p: ['positive-bus', { thread, ratedA: 1000 }],
			l: ['load', { draw }]
		},
		[
			['b.pos', 'p.1', { gauge: '4/0', lengthM: 0.01 }],
			['p.2', 'l.pos', { gauge: '4/0', lengthM: 0.01 }],
			['l.neg', 'b.neg', { gauge: '4/0', lengthM: 0.01 }]
		]
	);

/** Feed, a large load and a small one of 20 A on an M8 stud. */
const stacked = (draw: number, order: readonly string[]) =>
	circuit(
		{
			b: ['battery', { resistanceMilliohm: 0.01, capacityAh: 1000, stud: 'M12' }],
			p: ['link-post', { thread: 'M8', ratedA: 1000 }],
			s: ['battery-disconnect', { ratedA: 1000 }],
			l: ['load', { draw }],
			m: ['load', { draw: 20 }]
		},
		[
			['b.pos', 's.in', { gauge: '4/0', lengthM: 0.01 }],
			['s.out', 'p.stud', { gauge: '4/0', lengthM: 0.01 }],
			['p.stud', 'l.pos', { gauge: '4/0', lengthM: 0.01 }],
			['p.stud', 'm.pos', { gauge: '4/0', lengthM: 0.01 }],
			['l.neg', 'b.neg', { gauge: '4/0', lengthM: 0.01 }],
			['m.neg', 'b.neg', { gauge: '4/0', lengthM: 0.01 }]
		],
		{ stacks: { 'p.stud': order } }
	);

/** Two batteries and two loads on an M6 bus: four joints with the same current. */
const four = (draw: number) => {
	const wire = { gauge: '4/0', lengthM: 0.01 };
	const battery = ['battery', { resistanceMilliohm: 1, capacityAh: 1000, stud: 'M12' }] as const;
	return circuit(
		{ a: battery, b: battery, p: ['positive-bus', { thread: 'M6', ratedA: 1000 }], l: ['load', { draw }], m: ['load', { draw }] },
		[
			['a.pos', 'p.1', wire],
			['p.2', 'l.pos', wire],
			['p.3', 'm.pos', wire],
			['b.pos', 'p.4', wire],
			['l.neg', 'a.neg', wire],
			['m.neg', 'b.neg', wire],
			['a.neg', 'b.neg', wire]
		]
	);
};

// I²·R: 387 A through 20 µΩ are 2.996 W, 388 A 3.01 W; 244 A through 50 µΩ are 2.98 W, 245 A 3.0013 W.
testRule(hotJoint, {
	valid: {
		'387 A on M8': bus(387),
		'244 A on M6': bus(244, 'M6'),
		'four joints of 2.486 W': four(223),
		// 398 A pass between feed and small lug, 3.17 W; with the two large ones next to each other 378 A, 2.86 W: the order is what is wrong.
		'a hot joint that another order cools': stacked(378, ['W2', 'W4', 'W3'])
	},
	invalid: {
		'388 A on M8': {
			diagram: bus(388),
			says: 'A joint on P stud 1 makes 3 W at 388 A; 3 W is the most for one joint.',
			at: ['stud:p.1'],
			severity: 'warning'
		},
		'one that stays hot in any order': {
			diagram: stacked(388, ['W2', 'W4', 'W3']),
			says: 'A joint on P stud makes 3.3 W at 408 A; 3 W is the most for one joint.',
			at: ['stud:p.stud'],
			severity: 'warning'
		},
		'four joints of 2.509 W': {
			diagram: four(224),
			says: 'The 4 joints of P make 10 W together; 10 W is the most for one part.',
			at: ['part:p'],
			severity: 'warning'
		},
		'245 A on M6': {
			diagram: bus(245, 'M6'),
			says: 'A joint on P stud 1 makes 3 W at 245 A; 3 W is the most for one joint.',
			at: ['stud:p.1'],
			severity: 'warning'
		}
	}
});
