/**
 * `describe`, `test` and `expect` of Vitest for tests that are run thousands of times in one process: what the tests of
 * the core use, and no more. Expectations are Vitest's own.
 */
import {
	ASYMMETRIC_MATCHERS_OBJECT,
	chai,
	GLOBAL_EXPECT,
	JestAsymmetricMatchers,
	JestChaiExpect,
	JestExtend,
	setState
} from '@vitest/expect';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0, isExpectingAssertions: false, currentTestName: '' }, expect);
globalThis[GLOBAL_EXPECT] = expect;

/** @type {{ name: string, run: () => unknown }[]} */
let collected = [];
let suites = [];

/** Tests that a module registers while it is loaded. */
export async function collect(load) {
	collected = [];
	suites = [];
	await load();
	return collected;
}

export const test = (name, run) => void collected.push({ name: [...suites, name].join(' › '), run });
export function describe(name, body) {
	suites.push(name);
	body();
	suites.pop();
}
const each = (one) => (rows) => (name, run) =>
	rows.forEach((row, i) => one(`${name} [${i}]`, () => (Array.isArray(row) ? run(...row) : run(row))));
test.each = each(test);
describe.each = each(describe);
export const it = test;
export const vi = { setConfig: () => undefined };
