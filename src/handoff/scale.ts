import type { Primitive } from '#core/graphics';

/** From the drawing to paper: everything times `scale`, widths of lines and sizes of text included, then moved. */
export function scaled(primitive: Primitive, scale: number, dx: number, dy: number): Primitive {
	const x = (value: number): number => value * scale + dx;
	const y = (value: number): number => value * scale + dy;
	const times = (value: number | undefined): number | undefined => (value === undefined ? undefined : value * scale);
	if (primitive.kind === 'text') return { ...primitive, x: x(primitive.x), y: y(primitive.y), size: primitive.size * scale };
	const style = { width: (primitive.width ?? DEFAULT_WIDTH_MM) * scale, dash: primitive.dash?.map((length) => length * scale) };
	switch (primitive.kind) {
		case 'rect':
			return {
				...primitive,
				...style,
				x: x(primitive.x),
				y: y(primitive.y),
				w: primitive.w * scale,
				h: primitive.h * scale,
				r: times(primitive.r)
			};
		case 'circle':
			return { ...primitive, ...style, x: x(primitive.x), y: y(primitive.y), r: primitive.r * scale };
		case 'polyline':
			return {
				...primitive,
				...style,
				points: primitive.points.map((point) => ({ x: x(point.x), y: y(point.y) })),
				round: times(primitive.round)
			};
	}
}

/** As the painters take it where a primitive gives none. */
const DEFAULT_WIDTH_MM = 0.35;
