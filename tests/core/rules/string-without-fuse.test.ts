import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { stringWithoutFuse } from '../../../src/core/rules/string-without-fuse.ts';

type Battery = Record<string, string | number>;

const bank = (count: number, battery: Battery = {}, fused: readonly number[] = []) =>
	circuit(
		{
			p: ['link-post'],
			n: ['link-post', { pole: 'negative' }],
			...Object.fromEntries(Array.from({ length: count }, (_, index) => [`b${index + 1}`, ['battery', battery] as const])),
			...Object.fromEntries(fused.map((number) => [`f${number}`, ['inline-fuse'] as const]))
		},
		Array.from({ length: count }, (_, index) => index + 1).flatMap((number): (readonly [string, string])[] => [
			...(fused.includes(number)
				? ([
						[`b${number}.pos`, `f${number}.in`],
						[`f${number}.out`, 'p.stud']
					] as const)
				: ([[`b${number}.pos`, 'p.stud']] as const)),
			[`b${number}.neg`, 'n.stud']
		])
	);
const lead = { chemistry: 'lead-acid' };

testRule(stringWithoutFuse, {
	valid: {
		'a fuse for each string': bank(3, {}, [1, 2, 3]),
		'a single battery': bank(1),
		// The fuse of one lies between the two as well.
		'two strings with one fuse between them': bank(2, {}, [1]),
		'two in series': circuit({ b1: ['battery'], b2: ['battery'] }, [['b1.pos', 'b2.neg']], { nominalV: 24 })
	},
	invalid: {
		'two of lithium': {
			diagram: bank(2),
			says: 'B1 and B2 stand in parallel with no fuse or breaker between them: a fault in one is fed by the other without limit.',
			at: ['part:b1', 'part:b2'],
			severity: 'error',
			source: 'common practice, no source'
		},
		'two of lead-acid': {
			diagram: bank(2, lead),
			says: 'B1 and B2 stand in parallel with no fuse or breaker between them: a fault in one is fed by the other without limit.',
			at: ['part:b1', 'part:b2'],
			severity: 'warning'
		},
		'four of lead-acid, one of them fused': {
			diagram: bank(4, lead, [2]),
			says: 'B1, B3 and B4 stand in parallel with no fuse or breaker between them: a fault in one is fed by the others without limit.',
			at: ['part:b1', 'part:b3', 'part:b4'],
			severity: 'error'
		}
	}
});
