/**
 * A whole diagram in the fragment of an address: "#1." and then its JSON, deflated, in base64url. A fragment is never
 * sent to a server. What comes out of one is trusted no more than a file.
 */
import { parseDiagram, type Diagram } from '#core/diagram';
import { done, failed, type Outcome } from './outcome.ts';

/** First character of the fragment; another one means another way of packing. */
const PACKING = '1.';

/** Longest fragment made, characters: what all current browsers and most mail programs carry. Common practice, no source. */
export const LINK_LIMIT = 60_000;
/** Unpacked text beyond this is no diagram: somebody packed a bomb. */
const TEXT_LIMIT = 8_000_000;

/** True for a fragment that claims to hold a diagram. */
export const isLink = (fragment: string): boolean => bare(fragment).startsWith(PACKING);

/** The fragment, with its "#". Issued revisions are left out: the one that is drawn is what is shown. */
export async function linkOf(diagram: Diagram): Promise<Outcome<string>> {
	const json = JSON.stringify({ ...diagram, revisions: {} });
	const packed = await bytesOf(new Blob([json]).stream().pipeThrough(new CompressionStream('deflate-raw')), Infinity);
	const fragment = `#${PACKING}${toBase64Url(packed!)}`;
	if (fragment.length <= LINK_LIMIT) return done(fragment);
	return failed(
		`This diagram needs a link of ${fragment.length.toLocaleString('en')} characters; at most ${LINK_LIMIT.toLocaleString('en')} are made.`,
		'Longer links are cut by browsers and mail programs, and then nothing opens.',
		'Save the diagram as a file and send that.'
	);
}

/** Reads a fragment. Never throws. */
export async function diagramFromLink(
	fragment: string
): Promise<Outcome<{ readonly diagram: Diagram; readonly notes: readonly string[] }>> {
	const packed = bare(fragment).slice(PACKING.length);
	if (!isLink(fragment) || packed.length > LINK_LIMIT || !/^[A-Za-z0-9_-]+$/.test(packed)) return broken();
	let bytes: Uint8Array<ArrayBuffer> | null;
	try {
		bytes = await bytesOf(new Blob([fromBase64Url(packed)]).stream().pipeThrough(new DecompressionStream('deflate-raw')), TEXT_LIMIT);
	} catch {
		return broken();
	}
	if (!bytes)
		return failed(
			'This link unpacks to far more than a diagram.',
			'It was made to fill the memory, or is damaged, so unpacking was stopped.',
			'Do not use it; ask for the diagram as a file.'
		);
	const parsed = parseDiagram(new TextDecoder().decode(bytes));
	return parsed.ok ? done({ diagram: parsed.diagram, notes: parsed.notes }) : { status: 'failed', problems: parsed.problems };
}

const bare = (fragment: string): string => (fragment.startsWith('#') ? fragment.slice(1) : fragment);

const broken = (): Outcome<never> =>
	failed(
		'This link does not hold a diagram.',
		'It was cut short or changed on its way.',
		'Copy the whole link again, or ask for the diagram as a file.'
	);

/** All bytes of a stream; null, and the stream ended, as soon as there are more than `limit`. */
async function bytesOf(stream: ReadableStream<Uint8Array>, limit: number): Promise<Uint8Array<ArrayBuffer> | null> {
	const reader = stream.getReader();
	const pieces: Uint8Array[] = [];
	let length = 0;
	for (let next = await reader.read(); !next.done; next = await reader.read()) {
		length += next.value.length;
		if (length > limit) {
			await reader.cancel().catch(() => undefined);
			return null;
		}
		pieces.push(next.value);
	}
	const bytes = new Uint8Array(length);
	let at = 0;
	for (const piece of pieces) {
		bytes.set(piece, at);
		at += piece.length;
	}
	return bytes;
}

function toBase64Url(bytes: Uint8Array): string {
	let binary = '';
	for (const byte of bytes) binary += String.fromCharCode(byte);
	return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> =>
	Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (character) => character.charCodeAt(0));
