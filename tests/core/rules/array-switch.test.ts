import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arraySwitch } from '../../../src/core/rules/array-switch.ts';

const array = (params: Record<string, number | string>, negative: 'bonded' | 'insulated' = 'insulated') =>
	circuit({ s: ['solar-controller', params] }, [], { negative });

/** A bonded system whose bond leaves the bank's negative, or that of an isolated converter's output. */
const bondedBy = (at: 'n' | 'c') =>
	circuit(
		{
			s: ['solar-controller', { arraySwitch: 'one' }],
			b: ['battery'],
			n: ['link-post', { pole: 'negative' }],
			c: ['dcdc-converter', { isolated: true }],
			g: ['chassis-point']
		},
		[
			['s.neg', 'n.stud'],
			['b.neg', 'n.stud'],
			['c.in-neg', 'n.stud'],
			[at === 'n' ? 'n.stud' : 'c.out-neg', 'g.stud']
		],
		{ negative: 'bonded' }
	);

testRule(arraySwitch, {
	valid: {
		'a switch nothing is said of': array({}),
		'both poles': array({ arraySwitch: 'both' }),
		'one pole of a bonded system': array({ arraySwitch: 'one' }, 'bonded'),
		'one pole where the bond reaches the controller': bondedBy('n'),
		'a switch for the array’s voltage': array({ arraySwitch: 'both', arraySwitchV: 100, moduleVocV: 50, inSeries: 2 })
	},
	invalid: {
		'no switch': {
			diagram: array({ arraySwitch: 'no' }),
			says: 'The array of S cannot be switched off.',
			at: ['part:s'],
			severity: 'error'
		},
		'one pole of an insulated system': {
			diagram: array({ arraySwitch: 'one' }),
			says: 'The array of S is switched in one pole, and neither of its poles is bonded: with the switch open the other still has voltage against the metalwork after a first fault.',
			at: ['part:s'],
			severity: 'error'
		},
		'one pole where the bond is behind an isolated converter': {
			diagram: bondedBy('c'),
			says: 'The array of S is switched in one pole, and neither of its poles is bonded: with the switch open the other still has voltage against the metalwork after a first fault.',
			at: ['part:s'],
			severity: 'error'
		},
		'a plug': {
			diagram: array({ arraySwitch: 'plug' }),
			says: 'The array of S is parted by its plug alone.',
			at: ['part:s'],
			severity: 'warning'
		},
		'a switch for a little less than the array’s voltage': {
			diagram: array({ arraySwitch: 'both', arraySwitchV: 99.9, moduleVocV: 50, inSeries: 2 }),
			says: 'The array switch of S is made for 99.9 V; the array reaches 100 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'the same in one pole, in the cold': {
			diagram: array({ arraySwitch: 'one', arraySwitchV: 100, moduleVocV: 50, inSeries: 2, coldestC: 20 }, 'bonded'),
			says: 'The array switch of S is made for 100 V; the array reaches 102 V.',
			at: ['part:s'],
			severity: 'error'
		}
	}
});
