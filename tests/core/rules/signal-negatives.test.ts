import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { signalNegatives } from '../../../src/core/rules/signal-negatives.ts';

const devices = (tied: boolean, signals = true) =>
	circuit({ a: ['load', { signals }], b: ['load', { signals }], n: ['negative-bus'], m: ['negative-bus'] }, [
		['a.neg', 'n.1'],
		['b.neg', 'm.1'],
		...(tied ? ([['n.2', 'm.2']] as const) : [])
	]);

testRule(signalNegatives, {
	valid: { 'negatives tied together': devices(true), 'devices that share no signals': devices(false, false) },
	invalid: {
		'negatives on two buses': {
			diagram: devices(false),
			says: 'A and B share signals, but their negatives end on 2 networks that no conductor joins.',
			at: ['part:a', 'part:b'],
			severity: 'error'
		}
	}
});
