import { readFileSync } from 'node:fs';
import type { Diagram } from '#core/diagram';
import { composeScene, type Scene } from '#core/drawing';
import { reportInput, SECTION_IDS, sectionsOf, verdictOf, type SectionId } from '#core/reports';
import { FONT_FILES, type Fonts, type PacketInput } from '#handoff';

const bytes = (file: string): Uint8Array => new Uint8Array(readFileSync(`static/${file}`));

export const fonts: Fonts = { regular: bytes(FONT_FILES.regular), bold: bytes(FONT_FILES.bold) };

/** All that a packet is made from, as the window puts it together. */
export function packetOf(
	diagram: Diagram,
	sections: readonly SectionId[] = SECTION_IDS,
	scene: Scene = composeScene(diagram)
): PacketInput {
	const input = reportInput(diagram);
	return { diagram, scene, sections: sectionsOf(input, sections), verdict: verdictOf(input) };
}
