/** The place of a picture below the drawing. The picture itself is painted by the canvas, and left out of sheets. */
import { itemKey, type Underlay } from '#core/diagram';
import type { Box } from '#core/geometry';
import { drawnFrame } from './frame.ts';
import type { DrawnItem } from './types.ts';

export const underlayBox = ({ at, widthPx, heightPx, mmPerPx }: Pick<Underlay, 'at' | 'widthPx' | 'heightPx' | 'mmPerPx'>): Box => ({
	minX: at.x,
	minY: at.y,
	maxX: at.x + widthPx * mmPerPx,
	maxY: at.y + heightPx * mmPerPx
});

export const drawUnderlay = (id: string, underlay: Underlay): DrawnItem =>
	drawnFrame(itemKey('underlay', id), underlayBox(underlay), [], []);
