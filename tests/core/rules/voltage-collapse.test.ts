/** E 13.2 V behind R feeds P only while P ≤ E²/(4R): circuit theory, as in any textbook on maximum power transfer. */
import { voltageCollapse } from '../../../src/core/rules/voltage-collapse.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** All resistance in the battery, but for about 1.4 mΩ of conductors, fuse and joints: the limit is near 13.2²/(4 × 0.1014) = 430 W. */
const feeding = (watts: number, level = 1) =>
	circuit(
		{
			b: ['battery', { emfV: 13.2, resistanceMilliohm: 100 }],
			f: ['fuse-block', { fuseA: 100 }],
			l: ['load', { drawAs: 'power', draw: watts }]
		},
		[
			['f.post', 'l.pos', { gauge: '4/0', lengthM: 1 }],
			['l.neg', 'b.neg', { gauge: '4/0', lengthM: 1 }]
		],
		{ mounts: { f: 'b.pos' }, cases: { rest: { loads: 0 }, work: { loads: level } } }
	);

testRule(voltageCollapse, {
	valid: {
		'400 W, just below the limit': feeding(400),
		'460 W at three quarters': feeding(460, 0.75)
	},
	invalid: {
		'460 W, above the limit': {
			diagram: feeding(460),
			says: 'In “work” no voltage exists at which L can be fed. Currents and voltage drops of this case are left out of all other checks.',
			remedy: 'Use thicker or shorter conductors, more batteries in parallel or a higher system voltage, or take loads out of this case.',
			at: ['part:l'],
			severity: 'error',
			caseId: 'work'
		}
	}
});
