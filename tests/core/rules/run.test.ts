import { describe, expect, test } from 'vitest';
import { buildStudy, defineRule, runRules, type Rule, type Severity, type Subject } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

const diagram = circuit({ b: ['battery'], l: ['load'] }, [
	['b.pos', 'l.pos'],
	['l.neg', 'b.neg']
]);

const part = (id: string): Subject => ({ kind: 'part', id });
const conductor = (id: string): Subject => ({ kind: 'conductor', id });
const stud = (id: string): Subject => ({ kind: 'stud', id });

/** A rule that reports at these places, in this order. */
const reporting = (id: string, places: readonly (readonly [Severity, Subject])[]): Rule =>
	defineRule({
		meta: {
			id,
			title: 'A title',
			severity: 'note',
			group: 'topology',
			why: 'A reason',
			source: { default: 'for all', 'us-small-craft': 'for boats' }
		},
		messages: { at: ({ n }: { n: number }) => ({ message: `Number ${n}.`, remedy: 'Nothing.' }) },
		*check() {
			for (const [n, [severity, subject]] of places.entries())
				yield { message: 'at' as const, data: { n }, at: [subject] as const, severity };
		}
	});

const keys = (...rules: Rule[]) => runRules(buildStudy(diagram), rules).map(({ key }) => key);

describe('findings', () => {
	test('come by severity, then by rule, then in the diagram’s order', () => {
		const first = reporting('first', [
			['note', conductor('W2')],
			['error', conductor('W1')],
			['error', stud('l.pos')],
			['error', part('b')]
		]);
		const second = reporting('second', [
			['error', part('b')],
			['fatal', { kind: 'diagram', id: '' }]
		]);
		expect(keys(first, second)).toEqual(['second:', 'first:b', 'first:l.pos', 'first:W1', 'second:b', 'first:W2']);
	});

	test('have keys that tell two reports about one subject apart', () => {
		const twice = reporting('twice', [
			['error', part('b')],
			['error', part('b')],
			['error', part('l')]
		]);
		expect(keys(twice)).toEqual(['twice:b', 'twice:b#2', 'twice:l']);
	});

	test('take words, severity and source from the rule where the report gives none', () => {
		const plain = defineRule({
			...reporting('plain', []),
			*check() {
				yield { message: 'at', data: { n: 7 }, at: [part('b')] as const };
			}
		});
		const found = (profile: string) => runRules(buildStudy({ ...diagram, profile }), [plain])[0];
		expect(found('common-practice')).toEqual({
			key: 'plain:b',
			rule: 'plain',
			title: 'A title',
			severity: 'note',
			subjects: [part('b')],
			message: 'Number 7.',
			remedy: 'Nothing.',
			why: 'A reason',
			source: 'for all',
			unverified: false,
			assumptions: [],
			caseId: null,
			numbers: { n: 7 },
			waiver: null,
			waiverLapsed: false,
			lapse: null
		});
		expect(found('us-small-craft')!.source).toBe('for boats');
	});
});
