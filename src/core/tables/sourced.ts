/**
 * How a number came here. "verified" was seen in one retrieved source, "two-sources" in two or more, "derived"
 * is computed from a formula, "memory" was not seen in a source: the program shows it as unverified and no test
 * may use it as an oracle. "common-practice" is a habit of the trade without a standard behind it. "given" was
 * entered in the diagram in place of another number.
 */
export type Confidence = 'verified' | 'two-sources' | 'derived' | 'memory' | 'common-practice' | 'given';

export interface Sourced<Value> {
	readonly value: Value;
	/** Document, clause and table as a reader would look it up. */
	readonly source: string;
	readonly confidence: Confidence;
}
