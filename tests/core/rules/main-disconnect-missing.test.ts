import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { mainDisconnectMissing } from '../../../src/core/rules/main-disconnect-missing.ts';

const conductors = (over: string) =>
	[
		['b.pos', `${over}.in`],
		[`${over}.out`, 'l.pos'],
		['l.neg', 'b.neg']
	] as const;

testRule(mainDisconnectMissing, {
	valid: {
		'a battery disconnect': circuit({ b: ['battery'], q: ['battery-disconnect'], l: ['load'] }, conductors('q')),
		'a breaker': circuit({ b: ['battery'], q: ['circuit-breaker'], l: ['load'] }, conductors('q')),
		'one load before the switch and one behind it': circuit({ b: ['battery'], q: ['battery-disconnect'], l: ['load'], p: ['load'] }, [
			...conductors('q'),
			['b.pos', 'p.pos'],
			['p.neg', 'b.neg']
		]),
		'a switch in the negative': circuit({ b: ['battery'], q: ['battery-disconnect'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'q.in'],
			['q.out', 'b.neg']
		]),
		'a battery that feeds nothing': circuit({ b: ['battery'] })
	},
	invalid: {
		'a fuse alone': {
			diagram: circuit({ b: ['battery'], f: ['inline-fuse'], l: ['load'] }, conductors('f')),
			says: 'Nothing that B feeds lies behind a switch or breaker: the bank cannot be switched off.',
			at: ['part:b'],
			severity: 'warning'
		}
	}
});
