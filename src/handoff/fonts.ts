/** The packet's own font, so that Ω, µ, ² and → are there on every device. */
export interface Fonts {
	/** Whole TrueType files. */
	readonly regular: Uint8Array;
	readonly bold: Uint8Array;
}

export const FONT_FAMILY = 'Wireworthy Sheet';
export const FONT_FILES = { regular: 'fonts/dejavu-sans-condensed.ttf', bold: 'fonts/dejavu-sans-condensed-bold.ttf' } as const;

let loaded: Promise<Fonts> | null = null;

/** Fetched once from the program's own folder. A failure is not kept: the next try asks again. */
export function loadFonts(get: typeof fetch = fetch): Promise<Fonts> {
	const file = async (path: string): Promise<Uint8Array> => {
		const response = await get(path);
		if (!response.ok) throw new Error(`the server answered ${response.status} for ${path}`);
		return new Uint8Array(await response.arrayBuffer());
	};
	loaded ??= Promise.all([file(FONT_FILES.regular), file(FONT_FILES.bold)]).then(
		([regular, bold]) => ({ regular, bold }),
		(error: unknown) => {
			loaded = null;
			throw error;
		}
	);
	return loaded;
}

const CHUNK = 0x8000;

export function base64Of(bytes: Uint8Array): string {
	let binary = '';
	for (let start = 0; start < bytes.length; start += CHUNK) binary += String.fromCharCode(...bytes.subarray(start, start + CHUNK));
	return btoa(binary);
}
