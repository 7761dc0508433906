import { boxHeight, boxWidth, type Box } from '#core/geometry';
import type { Palette } from './palette.ts';
import type { Primitive, Style } from './primitives.ts';
import { BASELINE_SHIFT } from './text.ts';

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** What XML 1.0 does not allow: control characters, halves of surrogate pairs, two noncharacters. */
const FORBIDDEN = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu;

/** For text and attribute values; characters that XML forbids are left out. */
export const escapeXml = (text: string): string => text.replace(FORBIDDEN, '').replace(/[&<>"']/g, (character) => ESCAPES[character]!);

/** At most a thousandth of a millimetre, without trailing zeros. */
const number = (value: number): string => String(Math.round(value * 1000) / 1000);

type Attributes = Readonly<Record<string, string | number | undefined>>;

const element = (name: string, attributes: Attributes, content?: string): string => {
	const list = Object.entries(attributes)
		.filter(([, value]) => value !== undefined)
		.map(([key, value]) => ` ${key}="${typeof value === 'number' ? number(value) : escapeXml(value!)}"`)
		.join('');
	return content === undefined ? `<${name}${list}/>` : `<${name}${list}>${content}</${name}>`;
};

const styleAttributes = (style: Style, palette: Palette): Attributes => ({
	fill: style.fill ? palette[style.fill] : 'none',
	stroke: style.stroke && palette[style.stroke],
	'stroke-width': style.stroke && (style.width ?? 0.35),
	'stroke-dasharray': style.dash?.map(number).join(' '),
	'stroke-linecap': style.cap,
	opacity: style.opacity
});

/** A polyline's corners rounded to at most `round`, as SVG path data. */
export function pathData({ points, closed, round = 0 }: Extract<Primitive, { kind: 'polyline' }>): string {
	const [first, ...rest] = points;
	if (!first) return '';
	let data = `M${number(first.x)} ${number(first.y)}`;
	rest.forEach((point, index) => {
		const before = points[index]!;
		const after = points[index + 2];
		const inLength = Math.hypot(point.x - before.x, point.y - before.y);
		const outLength = after ? Math.hypot(after.x - point.x, after.y - point.y) : 0;
		const radius = Math.min(round, inLength / 2, outLength / 2);
		if (!after || radius <= 0) {
			data += `L${number(point.x)} ${number(point.y)}`;
			return;
		}
		const toward = (from: typeof point, length: number) => ({
			x: point.x + ((from.x - point.x) * radius) / length,
			y: point.y + ((from.y - point.y) * radius) / length
		});
		const enter = toward(before, inLength);
		const leave = toward(after, outLength);
		data += `L${number(enter.x)} ${number(enter.y)}Q${number(point.x)} ${number(point.y)} ${number(leave.x)} ${number(leave.y)}`;
	});
	return closed ? `${data}Z` : data;
}

function svgElement(primitive: Primitive, palette: Palette): string {
	switch (primitive.kind) {
		case 'rect': {
			const { x, y, w, h, r } = primitive;
			return element('rect', { x, y, width: w, height: h, rx: r, ...styleAttributes(primitive, palette) });
		}
		case 'circle': {
			const { x, y, r } = primitive;
			return element('circle', { cx: x, cy: y, r, ...styleAttributes(primitive, palette) });
		}
		case 'polyline':
			return element('path', { d: pathData(primitive), 'stroke-linejoin': 'round', ...styleAttributes(primitive, palette) });
		case 'text': {
			const { x, y, size, text, bold, halo, align = 'start', fill = 'ink', opacity } = primitive;
			const attributes: Attributes = {
				x,
				y: y + size * BASELINE_SHIFT,
				'font-size': size,
				'font-weight': bold ? 'bold' : undefined,
				'text-anchor': align === 'start' ? undefined : align,
				fill: palette[fill],
				opacity,
				// Painted first, so that the halo lies behind the glyphs.
				stroke: halo && palette[halo],
				'stroke-width': halo && size * 0.3,
				'stroke-linejoin': halo && 'round',
				'paint-order': halo && 'stroke'
			};
			return element('text', attributes, escapeXml(text));
		}
	}
}

export interface SvgOptions {
	/** Millimetres on paper for one millimetre of the drawing; 1 prints at full size. */
	readonly scale?: number;
	/** Read out by screen readers. */
	readonly title?: string;
}

/** The elements alone, to be put into a document of one's own. */
export const svgElements = (primitives: readonly Primitive[], palette: Palette): string =>
	primitives.map((primitive) => svgElement(primitive, palette)).join('\n');

/** A whole SVG document of what lies in the box, on the palette's paper. */
export function svgOf(primitives: readonly Primitive[], box: Box, palette: Palette, { scale = 1, title }: SvgOptions = {}): string {
	const width = boxWidth(box);
	const height = boxHeight(box);
	const parts = [
		...(title === undefined ? [] : [element('title', {}, escapeXml(title))]),
		element('rect', { x: box.minX, y: box.minY, width, height, fill: palette.paper }),
		...primitives.map((primitive) => svgElement(primitive, palette))
	];
	const attributes = {
		xmlns: 'http://www.w3.org/2000/svg',
		width: `${number(width * scale)}mm`,
		height: `${number(height * scale)}mm`,
		viewBox: [box.minX, box.minY, width, height].map(number).join(' '),
		'font-family': 'system-ui, sans-serif'
	};
	return element('svg', attributes, `\n${parts.join('\n')}\n`);
}
