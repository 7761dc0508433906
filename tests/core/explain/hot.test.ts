/** Copper as hot as its current makes it: worked by hand from the standards' numbers. */
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { explain } from '#core/explain';
import { circuit } from '../../support/circuit.ts';
import { holds } from '../../support/explained.ts';

const feed = (draw: number, gauge: string) =>
	circuit({ b: ['battery'], l: ['load', { draw }] }, [
		['b.pos', 'l.pos', { gauge, lengthM: 5 }],
		['l.neg', 'b.neg', { gauge: '2/0', lengthM: 5 }]
	]);

test('at its full amperage a 105 °C conductor loses a third more than at 20 °C', () => {
	// 33 CFR 183.425 Table 5: 10 AWG 60 A at 105 °C. ASTM B258: 5.261 mm². IACS: 0.017241 Ω·mm²/m, 0.00393/K. Joints 0.2 mΩ each.
	const diagram = feed(60, '10');
	const coldOhm = (0.017241 * 5) / 5.261;
	const hotOhm = coldOhm * (1 + 0.00393 * 85) + 0.0004;
	const found = explain(diagram, { of: 'conductor', id: 'W1', figure: 'hot-resistance' })!;
	holds(found);
	expect(found.value! / hotOhm).toBeCloseTo(1, 3);
	expect(checkDiagram(diagram).conductors['W1']!.hotDropV).toBeCloseTo(60 * hotOhm, 2);
});

test('a metric size follows IEC 60228', () => {
	// Class 5, 10 mm²: 1.91 Ω/km at 20 °C. Unloaded it is as warm as what is around it, 30 °C.
	const found = explain(feed(0.001, '10 mm²'), { of: 'conductor', id: 'W1', figure: 'hot-resistance' })!;
	holds(found);
	expect(found.value).toBeCloseTo(0.00191 * 5 * (1 + 0.00393 * 10) + 0.0004, 5);
});
