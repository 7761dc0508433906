import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { blockMisuse } from '../../../src/core/rules/block-misuse.ts';

/** A twin block on a battery post: plate 300 A, one load on each fuse. */
const twin = (fuseAA: number, fuseBA: number, draw: number, params = {}) =>
	circuit(
		{ b: ['battery'], t: ['twin-fuse-block', { fuseAA, fuseBA, ...params }], l1: ['load', { draw }], l2: ['load', { draw }] },
		[
			['t.a', 'l1.pos', { gauge: '2/0' }],
			['t.b', 'l2.pos', { gauge: '2/0' }],
			['l1.neg', 'b.neg', { gauge: '2/0' }],
			['l2.neg', 'b.neg', { gauge: '2/0' }]
		],
		{ mounts: { t: 'b.pos' } }
	);

testRule(blockMisuse, {
	valid: {
		'two fuses within the plate': twin(150, 150, 100),
		'a 5/16 in plate on an M8 stud, near enough': twin(100, 100, 10, { plateHole: '5/16' }),
		'a block said to be mounted that is not there': circuit({ b: ['battery'] }, [], { mounts: { ghost: 'b.pos' } }),
		'a block on a part that is not there': circuit({ f: ['fuse-block', { fuseA: 100 }] }, [], { mounts: { f: 'ghost.pos' } }),
		'a part without a plate': circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 300 }] }, [], { mounts: { f: 'b.pos' } }),
		'a surge, and a case that collapses': circuit(
			{
				b: ['battery'],
				t: ['twin-fuse-block', { fuseAA: 150, fuseBA: 150 }],
				l1: ['load', { draw: 200 }],
				l2: ['load', { drawAs: 'power', draw: 20_000 }]
			},
			[
				['t.a', 'l1.pos', { gauge: '2/0' }],
				['t.b', 'l2.pos', { gauge: '2/0' }],
				['l1.neg', 'b.neg', { gauge: '2/0' }],
				['l2.neg', 'b.neg', { gauge: '2/0' }]
			],
			{ mounts: { t: 'b.pos' }, cases: { surge: { duration: 'surge', loads: 0, levels: { l1: 1.8 } }, down: {} } }
		),
		'a block that is not mounted': circuit({ f: ['fuse-block', { fuseA: 300 }], l: ['load'] }, [['f.post', 'l.pos']])
	},
	invalid: {
		'fuses larger than the plate together': {
			diagram: twin(200, 200, 100),
			says: 'T holds fuses of 400 A together on a plate rated 300 A.',
			at: ['part:t'],
			severity: 'error'
		},
		'one fuse larger than its plate': {
			diagram: circuit({ b: ['battery'], f: ['fuse-block', { fuseA: 250 }] }, [], { mounts: { f: 'b.pos' } }),
			says: 'F holds a fuse of 250 A on a plate rated 200 A.',
			at: ['part:f'],
			severity: 'error',
			remedy: 'Fit a smaller fuse.'
		},
		'a current at the rating of the plate: only its fuses are too large': {
			diagram: twin(200, 200, 150),
			says: 'T holds fuses of 400 A together on a plate rated 300 A.',
			remedy: 'Fit smaller fuses, or give each circuit a block of its own.',
			at: ['part:t'],
			severity: 'error'
		},
		'the larger of several currents': {
			diagram: { ...twin(200, 200, 160), cases: circuit({}, [], { cases: { most: {}, same: {}, less: { loads: 0.95 } } }).cases },
			says: 'The plate of T is rated 300 A and carries 320 A.',
			at: ['part:t'],
			severity: 'error',
			caseId: 'most'
		},
		'a block on a clamp': {
			diagram: circuit({ l: ['load'], f: ['fuse-block', { fuseA: 100 }] }, [], { mounts: { f: 'l.pos' } }),
			says: 'F is mounted on L +, which has no seat for a plate.',
			at: ['part:f', 'stud:l.pos'],
			severity: 'error'
		},
		'currents larger than the plate together': {
			diagram: twin(200, 200, 160),
			says: 'The plate of T is rated 300 A and carries 320 A.',
			at: ['part:t'],
			severity: 'error',
			caseId: 'on'
		},
		'a block on a fuse position': {
			diagram: circuit({ d: ['fused-bus'], f: ['fuse-block'] }, [], { mounts: { f: 'd.1' } }),
			says: 'F is mounted on D position 1, which has no seat for a plate.',
			at: ['part:f', 'stud:d.1'],
			severity: 'error'
		},
		'a plate made for a thicker stud': {
			// ISO 273 fine: 10.5 mm hole for M10.
			diagram: twin(100, 100, 10, { plateHole: 'M10' }),
			says: 'The plate of T is made for M10 and has 2.5 mm of slack on the M8 stud B +.',
			at: ['part:t', 'stud:b.pos'],
			severity: 'error'
		},
		'a plate made for a thinner stud': {
			diagram: twin(100, 100, 10, { plateHole: 'M6' }),
			says: 'The plate of T is made for M6 and does not go over the M8 stud B +.',
			at: ['part:t', 'stud:b.pos'],
			severity: 'error'
		},
		'a lug on the plate': {
			diagram: circuit({ b: ['battery'], f: ['fuse-block'] }, [['b.pos', 'f.plate']]),
			says: 'W1 ends on the plate of F, which lands on a stud and takes no lug.',
			at: ['conductor:W1', 'part:f'],
			severity: 'error'
		}
	}
});
