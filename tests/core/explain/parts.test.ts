/** Figures of parts, of a day and of cases: each opens, and what it opens to gives it (mathjs). */
import { describe, expect, test } from 'vitest';
import { CASE_FIGURES, caseCells, ENERGY_FIGURES, explain, partFigures, voltsLost } from '#core/explain';
import { energyBalance } from '#core/energy';
import { buildStudy } from '#core/rules';
import { example } from '../../support/examples/figures.ts';
import { holdsThroughout } from '../../support/explained.ts';

const names = ['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]);

describe.each(names)('%s', (name) => {
	const study = buildStudy(example(name));

	test('what the details of a part show is what it opens to', () => {
		let shown = 0;
		for (const { id } of study.parts)
			for (const { rows, says } of partFigures(study, id)) {
				for (const sentence of says) expect(sentence).toMatch(/\.$/);
				for (const { name, text, figure } of rows) {
					const found = explain(study, figure)!;
					expect(found.text, name).toBe(text);
					holdsThroughout(study, found, 1);
					shown++;
				}
			}
		expect(shown).toBeGreaterThan(20);
	});

	test('every rung of every ladder, its share and the total', () => {
		for (const { part, link, followsSource } of study.network.loads) {
			if (followsSource !== null) continue;
			for (const { id: caseId } of study.cases) {
				const ladder = voltsLost(study, part, link, caseId);
				if (!ladder.ok) continue;
				for (const rung of ladder.rungs.keys())
					for (const figure of ['volts', 'share'] as const) {
						const found = explain(study, { of: 'rung', load: part, caseId, rung, figure })!;
						expect(found.value).toBe(figure === 'volts' ? ladder.rungs[rung]!.volts : ladder.rungs[rung]!.sharePercent);
						holdsThroughout(study, found, 0);
					}
				expect(explain(study, { of: 'ladder', load: part, caseId, figure: 'total' })!.value).toBe(ladder.totalV);
				holdsThroughout(study, explain(study, { of: 'ladder', load: part, caseId, figure: 'percent' })!, 1);
			}
		}
	});

	test('the day: sums, rows, days', () => {
		const balance = energyBalance(study.diagram, study.network);
		for (const unit of ['Wh', 'Ah'] as const) {
			for (const figure of ENERGY_FIGURES) holdsThroughout(study, explain(study, { of: 'energy', figure, unit })!, 2);
			for (const { part, wh, ah } of balance.loads) {
				const found = explain(study, { of: 'energy-load', part, unit })!;
				expect(found.value).toBeCloseTo(unit === 'Wh' ? wh : ah, 9);
				holdsThroughout(study, found, 0);
			}
			for (const { part, wh, ah } of balance.sources) {
				const found = explain(study, { of: 'energy-source', part, unit })!;
				expect(found.value).toBeCloseTo(unit === 'Wh' ? wh : ah, 9);
				holdsThroughout(study, found, 0);
			}
		}
	});

	test('what each case comes to', () => {
		const cells = caseCells(study);
		expect(Object.keys(cells)).toEqual(study.cases.map(({ id }) => id));
		for (const [id, byFigure] of Object.entries(cells))
			for (const figure of CASE_FIGURES) {
				if (!byFigure?.[figure]) continue;
				const found = explain(study, { of: 'case', id, figure })!;
				expect(found.text).toBe(byFigure[figure].text);
				holdsThroughout(study, found, 2);
			}
	});

	test('currents of batteries and sources in every case', () => {
		for (const { id: caseId, point } of study.cases) {
			if (point.status !== 'solved') continue;
			for (const { part, link } of [...study.network.batteries, ...study.network.sources])
				for (const figure of ['current', 'volts'] as const)
					holdsThroughout(study, explain(study, { of: 'supply', part, link, caseId, figure })!, 1);
		}
	});

	test('thread left on every stud with something on it', () => {
		for (const { key, threadLeftMm } of study.stacks) {
			const found = explain(study, { of: 'stud', key, figure: 'thread-left' });
			expect(found?.value ?? null).toBe(threadLeftMm);
			if (found) holdsThroughout(study, found, 0);
		}
	});
});
