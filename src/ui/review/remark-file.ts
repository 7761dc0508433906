/** Remarks on their way: out as a small file, in through the gate that lets nothing else pass. */
import { importRemarks, parseRemarks, remarksFile, type Remark } from '#core/diagram';
import { download, fileName } from '#files';
import type { Workbench } from '../context.ts';
import { reviewTexts as words } from '../review-texts.ts';

/** A visitor's own; the author's are all of them. */
export function saveRemarks({ editor, keeping }: Workbench): void {
	const { remarks, titleBlock } = editor.diagram;
	const { visit } = keeping;
	const sent = Object.entries(remarks).filter(([id]) => visit?.isOwn(id) ?? true);
	if (sent.length === 0) return editor.refuse(words.nothingToSave);
	const about = { title: titleBlock.title, revisionIndex: titleBlock.revisionIndex };
	const name = fileName(`${titleBlock.title} remarks`.trim(), 'json');
	download(remarksFile(about, Object.fromEntries<Remark>(sent)), name, 'application/json');
	visit?.saved(editor.diagram);
	editor.announce(words.saved(sent.length, name));
}

/** Answers with what is wrong with the file, or null. */
export async function takeInRemarks({ editor }: Workbench, file: File): Promise<string | null> {
	let text: string;
	try {
		text = await file.text();
	} catch (error) {
		return words.unreadable(error instanceof Error ? error.message : String(error));
	}
	const read = parseRemarks(text);
	if (!read.ok) return `${read.problem.what} ${read.problem.why} ${read.problem.remedy}`;
	const refused = editor.run(importRemarks({ remarks: read.file.remarks }), { quiet: true });
	if (refused !== null) return refused;
	editor.announce(words.taken(Object.keys(read.file.remarks).length, read.file.about.title, editor.diagram.titleBlock.title));
	return null;
}
