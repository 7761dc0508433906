import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { blocksNotMatched } from '../../../src/core/rules/blocks-not-matched.ts';

type Battery = Record<string, string | number>;

const series = (first: Battery, second: Battery) =>
	circuit({ b1: ['battery', first], b2: ['battery', second] }, [['b1.pos', 'b2.neg']], { nominalV: 24 });
const parallel = (first: Battery, second: Battery, over: 'conductor' | 'relay' = 'conductor') =>
	circuit({ b1: ['battery', first], b2: ['battery', second], ...(over === 'relay' ? { k: ['combiner-relay'] as const } : {}) }, [
		...(over === 'relay'
			? ([
					['b1.pos', 'k.a'],
					['k.b', 'b2.pos']
				] as const)
			: ([['b1.pos', 'b2.pos']] as const)),
		['b1.neg', 'b2.neg']
	]);
const lead = { chemistry: 'lead-acid' };
const at = ['part:b1', 'part:b2'];

testRule(blocksNotMatched, {
	valid: {
		'alike in series': series({}, {}),
		'different capacity in parallel': parallel({ capacityAh: 100 }, { capacityAh: 200 }),
		'built a year apart': series({ built: 2023 }, { built: 2024 }),
		'one of which the age is not known': series({ built: 2010 }, {}),
		'two banks joined by a relay': parallel(lead, {}, 'relay')
	},
	invalid: {
		'lead-acid and lithium in parallel': {
			diagram: parallel(lead, {}),
			says: 'One bank holds batteries of different chemistry: B1 lead acid and B2 lithium iron phosphate. What charges one fully over- or undercharges the other.',
			at,
			severity: 'error'
		},
		'different voltages in a string': {
			diagram: series({ ...lead, nominalV: 12 }, { ...lead, nominalV: 6 }),
			says: 'One string is made of batteries of different voltage: B1 12 V and B2 6 V.',
			at,
			severity: 'error'
		},
		'different capacities in a string': {
			diagram: series({ capacityAh: 100 }, { capacityAh: 99 }),
			says: 'B1 100 Ah and B2 99 Ah stand in one string: the smallest is empty first and is then charged the wrong way round by the others.',
			at,
			severity: 'warning'
		},
		'built more than a year apart in a string': {
			diagram: series({ built: 2023 }, { built: 2024.1 }),
			says: 'One bank holds batteries built more than a year apart: B1 in 2023 and B2 in 2024.1.',
			at,
			severity: 'warning'
		},
		'built more than a year apart in parallel': {
			diagram: parallel({ built: 2020 }, { built: 2024 }),
			says: 'One bank holds batteries built more than a year apart: B1 in 2020 and B2 in 2024.',
			at,
			severity: 'warning'
		}
	}
});
