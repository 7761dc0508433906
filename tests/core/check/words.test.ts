import { describe, expect, test } from 'vitest';
import { countFindings, countText, subjectText } from '#core/check';
import type { Finding, Severity } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

const diagram = circuit({ b: ['battery'], d: ['fused-bus', {}, { label: ' ' }], u: ['fuel-cell'] }, [['b.pos', 'd.L', { label: '' }]]);

test.each([
	[{ kind: 'part', id: 'b' }, 'B'],
	[{ kind: 'part', id: 'd' }, '“d”'],
	[{ kind: 'conductor', id: 'W1' }, '“W1”'],
	[{ kind: 'stud', id: 'b.pos' }, 'B +'],
	[{ kind: 'stud', id: 'd.L' }, '“d” end stud L'],
	[{ kind: 'stud', id: 'u.plus' }, 'U plus'],
	[{ kind: 'stud', id: 'gone.pos' }, '“gone” pos'],
	[{ kind: 'diagram', id: '' }, 'the whole diagram']
] as const)('%o is called %s', (subject, words) => {
	expect(subjectText(diagram, subject)).toBe(words);
});

describe('a count of findings', () => {
	const found = (...severities: Severity[]) => severities.map((severity) => ({ severity }) as Finding);

	test('names each severity once, gravest first', () => {
		expect(countText(found('note', 'error', 'fatal', 'error'))).toBe('1 fatal finding, 2 errors, 1 note');
		expect(countText(found('warning'))).toBe('1 warning');
		expect(countText([])).toBe('no findings');
	});

	test('is given as numbers too', () => {
		expect(countFindings(found('note', 'error', 'error'))).toEqual({ fatal: 0, error: 2, warning: 0, note: 1 });
	});
});
