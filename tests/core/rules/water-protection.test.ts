import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { waterProtection } from '../../../src/core/rules/water-protection.ts';

const at = (space: string, water: string) => circuit({ l: ['load', { space, water }] });

// IP x4 in spray, IP x7 where water stands: the second figures of IEC 60529; which is asked for is common practice, no source.
testRule(waterProtection, {
	valid: {
		'anything in the dry': at('ordinary', 'none'),
		'splashes in spray': at('wet', 'splashes'),
		'jets in spray': at('wet', 'jets'),
		'immersion in spray': at('wet', 'immersion'),
		'immersion where water stands': at('flooded', 'immersion')
	},
	invalid: {
		'nothing in spray': {
			diagram: at('wet', 'none'),
			says: 'L stands in spray or rain; IP x4 is asked for there, and it is not said to have it.',
			at: ['part:l'],
			severity: 'warning'
		},
		'nothing known in spray': {
			diagram: at('wet', 'not-known'),
			says: 'L stands in spray or rain; IP x4 is asked for there, and it is not said to have it.',
			at: ['part:l'],
			severity: 'warning'
		},
		'jets where water stands': {
			diagram: at('flooded', 'jets'),
			says: 'L stands where water may stand; IP x7 is asked for there, and it is not said to have it.',
			at: ['part:l'],
			severity: 'warning'
		},
		'two in spray': {
			diagram: circuit({ l: ['load', { space: 'wet' }], q: ['battery-disconnect', { space: 'wet' }] }),
			says: 'L and Q stand in spray or rain; IP x4 is asked for there, and they are not said to have it.',
			at: ['part:l', 'part:q'],
			severity: 'warning'
		}
	}
});
