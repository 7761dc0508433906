/**
 * How the reader wants quantities written. The diagram and all arithmetic are in SI units; only what is printed, and how
 * a bare number in a field is read, depends on this.
 */
export interface Reader {
	readonly decimal: '.' | ',';
	/** Lengths of conductors and distances. */
	readonly long: 'm' | 'ft';
	/** Heights, threads left and other small lengths. */
	readonly short: 'mm' | 'in';
	readonly temperature: '°C' | '°F';
	/**
	 * System a new conductor is proposed in; sizes of the other are repeated in it, in brackets. Null: sizes stand in the system
	 * they are sold in, and nothing is repeated.
	 */
	readonly gauge: 'awg' | 'iec' | null;
}

/** What is printed where nobody has chosen: on the command line and in tests. */
export const PLAIN_READER: Reader = { decimal: '.', long: 'm', short: 'mm', temperature: '°C', gauge: null };

let source: () => Reader = () => PLAIN_READER;

/** Who reads. */
export const reader = (): Reader => source();

/**
 * The one setting of a run: from here on everything is printed for this reader. The window gives its remembered choice, a
 * worker what it was told with its first question. It is asked at every print, so that a window may follow a changed choice.
 */
export function printFor(asked: () => Reader): void {
	source = asked;
}
