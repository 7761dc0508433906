/** Why a file could not be read: what is wrong, why that matters, what to do. Plain data, for people. */
export interface Problem {
	/** Place in the file: "parts.B1.rotation", or "line 3, column 9"; empty where the whole file is meant. */
	readonly path: string;
	readonly what: string;
	readonly why: string;
	readonly remedy: string;
}
