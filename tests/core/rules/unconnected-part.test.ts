import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { unconnectedPart } from '../../../src/core/rules/unconnected-part.ts';

testRule(unconnectedPart, {
	valid: {
		'parts with a conductor, and a block that is mounted': circuit(
			{ b: ['battery'], f: ['fuse-block'], l: ['load'], s: ['fused-bus'], g: ['fuse-block'] },
			[['f.post', 'l.pos']],
			{ mounts: { f: 'b.pos', g: 's.L' } }
		),
		'a part of unknown kind, said elsewhere': circuit({ u: ['flux-capacitor'] })
	},
	invalid: {
		'a part just placed': {
			diagram: circuit({ b: ['battery'] }),
			says: 'B has nothing connected.',
			at: ['part:b'],
			severity: 'note',
			remedy: 'Draw the conductors of this part, or remove it.'
		},
		'several, in one note': {
			diagram: circuit({ b: ['battery'], l: ['load', {}, { label: '' }], s: ['shunt'] }),
			says: 'B, unlabelled load and S have nothing connected.',
			at: ['part:b', 'part:l', 'part:s'],
			severity: 'note'
		}
	}
});
