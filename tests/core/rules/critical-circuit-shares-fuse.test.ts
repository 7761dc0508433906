import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { criticalCircuitSharesFuse } from '../../../src/core/rules/critical-circuit-shares-fuse.ts';

const lights = (critical: readonly [boolean, boolean], ways: readonly [string, string]) =>
	circuit(
		{
			b: ['battery'],
			p: ['blade-panel', { ways: 2, fuseA: [5, 15] }],
			nav: ['load', { draw: 2, critical: critical[0] }],
			deck: ['load', { draw: 3, critical: critical[1] }]
		},
		[
			['b.pos', 'p.feed'],
			['p.neg', 'b.neg'],
			[`p.${ways[0]}`, 'nav.pos'],
			['nav.neg', 'p.n1'],
			[`p.${ways[1]}`, 'deck.pos'],
			['deck.neg', 'p.n2']
		]
	);

testRule(criticalCircuitSharesFuse, {
	valid: {
		'a fuse of its own': lights([true, false], ['1', '2']),
		'critical circuits that share': lights([true, true], ['1', '1']),
		'ordinary circuits that share': lights([false, false], ['1', '1'])
	},
	invalid: {
		'navigation lights on the deck light’s fuse': {
			diagram: lights([true, false], ['2', '2']),
			says: 'P way 2 feeds NAV, a critical circuit, together with DECK: a fault in one puts out both.',
			at: ['part:p', 'part:nav', 'part:deck'],
			severity: 'warning',
			remedy: 'Give NAV a fuse of its own.'
		}
	}
});
