import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { fuseOverDeviceLimit } from '../../../src/core/rules/fuse-over-device-limit.ts';

const pump = (fuseA: number, maxFuseA: number | null, inlineA: number | null = null) =>
	circuit(
		{
			b: ['battery'],
			f: ['inline-fuse', { fuseA }],
			...(inlineA === null ? {} : { g: ['inline-fuse', { fuseA: inlineA }] as const }),
			p: ['load', { draw: 5, maxFuseA }]
		},
		[
			['b.pos', 'f.in'],
			...(inlineA === null
				? ([['f.out', 'p.pos']] as const)
				: ([
						['f.out', 'g.in'],
						['g.out', 'p.pos']
					] as const)),
			['p.neg', 'b.neg']
		]
	);

testRule(fuseOverDeviceLimit, {
	valid: {
		'a fuse of the largest rating allowed': pump(15, 15),
		'a device without a limit': pump(40, null),
		'a second, smaller fuse at the device': pump(40, 15, 15),
		'no fuse at all, which another rule reports': circuit({ b: ['battery'], p: ['load', { maxFuseA: 15 }] }, [
			['b.pos', 'p.pos'],
			['p.neg', 'b.neg']
		])
	},
	invalid: {
		'a fuse one size too large': {
			diagram: pump(20, 15),
			says: 'P may stand behind at most 15 A and is fed through F (20 A).',
			at: ['part:p', 'part:f'],
			severity: 'error',
			remedy: 'Fit 15 A or less, or add an inline fuse of that rating at the device.'
		}
	}
});
