import type { Colour, ColourScheme } from '#core/diagram';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { colourFault } from '../../../src/core/rules/colour-fault.ts';

const coloured = (positive: Colour, negative: Colour, colourScheme: ColourScheme = 'abyc') =>
	circuit(
		{ b: ['battery'], l: ['load'], x: ['chassis-point'] },
		[
			['b.pos', 'l.pos', { colour: positive }],
			['l.neg', 'b.neg', { colour: negative }],
			['b.neg', 'x.stud', { colour: 'green-yellow' }]
		],
		{ colourScheme }
	);

testRule(colourFault, {
	valid: {
		// ABYC E-11: positive red, negative black or yellow, bonding green or green with yellow stripe; brown for pumps.
		'red and black': coloured('red', 'black'),
		'red and yellow': coloured('red', 'yellow'),
		'a colour of function': coloured('brown', 'black'),
		'colours left to the scheme': coloured('auto', 'auto'),
		// IEC 60446: L+ brown, L− grey, M blue, PE green-yellow.
		'brown and blue in Europe': coloured('brown', 'blue', 'iec-60446'),
		'a loose conductor, whose pole is not known': circuit({ l: ['load'], f: ['inline-fuse'] }, [['f.out', 'l.pos', { colour: 'black' }]])
	},
	invalid: {
		'a positive conductor in yellow': {
			diagram: coloured('yellow', 'black'),
			says: 'W1 is on the positive pole and is yellow, which ABYC E-11 colour table keeps for negative conductors.',
			at: ['conductor:W1'],
			severity: 'error',
			source: 'ABYC E-11 colour table',
			unverified: false
		},
		'a negative conductor in red, and a return in green': {
			diagram: coloured('green', 'red'),
			finds: [
				{
					says: 'W1 is on the positive pole and is green, which ABYC E-11 colour table keeps for bonding conductors.',
					at: ['conductor:W1'],
					severity: 'error'
				},
				{
					says: 'W2 is on the negative pole and is red, which ABYC E-11 colour table keeps for positive conductors.',
					at: ['conductor:W2'],
					severity: 'error'
				}
			]
		},
		'a return in the colour of bonding': {
			diagram: coloured('red', 'green-yellow'),
			says: 'W2 is on the negative pole and is green and yellow, which ABYC E-11 colour table keeps for bonding conductors.',
			at: ['conductor:W2'],
			severity: 'error'
		},
		'brown on the negative in Europe': {
			diagram: coloured('brown', 'brown', 'iec-60446'),
			says: 'W2 is on the negative pole and is brown, which IEC 60446 (now in IEC 60445), two-wire DC keeps for positive conductors.',
			at: ['conductor:W2'],
			severity: 'error'
		},
		'white on the positive, by an edition not seen': {
			diagram: coloured('white', 'white', 'iec-60445'),
			says: 'W1 is on the positive pole and is white, which IEC 60445:2017, DC keeps for negative conductors.',
			at: ['conductor:W1'],
			severity: 'error',
			unverified: true
		}
	}
});
