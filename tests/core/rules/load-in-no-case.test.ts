import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { loadInNoCase } from '../../../src/core/rules/load-in-no-case.ts';

type Cases = NonNullable<NonNullable<Parameters<typeof circuit>[2]>['cases']>;

const fed = (cases: Cases, kind: 'load' | 'starter-motor' = 'load') =>
	circuit(
		{ b: ['battery'], l: [kind], m: ['load'] },
		[
			['b.pos', 'l.pos', { gauge: '2' }],
			['l.neg', 'b.neg', { gauge: '2' }],
			['b.pos', 'm.pos'],
			['m.neg', 'b.neg']
		],
		{ cases }
	);

// Common practice, no source.
testRule(loadInNoCase, {
	valid: {
		'loads that are on': fed({ on: {} }),
		'one that is on in another case': fed({ day: { levels: { l: 0 } }, night: { levels: { m: 0 } } }),
		'a starter, which runs in surges': fed({ on: { levels: { l: 0 } }, start: { duration: 'surge' } }, 'starter-motor'),
		'a drawing without cases, which is said as a whole': fed({}),
		'a load that nothing feeds': circuit({ b: ['battery'], l: ['load'] }, [['l.neg', 'b.neg']], { cases: { off: { loads: 0 } } })
	},
	invalid: {
		'one that is on in none': {
			diagram: fed({ on: { levels: { l: 0 } } }),
			says: 'L is on in no continuous case: conductors, fuses and volts were checked as if it drew nothing.',
			remedy: 'Switch it on in a case, or add one for it; a surge is a start, not a use.',
			at: ['part:l'],
			severity: 'warning'
		},
		'all that are on in a surge only': {
			diagram: fed({ s: { duration: 'surge' } }),
			says: 'L and M are on in no continuous case: conductors, fuses and volts were checked as if they drew nothing.',
			at: ['part:l', 'part:m'],
			severity: 'warning'
		},
		'one at a tenth in the one case and at 99 % in the other': {
			diagram: fed({ a: { levels: { l: 0.1 } }, c: { levels: { l: 0.99 } } }),
			says: 'L (99 % at most) is never on at full draw in a continuous case.',
			at: ['part:l'],
			severity: 'note'
		}
	}
});
