import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { loadDump } from '../../../src/core/rules/load-dump.ts';

const charged = (battery: Record<string, string>) =>
	circuit({ g: ['alternator'], b: ['battery', battery] }, [
		['g.pos', 'b.pos'],
		['g.neg', 'b.neg']
	]);
const lead = { chemistry: 'lead-acid' };

testRule(loadDump, {
	valid: {
		'a lead-acid battery': charged(lead),
		'lithium without electronics that open': charged({ switchesOff: 'no' }),
		'lithium beside a start battery that stays': circuit(
			{ g: ['alternator'], s: ['battery', lead], r: ['combiner-relay'], b: ['battery'] },
			[
				['g.pos', 's.pos'],
				['g.neg', 's.neg'],
				['s.pos', 'r.a'],
				['r.b', 'b.pos'],
				['s.neg', 'b.neg']
			]
		),
		'an alternator that charges nothing': circuit({ g: ['alternator'] }),
		'a mains charger on lithium': circuit({ c: ['mains-charger'], b: ['battery'] }, [
			['c.pos', 'b.pos'],
			['c.neg', 'b.neg']
		])
	},
	invalid: {
		'lithium alone': {
			diagram: charged({}),
			says: 'G charges B and no other battery: when the electronics there open while it runs, nothing takes its current.',
			at: ['part:g', 'part:b'],
			severity: 'error'
		},
		'a start battery behind a switch': {
			diagram: circuit({ g: ['alternator'], q: ['battery-disconnect'], s: ['battery', lead] }, [
				['g.pos', 'q.in'],
				['q.out', 's.pos'],
				['g.neg', 's.neg']
			]),
			says: 'G reaches S only through a switch or relay: opened while it runs, nothing takes its current.',
			at: ['part:g', 'part:s'],
			severity: 'warning'
		}
	}
});
