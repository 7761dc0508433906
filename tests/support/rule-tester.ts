/**
 * Tests a rule on diagrams it must pass over and diagrams it must find fault with, and refuses lazy tests:
 * exact sentence, place and severity are compared, every message must be provoked, no case may be given twice,
 * and the rule must leave its study as it was.
 */
import { describe, expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { buildStudy, runRules, type Finding, type Rule, type Severity, type Subject } from '#core/rules';

export interface Expected {
	/** The whole message. */
	says: string;
	/** Subjects as "part:b", "conductor:W1", "stud:b.pos" or "diagram:", the first being where the mark is. */
	at: readonly string[];
	severity: Severity;
	/** Compared where given. */
	remedy?: string;
	source?: string;
	unverified?: boolean;
	assumptions?: readonly string[];
	caseId?: string | null;
}

export interface RuleCases {
	/** By description: "allows …". */
	valid: Record<string, Diagram>;
	/** By description: "finds …". */
	invalid: Record<string, { diagram: Diagram } & (Expected | { finds: readonly Expected[] })>;
}

const HOLES = /undefined|\bNaN\b|\[object|\$\{|\{\{|\bnull\b|Infinity|unlimited A\b/;

export function testRule(rule: Rule, { valid, invalid }: RuleCases): void {
	describe(rule.meta.id, () => {
		refuseLazyTests(rule, { valid, invalid });

		for (const [name, diagram] of Object.entries(valid)) {
			test(`allows ${name}`, () => {
				expect(findings(rule, diagram).map(({ message }) => message)).toEqual([]);
			});
		}

		for (const [name, { diagram, ...rest }] of Object.entries(invalid)) {
			test(`finds ${name}`, () => {
				const expected: readonly Expected[] = 'finds' in rest ? rest.finds : [rest];
				const found = findings(rule, diagram);
				expect(found.map(asExpected)).toEqual(expected.map(({ says, at, severity }) => ({ says, at, severity })));
				expected.forEach((wanted, index) => expect(found[index]).toMatchObject(more(wanted)));
			});
		}
	});
}

/** Findings of one rule, after the checks that hold for every finding. */
export function findings(rule: Rule, diagram: Diagram): readonly Finding[] {
	const before = JSON.stringify(diagram);
	const study = buildStudy(deepFreeze(structuredClone(diagram)));
	const found = runRules(study, [rule]);

	expect(runRules(study, [rule]), 'the rule gives the same answer when asked again').toEqual(found);
	expect(JSON.stringify(study.diagram), 'the diagram is left as it was').toBe(before);
	expect(JSON.parse(JSON.stringify(found)), 'findings are plain data').toEqual(found);
	for (const finding of found) {
		for (const sentence of [finding.message, finding.remedy, ...finding.assumptions]) {
			expect(sentence, 'no hole is left in a sentence').not.toMatch(HOLES);
			expect(sentence, 'a sentence begins with a capital or a figure and ends with a full stop').toMatch(/^[\p{Lu}\d"].*\.$/su);
		}
		for (const subject of finding.subjects) expectExists(subject, diagram);
		expect(finding.key.startsWith(`${rule.meta.id}:`)).toBe(true);
	}
	const said = found.map(({ message, subjects }) => JSON.stringify([message, subjects]));
	expect(new Set(said).size, 'nothing is reported twice').toBe(said.length);
	return found;
}

function refuseLazyTests(rule: Rule, { valid, invalid }: RuleCases): void {
	test('is described and tested in full', () => {
		const { id, title, why, source } = rule.meta;
		expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
		for (const text of [title, why, source.default]) expect(text.trim().length).toBeGreaterThan(10);

		expect(Object.keys(valid).length, 'at least one valid diagram').toBeGreaterThan(0);
		expect(Object.keys(invalid).length, 'at least one invalid diagram').toBeGreaterThan(0);

		const diagrams = [...Object.values(valid), ...Object.values(invalid).map(({ diagram }) => diagram)].map((d) => JSON.stringify(d));
		expect(new Set(diagrams).size, 'no diagram is given twice').toBe(diagrams.length);

		const provoked = new Set(Object.values(invalid).flatMap(({ diagram }) => [...rule.check(buildStudy(diagram))].map((r) => r.message)));
		expect([...provoked].sort(), 'every message is provoked by an invalid diagram').toEqual(Object.keys(rule.messages).sort());
	});
}

/** What a case asks for beyond sentence, place and severity. */
const more = (wanted: Expected): Partial<Finding> =>
	Object.fromEntries(Object.entries(wanted).filter(([name]) => !['says', 'at', 'severity', 'diagram'].includes(name)));

const asExpected = ({ message, subjects, severity }: Finding) => ({
	says: message,
	at: subjects.map(({ kind, id }) => `${kind}:${id}`),
	severity
});

function expectExists({ kind, id }: Subject, { parts, conductors }: Diagram): void {
	if (kind === 'conductor') expect(Object.keys(conductors)).toContain(id);
	if (kind === 'part') expect(Object.keys(parts)).toContain(id);
	if (kind === 'stud') expect(Object.keys(parts)).toContain(id.slice(0, id.indexOf('.')));
}

function deepFreeze<Value>(value: Value): Value {
	if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
		Object.freeze(value);
		Object.values(value).forEach(deepFreeze);
	}
	return value;
}
