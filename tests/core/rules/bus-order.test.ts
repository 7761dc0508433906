import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { busOrder } from '../../../src/core/rules/bus-order.ts';

/** A four-position bus fed at L, with loads of these draws at positions 1 to 4; null leaves one free. */
const bus = (draws: readonly (number | null)[], ratedA = 500) => {
	const used = draws.flatMap((draw, index) => (draw === null ? [] : [{ id: String(index + 1), draw }]));
	return circuit(
		{
			b: ['battery', { resistanceMilliohm: 0.01 }],
			d: ['fused-bus', { positions: draws.length, fuseA: draws.map(() => 250), ratedA }],
			...Object.fromEntries(used.map(({ id, draw }) => [`l${id}`, ['load', { draw }] as const]))
		},
		[
			['b.pos', 'd.L', { gauge: '4/0' }],
			...used.flatMap(({ id }) => [
				[`d.${id}`, `l${id}.pos`, { id: `C${id}`, gauge: '2' }] as const,
				[`l${id}.neg`, 'b.neg', { gauge: '2' }] as const
			])
		]
	);
};

// Heat is the sum of squares along the bar: 150² + 140² + 130² + 120² against 150² + 30² + 20² + 10².
testRule(busOrder, {
	valid: {
		'the heaviest next to the feed': bus([120, 10, 10, 10]),
		'a bar that is hardly loaded': bus([10, 10, 10, 119], 500),
		'circuits that are alike': bus([40, 40, 40, 40], 300),
		'one circuit': bus([null, 200, null, null]),
		'a gain of 24.8 %': bus([20, 20, 20, 37], 300)
	},
	invalid: {
		'the heaviest at the far end': {
			diagram: bus([10, 10, 10, 120]),
			says: 'Up to 150 A passes along D; in another order of its circuits its bar makes 67.4 % less heat.',
			at: ['part:d'],
			severity: 'note'
		},
		'a gain of 25.3 %': {
			diagram: bus([20, 20, 20, 37.5], 300),
			says: 'Up to 97.5 A passes along D; in another order of its circuits its bar makes 25.3 % less heat.',
			at: ['part:d'],
			severity: 'note'
		},
		'a free position between': {
			diagram: bus([10, null, 10, 140]),
			says: 'Up to 160 A passes along D; in another order of its circuits its bar makes 70.6 % less heat.',
			at: ['part:d'],
			severity: 'note'
		}
	}
});
