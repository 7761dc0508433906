import type { Param } from '#core/diagram';
import { energyShortfall } from '../../../src/core/rules/energy-shortfall.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** A bank of 100 Ah lithium, 80 Ah of which may be used, with a load and a solar controller. */
const system = (load: Record<string, Param>, solar: Record<string, Param> = {}) =>
	circuit({ b: ['battery', { capacityAh: 100 }], l: ['load', load], s: ['solar-controller', solar] }, [
		['b.pos', 'l.pos'],
		['l.neg', 'b.neg'],
		['s.pos', 'b.pos'],
		['s.neg', 'b.neg']
	]);

testRule(energyShortfall, {
	valid: {
		'a system whose hours nobody gave': system({ draw: 50 }),
		'a bank that lasts two days': system({ draw: 4, hoursPerDay: 10 }),
		'sources that bring more than is used': system({ draw: 10, hoursPerDay: 10 }, { arrayW: 500, sunHours: 4 }),
		'a drawing without a battery': circuit({ l: ['load', { hoursPerDay: 5 }] })
	},
	invalid: {
		'a bank that lasts a day and a bit less': {
			diagram: system({ draw: 10, hoursPerDay: 10 }),
			says: 'The loads use 100 Ah a day and no source is counted: the 80 Ah that may be used last 0.8 of a day. Not counted, for want of their hours: 1 load or source.',
			at: ['diagram:'],
			severity: 'note',
			remedy: 'Add a source that brings 100 Ah a day, use less, or plan where to charge.'
		},
		'just less than two days': {
			diagram: system({ draw: 4.01, hoursPerDay: 10 }),
			says: 'The loads use 40.1 Ah a day and no source is counted: the 80 Ah that may be used last 2 days. Not counted, for want of their hours: 1 load or source.',
			at: ['diagram:'],
			severity: 'note'
		},
		// 640 W × 1 h × 0.7 / 12.8 V = 35 Ah; 80 / (100 − 35) = 1.23 days.
		'sources that bring too little': {
			diagram: system({ draw: 10, hoursPerDay: 10 }, { arrayW: 640, sunHours: 1 }),
			says: 'The loads use 100 Ah a day and the sources bring 35 Ah: the 80 Ah that may be used last 1.2 days, and 0.8 of a day without sources.',
			at: ['diagram:'],
			severity: 'note',
			remedy: 'Bring 65 Ah a day more, use less, or plan where to charge.'
		}
	}
});
