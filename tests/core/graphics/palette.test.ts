import { describe, expect, test } from 'vitest';
import { PALETTES, type Paint } from '#core/graphics';

/** Relative luminance and contrast ratio: WCAG 2.2, definitions of the terms. */
function luminance(colour: string): number {
	const [r, g, b] = [1, 3, 5].map((at) => {
		const c = parseInt(colour.slice(at, at + 2), 16) / 255;
		return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
	const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
	return (light! + 0.05) / (dark! + 0.05);
}

test('the ratio is as published: 21 for black on white', () => {
	expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
});

describe.each(Object.entries(PALETTES))('%s', (_, palette) => {
	// WCAG 2.2, 1.4.3: 4.5 for text.
	test.each<[Paint, Paint]>([
		['ink', 'paper'],
		['muted', 'paper'],
		['ink', 'case'],
		['muted', 'case'],
		['ink', 'case-raised'],
		['muted', 'case-raised'],
		['ink', 'fuse'],
		['error', 'paper'],
		['warning', 'paper'],
		['note', 'paper']
	])('%s can be read on %s', (text, ground) => {
		expect(contrast(palette[text], palette[ground])).toBeGreaterThanOrEqual(4.5);
	});

	// WCAG 2.2, 1.4.11: 3 for graphics that carry meaning.
	test.each<[Paint, Paint]>([
		['case-edge', 'paper'],
		['positive', 'case'],
		['negative', 'case'],
		['chassis', 'case'],
		['selection', 'paper']
	])('%s stands out from %s', (line, ground) => {
		expect(contrast(palette[line], palette[ground])).toBeGreaterThanOrEqual(3);
	});

	test('every colour is written in full', () => {
		for (const colour of Object.values(palette)) expect(colour).toMatch(/^#[0-9a-f]{6}$/);
	});
});
