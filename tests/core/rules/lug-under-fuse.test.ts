import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { lugUnderFuse } from '../../../src/core/rules/lug-under-fuse.ts';

const block = (fuseA: number | null, ...items: string[]) =>
	circuit(
		{ b: ['battery'], f: ['fuse-block', { fuseA }], l: ['load'], m: ['load'] },
		[
			['f.post', 'l.pos'],
			['f.post', 'm.pos']
		],
		{ mounts: { f: 'b.pos' }, stacks: { 'f.post': items } }
	);

testRule(lugUnderFuse, {
	valid: {
		'fuse first': block(40, 'fuse', 'W1', 'W2'),
		'a stack nobody has drawn': block(40),
		'no fuse fitted': block(null, 'W1', 'fuse', 'W2')
	},
	invalid: {
		'a lug under the fuse': {
			diagram: block(40, 'W2', 'fuse', 'W1'),
			says: 'W2 lies under the fuse of F and is not protected by it.',
			at: ['stud:f.post', 'conductor:W2'],
			severity: 'error'
		},
		'both lugs under the fuse, in one finding': {
			diagram: block(40, 'W1', 'W2', 'fuse'),
			says: 'W1 and W2 lie under the fuse of F and are not protected by it.',
			at: ['stud:f.post', 'conductor:W1', 'conductor:W2'],
			severity: 'error'
		}
	}
});
