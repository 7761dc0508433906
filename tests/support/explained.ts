/** What must hold of every explanation: its formula, worked out by mathjs from the inputs it shows, gives the figure. */
import { evaluate } from 'mathjs';
import { expect } from 'vitest';
import { explain, type Explanation } from '#core/explain';
import type { Study } from '#core/rules';

const recomputed = ({ expression, inputs }: Explanation): number =>
	evaluate(expression, Object.fromEntries(inputs.map(({ symbol, value }) => [symbol, value]))) as number;

export const near = (actual: number, wanted: number, what: string) => {
	if (wanted === Infinity) expect(actual, what).toBe(Infinity);
	else expect(Math.abs(actual - wanted), `${what}: ${actual} against ${wanted}`).toBeLessThan(1e-6 * Math.max(1, Math.abs(wanted)));
};

/** Everything that must hold of an explanation. */
export function holds(found: Explanation): void {
	near(recomputed(found), found.value!, `${found.name}: ${found.formula}`);
	expect(new Set(found.inputs.map(({ symbol }) => symbol)).size).toBe(found.inputs.length);
	for (const { symbol, name, source, text } of found.inputs) {
		expect(found.expression, 'an input that is not in the formula').toMatch(new RegExp(`\\b${symbol}\\b`));
		for (const words of [name, source, text]) expect(words).not.toMatch(/^$|undefined|NaN|\[object/);
	}
	for (const words of [found.name, found.words, found.formula, found.substituted, found.source]) {
		expect(words).not.toMatch(/^$|undefined|NaN|\[object/);
	}
	expect(structuredClone(found)).toEqual(found);
}

/** And the same of all it opens to. */
export function holdsThroughout(study: Study, found: Explanation, depth = 3): void {
	holds(found);
	for (const { figure, name, value } of found.inputs) {
		if (!figure) continue;
		const inner = explain(study, figure);
		expect(inner, `${found.name}: ${name} leads nowhere`).not.toBeNull();
		near(inner!.value!, value, `${found.name}: ${name}`);
		if (depth > 0) holdsThroughout(study, inner!, depth - 1);
	}
	for (const { figure, name } of found.related) expect(explain(study, figure)?.name, `${found.name}: ${name}`).toBe(name);
}
