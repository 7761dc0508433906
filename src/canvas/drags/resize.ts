/** Pulling an edge or a corner of an area, or the right edge of a note. */
import { editNote, parseItemKey, placeArea, type ItemKey } from '#core/diagram';
import { boxHeight, boxWidth, snap, type Box } from '#core/geometry';
import { sizeText, tenthsText } from '#core/units';
import type { Grip } from '../frames.ts';
import { pitchOf } from '../snapping.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { dragCommand } from './command.ts';

const LEAST_MM = 20;
const LEAST_NOTE_MM = 40;

export function dragGrip(desk: Desk, key: ItemKey, grip: Grip): Drag {
	const { kind, id } = parseItemKey(key);
	const frame = desk.index.scene.items.get(key)!.frame!;
	return dragCommand(desk, (pointer, press) => {
		const pitch = press.keys.alt ? 0 : pitchOf(desk);
		const box = pulled(frame, grip, { x: snap(pointer.x, pitch), y: snap(pointer.y, pitch) });
		const [widthMm, heightMm] = [boxWidth(box), boxHeight(box)];
		return kind === 'area'
			? {
					command: placeArea({ area: id, at: { x: box.minX, y: box.minY }, widthMm, heightMm }),
					says: sizeText(Math.round(widthMm), Math.round(heightMm))
				}
			: {
					command: editNote({ note: id, set: { widthMm: Math.min(2000, Math.max(LEAST_NOTE_MM, widthMm)) } }),
					says: tenthsText(Math.round(widthMm))
				};
	});
}

/** No smaller than can be seen; the opposite edge stays. */
function pulled({ minX, minY, maxX, maxY }: Box, { x, y }: Grip, to: { readonly x: number; readonly y: number }): Box {
	return {
		minX: x < 0 ? Math.min(to.x, maxX - LEAST_MM) : minX,
		minY: y < 0 ? Math.min(to.y, maxY - LEAST_MM) : minY,
		maxX: x > 0 ? Math.max(to.x, minX + LEAST_MM) : maxX,
		maxY: y > 0 ? Math.max(to.y, minY + LEAST_MM) : maxY
	};
}
