import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isSvg, readSvg } from '../../src/files/svg-gate.ts';

const svg = (inner: string, attributes = 'viewBox="0 0 200 100"') => `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inner}</svg>`;
const why = (text: string): string => {
	const read = readSvg(text);
	return read.ok ? 'taken' : read.why;
};
const icon = `data:image/png;base64,${readFileSync('static/icons/192.png').toString('base64')}`;

describe('a drawing that is taken', () => {
	test.each([
		['with a prolog', `\uFEFF<?xml version="1.0"?>\n<!-- a -- b -->\n<!DOCTYPE svg PUBLIC "x" "y">\n${svg('<path d="M0 0L1 1"/>')}`],
		['with a prefix', '<s:svg xmlns:s="http://www.w3.org/2000/svg" viewBox="0 0 2 1"><s:rect width="1" height="1"/></s:svg>']
	])('%s is known as SVG', (_, text) => {
		expect(isSvg(text)).toBe(true);
		expect(why(text)).toBe('taken');
	});

	test('has its size from width and height, or else from its view box', () => {
		expect(readSvg(svg('', 'width="20mm" height="10mm" viewBox="0 0 5 5"'))).toEqual({ ok: true, size: { width: 20, height: 10 } });
		expect(readSvg(svg('', 'width="100%" height="100%" viewBox="0 0 6 5"'))).toEqual({ ok: true, size: { width: 6, height: 5 } });
		expect(why(svg('', ''))).toContain('how large');
	});

	test('may use its own parts, gradients, styles, and a picture that is in it', () => {
		const inner = `<style>.a{fill:#123}</style><defs><g id="d"><rect/></g><linearGradient id="g"/></defs>${'<use href="#d"/>'.repeat(50)}
			<rect fill="url(#g)"/><image href="${icon}"/><text>a &lt; b</text>`;
		expect(why(svg(inner))).toBe('taken');
	});
});

describe('what is no SVG', () => {
	test.each(['', 'hello', '<html><svg/></html>', 'x<svg/>', '{"a":1}', '<!-- <svg> '])('%j', (text) => {
		expect(isSvg(text)).toBe(false);
	});
});

describe('a drawing that is refused', () => {
	/** Ten times ten times … : 10^7 rectangles from a few lines. */
	const doubling = (reference: (id: string) => string) =>
		Array.from({ length: 7 }, (_, level) => `<g id="l${level + 1}">${reference(`l${level}`).repeat(10)}</g>`).join('');

	test.each([
		['script', svg('<script>x()</script>'), 'script'],
		['HTML in it', svg('<foreignObject><b/></foreignObject>'), 'foreignobject'],
		['a filter', svg('<filter id="f"><feMorphology radius="9999"/></filter>'), 'filter'],
		['movement', svg('<rect><animate/></rect>'), 'animate'],
		['entities', `<!DOCTYPE svg [<!ENTITY a "aaaa">]>${svg('&a;')}`, 'entities'],
		['parts that use each other without end', svg(`<rect id="l0"/>${doubling((id) => `<use href="#${id}"/>`)}`), 'too long'],
		['the same, behind a prefix', svg(`<rect id="l0"/>${doubling((id) => `<use xlink:href="#${id}"/>`)}`), 'too long'],
		['the same, by patterns', svg(`<rect id="l0"/>${doubling((id) => `<rect fill="url('#${id}')"/>`)}`), 'too long'],
		['the same, written with entities', svg(`<rect id="l0"/>${doubling((id) => `<use href="&#35;${id}"/>`)}`), 'too long'],
		['a name hidden in another value', svg(`<rect id="l0"/>${doubling((id) => `<use x=" href='#y'" href="#${id}"/>`)}`), 'too long'],
		['a ring', svg('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'), 'too long'],
		[
			'a chain that is too long to follow',
			svg(Array.from({ length: 5_000 }, (_, i) => `<g id="n${i}"><use href="#n${i + 1}"/></g>`).join('')),
			'too long'
		],
		['thousands of layers', svg('<rect opacity=".5"/>'.repeat(4_000)), 'too long'],
		['references in its style sheet', svg('<style>rect{fill:url(#a)}</style>'), 'style sheet'],
		['hidden ones', svg('<style><![CDATA[rect{fill:u\\72l(#a)}]]></style>'), 'style sheet'],
		['an import', svg('<style>@import "https://example.org/x.css";</style>'), 'style sheet'],
		['a picture from elsewhere', svg('<image href="https://example.org/x.png"/>'), 'elsewhere'],
		['a drawing within', svg('<image href="data:image/svg+xml,&lt;svg/&gt;"/>'), 'elsewhere'],
		['depth', svg('<g>'.repeat(500)), 'deep'],
		['too many elements', svg('<g/>'.repeat(100_001)), 'elements'],
		['a tag that is cut off', svg('<rect x="1'), 'cut short'],
		['an extreme shape', svg('', 'viewBox="0 0 1000000 1"'), 'how large']
	])('for %s', (_, text, reason) => {
		expect(why(text)).toContain(reason);
	});
});

test('whatever it is, it is read in time proportional to its length', () => {
	const openings = ['<a "', '<!--', '<![CDATA[', '<?', '<a b="', '<', '<!-- --', '<a b="c"', '&#', '<a\n'];
	for (const opening of openings) {
		const text = svg(opening.repeat(Math.floor(2_000_000 / opening.length)));
		const before = process.cpuUsage();
		readSvg(text);
		isSvg(text.slice(5));
		const { user, system } = process.cpuUsage(before);
		expect((user + system) / 1_000, opening).toBeLessThan(1_000);
	}
});
