/** The change sheet on paper: the drawing with the changes marked, then the tables. Loaded when it is asked for. */
import { changeMarks, withDrawnOver, type Scene } from '#core/drawing';
import { EMPTY_BOX, inflateBox, unionBoxes } from '#core/geometry';
import { boundsOf } from '#core/graphics';
import { SECTIONS, type Section } from '#core/reports';
import type { Comparison } from '#editor';
import { download, fileName } from '#files';
import { loadFonts, measureBy, packetPages, packetPdf, printPages, type PacketInput } from '#handoff';
import type { Workbench } from '../context.ts';
import { choices } from '../handoff/choices.svelte.ts';
import { revisionTexts as words } from '../review-texts.ts';

/** Signs on paper are this share of the drawing's width, and never smaller than on the screen. */
const SIGN_SHARE = 1 / 110;
const SIGN_MIN_MM = 6;

export async function saveChangeSheet({ editor, view }: Workbench, comparison: Comparison): Promise<string> {
	const input = inputOf(editor.diagram, view.canvas!.scene(), comparison);
	const { bytes, sheets } = await packetPdf(input, choices, await loadFonts());
	const name = fileName(`${editor.diagram.titleBlock.title} ${comparison.sheet.title.replace(',', '')}`.trim(), 'pdf');
	download(bytes, name, 'application/pdf');
	return words.saved(name, sheets);
}

export async function printChangeSheet({ editor, view }: Workbench, comparison: Comparison): Promise<string> {
	const input = inputOf(editor.diagram, view.canvas!.scene(), comparison);
	await printPages(packetPages(input, choices, measureBy(await loadFonts())), editor.diagram.titleBlock.title);
	return words.printed;
}

function inputOf(diagram: PacketInput['diagram'], scene: Scene, { marks, sheet }: Comparison): PacketInput {
	const drawing = SECTIONS.find(({ id }) => id === 'drawing')!;
	const sections: Section[] = [{ ...drawing, title: words.drawing, tables: [] }, sheet];
	return { diagram, scene: marked(scene, marks), sections, verdict: words.verdict, withoutPlaces: true };
}

function marked(scene: Scene, marks: Comparison['marks']): Scene {
	const { minX, maxX } = scene.bounds ?? { minX: 0, maxX: 0 };
	const sizeMm = Math.max(SIGN_MIN_MM, (maxX - minX) * SIGN_SHARE);
	const primitives = changeMarks(scene, marks, sizeMm);
	if (primitives.length === 0) return scene;
	return withDrawnOver(scene, primitives, unionBoxes(scene.bounds ?? EMPTY_BOX, inflateBox(boundsOf(primitives), sizeMm)));
}
