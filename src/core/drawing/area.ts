/** An area: under everything, tinted by what is asked of the things in it, with its name in the corner. */
import { areaBox, itemKey, type Area } from '#core/diagram';
import { boxRect, text, type Paint, type Primitive } from '#core/graphics';
import { celsiusText } from '#core/units';
import { drawnFrame } from './frame.ts';
import type { DrawnItem } from './types.ts';

const LABEL_MM = 22;
const DETAIL_MM = 15;
const INSET_MM = 12;
const ROUND_MM = 8;
const TINT = 0.07;
const EDGE = 0.7;

const WORDS: Readonly<Record<Area['spaces'][number], string>> = {
	sleeping: 'people sleep here',
	engine: 'engine space',
	fuel: 'petrol or gas may gather',
	wet: 'spray or rain',
	flooded: 'water may stand'
};

/** What is most dangerous gives the tint; the words say it too. */
const PAINTS: readonly (readonly [Area['spaces'][number], Paint])[] = [
	['fuel', 'error'],
	['engine', 'warning'],
	['flooded', 'negative'],
	['wet', 'negative'],
	['sleeping', 'note']
];

/** "engine space, 60 °C"; empty for an ordinary place. */
export const areaWords = ({ spaces, ambientC }: Pick<Area, 'spaces' | 'ambientC'>): string =>
	[...spaces.map((space) => WORDS[space]), ...(ambientC === null ? [] : [celsiusText(ambientC)])].join(', ');

export function drawArea(id: string, area: Area): DrawnItem {
	const frame = areaBox(area);
	const paint = PAINTS.find(([space]) => area.spaces.includes(space))?.[1] ?? 'accent';
	const primitives: Primitive[] = [
		boxRect(frame, { fill: paint, opacity: TINT, r: ROUND_MM }),
		boxRect(frame, { stroke: paint, width: 1.6, dash: [12, 6], opacity: EDGE, r: ROUND_MM })
	];
	const words = areaWords(area);
	const labels: Primitive[] = [
		...(area.label.trim() === ''
			? []
			: [
					text(frame.minX + INSET_MM, frame.minY + INSET_MM + LABEL_MM / 2, area.label.trim(), LABEL_MM, {
						align: 'start',
						bold: true,
						fill: 'muted',
						halo: 'paper'
					})
				]),
		...(words === ''
			? []
			: [
					text(frame.minX + INSET_MM, frame.minY + INSET_MM + LABEL_MM * 1.35 + DETAIL_MM / 2, words, DETAIL_MM, {
						align: 'start',
						fill: 'muted',
						halo: 'paper'
					})
				])
	];
	return drawnFrame(itemKey('area', id), frame, primitives, labels);
}
