/**
 * A visitor's remarks, kept in this browser beside the link they are about: loading the page again, or opening the link
 * another day, brings them back. They come in through the gate of a file of remarks.
 */
import { importRemarks, parseRemarks, remarksFile, run, start, type Diagram, type Remark } from '#core/diagram';
import { checksum } from '#keeping';

const PREFIX = 'wireworthy-remarks-';
/** Links whose remarks are kept; those longest untouched go first. */
const MOST = 40;

export type Remarks = Readonly<Record<string, Remark>>;

export interface KeptRemarks {
	readonly remarks: Remarks;
	/** True when the visitor has saved them in a file. */
	readonly inFile: boolean;
}

export const visitKey = (fragment: string): string => `${PREFIX}${fragment.length}-${checksum(fragment).toString(36)}`;

/** When it was written, whether it is in a file, and the file. */
const HEAD = /^(\d+) ([01])\n/;
const writtenMs = (text: string): number => Number(HEAD.exec(text)?.[1] ?? 0);

export function keptRemarks(key: string): KeptRemarks | null {
	try {
		const text = localStorage.getItem(key) ?? '';
		const [head, , inFile] = HEAD.exec(text) ?? [];
		const read = head === undefined ? null : parseRemarks(text.slice(head.length));
		return read?.ok ? { remarks: read.file.remarks, inFile: inFile === '1' } : null;
	} catch {
		return null;
	}
}

/** False when the browser does not keep them. */
export function keepRemarks(key: string, { titleBlock }: Diagram, { remarks, inFile }: KeptRemarks): boolean {
	try {
		if (Object.keys(remarks).length === 0) {
			localStorage.removeItem(key);
			return true;
		}
		const about = { title: titleBlock.title, revisionIndex: titleBlock.revisionIndex };
		localStorage.setItem(key, `${Date.now()} ${inFile ? 1 : 0}\n${remarksFile(about, remarks)}`);
		forgetOldest();
		return true;
	} catch {
		return false;
	}
}

function forgetOldest(): void {
	const keys = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX));
	const newestFirst = keys.sort((a, b) => writtenMs(localStorage.getItem(b) ?? '') - writtenMs(localStorage.getItem(a) ?? ''));
	for (const key of newestFirst.slice(MOST)) localStorage.removeItem(key);
}

/** The diagram of a link with the visitor's remarks on it; without them where they do not fit any more. */
export function withRemarks(diagram: Diagram, remarks: Remarks): Diagram {
	const command = importRemarks({ remarks: { ...remarks } });
	return command.refuse(diagram) === null ? run(start(diagram), command).diagram : diagram;
}
