import type { ItemKey } from '#core/diagram';
import { unionBoxes, type Box } from '#core/geometry';
import { boundsOf, type Primitive } from '#core/graphics';
import type { DrawnItem } from './types.ts';

/** What is a rectangle on the drawing: nothing lands on it, and conductors do not run around it. */
export const drawnFrame = (key: ItemKey, frame: Box, primitives: readonly Primitive[], labels: readonly Primitive[]): DrawnItem => ({
	key,
	box: unionBoxes(frame, boundsOf([...primitives, ...labels])),
	primitives,
	labels,
	body: null,
	route: null,
	widthMm: 0,
	terminals: [],
	frame
});
