/** Text with a sum over it, so that what was damaged on the way is noticed instead of being believed. */
export interface Sealed {
	readonly text: string;
	readonly sum: number;
}

/** FNV-1a over UTF-16 code units, 32 bits: finds accidents, not forgers. */
export function checksum(text: string): number {
	let sum = 0x811c9dc5;
	for (let index = 0; index < text.length; index += 1) sum = Math.imul(sum ^ text.charCodeAt(index), 0x01000193);
	return sum >>> 0;
}

/** @param place what the text belongs to; it opens only there, so that entries cannot change places */
export function seal(value: unknown, place: string): Sealed {
	const text = JSON.stringify(value);
	return { text, sum: checksum(`${place}\n${text}`) };
}

/** The value, or undefined when it is not what was sealed at this place. */
export function unseal({ text, sum }: Sealed, place: string): unknown {
	if (typeof text !== 'string' || checksum(`${place}\n${text}`) !== sum) return undefined;
	try {
		return JSON.parse(text) as unknown;
	} catch {
		return undefined;
	}
}
