import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { solidConductor } from '../../../src/core/rules/solid-conductor.ts';

const wired = (craft: 'vehicle' | 'boat' | 'cabin', solid?: boolean) =>
	circuit(
		{ b: ['battery'], l: ['load'] },
		[
			['b.pos', 'l.pos', solid === undefined ? {} : { solid }],
			['b.neg', 'l.neg']
		],
		{ craft }
	);

testRule(solidConductor, {
	valid: {
		'strands, as nothing else is said': wired('boat'),
		strands: wired('boat', false),
		'solid wire in a cabin': wired('cabin', true)
	},
	invalid: {
		'solid wire in a boat': {
			diagram: wired('boat', true),
			says: 'W1 is of solid wire in a boat.',
			at: ['conductor:W1'],
			severity: 'error'
		},
		'solid wire in a vehicle': {
			diagram: wired('vehicle', true),
			says: 'W1 is of solid wire in a vehicle.',
			at: ['conductor:W1'],
			severity: 'error'
		}
	}
});
