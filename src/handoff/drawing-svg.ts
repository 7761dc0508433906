import type { Scene } from '#core/drawing';
import { inflateBox, type Box } from '#core/geometry';
import { PALETTES, svgOf } from '#core/graphics';
import { scenePrimitives } from './scene.ts';

/** Air around the drawing, millimetres. */
const AIR_MM = 10;

/** Area of a picture of the drawing; null where there is nothing on it. */
export const pictureBox = ({ bounds }: Scene): Box | null => bounds && inflateBox(bounds, AIR_MM);

/** The scene the canvas shows, at full size, on white; null where there is nothing on it. */
export function drawingSvg(scene: Scene, title: string): string | null {
	const box = pictureBox(scene);
	return box && svgOf(scenePrimitives(scene), box, PALETTES.paper, { title });
}
