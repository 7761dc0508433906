/** The sentences of what arranges the drawing: lines, grid, areas, notes, pictures. */
import type { AlignTo, DistributeAlong } from '#core/geometry';
import { catalogue } from '../language/catalogue.ts';

export const drawingTexts = catalogue('drawing', {
	line: 'In line',
	align: {
		left: 'Left edges in line',
		centre: 'Centres one above the other',
		right: 'Right edges in line',
		top: 'Top edges in line',
		middle: 'Centres side by side',
		bottom: 'Bottom edges in line'
	} satisfies Record<AlignTo, string>,
	distribute: {
		across: 'Equal gaps from left to right',
		down: 'Equal gaps from top to bottom'
	} satisfies Record<DistributeAlong, string>
});
