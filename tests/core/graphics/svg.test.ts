import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PALETTES, block, circle, escapeXml, polyline, svgOf, text, type Primitive } from '#core/graphics';

const BOX = { minX: 0, minY: 0, maxX: 100, maxY: 50 };
const svg = (...primitives: Primitive[]) => svgOf(primitives, BOX, PALETTES.light);

describe('a drawing as SVG', () => {
	test('is as large on paper as in the drawing, or at its scale', () => {
		expect(svg()).toContain('width="100mm" height="50mm" viewBox="0 0 100 50"');
		expect(svgOf([], BOX, PALETTES.light, { scale: 0.5 })).toContain('width="50mm" height="25mm" viewBox="0 0 100 50"');
	});

	test('escapes what users write', () => {
		const label = `<script>"F1" & 'F2'</script>`;
		const drawing = svg(text(0, 0, label, 5));
		expect(drawing).not.toContain('<script>');
		expect(drawing).toContain('&lt;script&gt;&quot;F1&quot; &amp; &#39;F2&#39;&lt;/script&gt;');
	});

	test('has no character that XML forbids, whatever the text', () => {
		fc.assert(
			fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (words) => {
				// Char of XML 1.0, section 2.2.
				expect(escapeXml(words)).toMatch(/^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u);
				expect(escapeXml(words)).not.toMatch(/[<>"']/);
			})
		);
	});

	test('keeps ordinary text as it is', () => {
		expect(escapeXml('W1 · 2/0 AWG − 16 mm² 🔋')).toBe('W1 · 2/0 AWG − 16 mm² 🔋');
	});

	test('rounds the corners of a polyline, but no further than its short runs allow', () => {
		const points = [
			{ x: 0, y: 0 },
			{ x: 20, y: 0 },
			{ x: 20, y: 4 }
		];
		expect(svg(polyline(points, { stroke: 'ink', round: 5 }))).toContain('d="M0 0L18 0Q20 0 20 2L20 4"');
		expect(svg(polyline(points, { stroke: 'ink' }))).toContain('d="M0 0L20 0L20 4"');
	});

	test('paints in order, each paint in the palette’s colour', () => {
		const drawing = svg(block(10, 10, 4, 4, { fill: 'metal' }), circle(5, 5, 2, { stroke: 'positive', width: 1 }));
		expect(drawing.indexOf('<rect x="8"')).toBeLessThan(drawing.indexOf('<circle'));
		expect(drawing).toContain(PALETTES.light.metal);
		expect(drawing).toContain(`stroke="${PALETTES.light.positive}"`);
	});
});
