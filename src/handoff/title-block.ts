/** Title block with the data fields of ISO 7200, 180 mm wide where the sheet has room for that. */
import type { Diagram } from '#core/diagram';
import type { Box } from '#core/geometry';
import { boxRect, line, rect, text, type Primitive, wrap } from '#core/graphics';
import type { Measure } from './page.ts';

export const TITLE_BLOCK_MM = { width: 180, height: 34 };

type Fields = Diagram['titleBlock'];

export interface SheetNumber {
	readonly sheet: number;
	readonly sheets: number;
}

export const sheetText = ({ sheet, sheets }: SheetNumber): string => `sheet ${sheet} of ${sheets}`;

interface Field {
	readonly caption: string;
	readonly value: string;
	/** Share of the block's width. */
	readonly share: number;
	readonly strong?: boolean;
}

const rows = (block: Fields, documentType: string, number: SheetNumber): readonly (readonly Field[])[] => [
	[
		{ caption: 'Legal owner', value: block.legalOwner, share: 0.32 },
		{ caption: 'Created by', value: block.creator, share: 0.24 },
		{ caption: 'Approved by', value: block.approvalPerson, share: 0.24 },
		{ caption: 'Date of issue', value: block.dateOfIssue, share: 0.2 }
	],
	[
		{
			caption: 'Title, supplementary title',
			value: [block.title, block.supplementaryTitle].filter((t) => t.trim() !== '').join('\n'),
			share: 0.56,
			strong: true
		},
		{ caption: 'Craft', value: block.craft, share: 0.44 }
	],
	[
		{ caption: 'Document type', value: documentType || block.documentType, share: 0.32 },
		{ caption: 'Identification number', value: block.identificationNumber, share: 0.32 },
		{ caption: 'Revision', value: block.revisionIndex, share: 0.14 },
		{ caption: 'Sheet', value: `${number.sheet} of ${number.sheets}`, share: 0.22 }
	]
];

const HEIGHTS = [0.28, 0.44, 0.28];
const CAPTION_MM = 1.8;
const VALUE_MM = 2.7;
const STRONG_MM = 3.6;

export function drawTitleBlock(box: Box, block: Fields, documentType: string, number: SheetNumber, measure: Measure): Primitive[] {
	const width = box.maxX - box.minX;
	const height = box.maxY - box.minY;
	const primitives: Primitive[] = [rect(box.minX, box.minY, width, height, { fill: 'paper', stroke: 'ink', width: 0.7 })];
	let top = box.minY;
	rows(block, documentType, number).forEach((fields, index) => {
		const rowHeight = height * HEIGHTS[index]!;
		if (index > 0) primitives.push(line(box.minX, top, box.maxX, top, { stroke: 'ink', width: 0.25 }));
		let left = box.minX;
		for (const { caption, value, share, strong } of fields) {
			const fieldWidth = width * share;
			if (left > box.minX) primitives.push(line(left, top, left, top + rowHeight, { stroke: 'ink', width: 0.25 }));
			primitives.push(text(left + 1.5, top + 2.2, caption, CAPTION_MM, { align: 'start', fill: 'muted' }));
			primitives.push(
				...fitted(
					value,
					{ minX: left + 1.5, maxX: left + fieldWidth - 1.5, minY: top + 3.6, maxY: top + rowHeight - 0.8 },
					strong ?? false,
					measure
				)
			);
			left += fieldWidth;
		}
		top += rowHeight;
	});
	primitives.push(boxRect(box, { stroke: 'ink', width: 0.7 }));
	return primitives;
}

const LEADING = 1.25;
const SMALLEST_MM = 1.6;

/** The value as large as its field allows; the first line of a strong one is bold. */
function fitted(value: string, box: Box, strong: boolean, measure: Measure): Primitive[] {
	const room = { width: box.maxX - box.minX, height: box.maxY - box.minY };
	for (let size = strong ? STRONG_MM : VALUE_MM; ; size *= 0.92) {
		const lines = value
			.split('\n')
			.flatMap((part, index) =>
				wrap(part, room.width, (t) => measure(t, size, strong && index === 0)).map((line) => ({ line, bold: strong && index === 0 }))
			);
		if (lines.length * size * LEADING > room.height && size > SMALLEST_MM) continue;
		return lines
			.slice(0, Math.max(1, Math.floor(room.height / (size * LEADING))))
			.map(({ line, bold }, index) => text(box.minX, box.minY + (index + 0.5) * size * LEADING, line, size, { align: 'start', bold }));
	}
}
