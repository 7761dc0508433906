import { expect, test } from 'vitest';
import { buildStudy, holdBack, type Finding } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

/** Two systems that share nothing: battery and load of each, and a lamp that hangs on nothing. */
const study = buildStudy(
	circuit({ b: ['battery'], l: ['load'], c: ['battery'], m: ['load'], lamp: ['load'] }, [
		['b.pos', 'l.pos'],
		['l.neg', 'b.neg'],
		['c.pos', 'm.pos'],
		['m.neg', 'c.neg']
	])
);

const finding = (rule: string, severity: Finding['severity'], subjects: readonly string[], caseId: string | null = null): Finding =>
	({
		rule,
		severity,
		caseId,
		subjects: subjects.map((text) => ({ kind: text.slice(0, text.indexOf(':')), id: text.slice(text.indexOf(':') + 1) }))
	}) as unknown as Finding;

const SHORT = finding('wire-across-poles', 'fatal', ['conductor:W1']);
const kept = (...findings: Finding[]) => holdBack(study, findings);

test('without a fatal fault of topology nothing is held back', () => {
	const findings = [finding('wire-across-poles', 'error', ['part:b']), finding('undersized-conductor', 'fatal', ['conductor:W1'])];
	const currents = finding('undersized-conductor', 'error', ['conductor:W2']);
	expect(kept(...findings, currents)).toEqual({ findings: [...findings, currents], heldBack: 0 });
});

test('behind one, what rests on currents of the same system waits: protection, conductors, and whatever names a case', () => {
	const waiting = [
		finding('unprotected-conductor', 'error', ['conductor:W2']),
		finding('undersized-conductor', 'error', ['part:l']),
		finding('stack-order', 'warning', ['stud:b.pos'], 'on')
	];
	expect(kept(SHORT, ...waiting)).toEqual({ findings: [SHORT], heldBack: 3 });
});

test('the rest stays: what needs no current, what is fatal itself, other systems, what spans both, what is nowhere', () => {
	const staying = [
		finding('missing-label', 'warning', ['conductor:W2']),
		finding('undersized-conductor', 'fatal', ['conductor:W2']),
		finding('undersized-conductor', 'error', ['conductor:W4']),
		finding('undersized-conductor', 'error', ['part:m']),
		finding('stack-order', 'warning', ['stud:c.pos'], 'on'),
		finding('undersized-conductor', 'error', ['conductor:W2', 'conductor:W3']),
		finding('undersized-conductor', 'error', ['part:lamp']),
		finding('undersized-conductor', 'error', ['part:nobody']),
		finding('undersized-conductor', 'error', ['conductor:W9']),
		finding('undersized-conductor', 'error', ['stud:nobody.pos']),
		finding('undersized-conductor', 'error', ['diagram:'])
	];
	expect(kept(SHORT, ...staying)).toEqual({ findings: [SHORT, ...staying], heldBack: 0 });
});

test('a fatal fault of both systems holds both back', () => {
	const both = finding('wire-across-poles', 'fatal', ['part:b', 'part:c']);
	expect(kept(both, finding('undersized-conductor', 'error', ['conductor:W2', 'conductor:W3'])).heldBack).toBe(1);
});
