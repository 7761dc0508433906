/**
 * Every rule, in the order of evaluation and of the list the user sees: topology before what depends on it.
 * A test compares this list with the folder and with the tests.
 */
import type { Rule } from './define.ts';

export const RULES: readonly Rule[] = [
	// Topology: what joins what.
	// Protection.
	// Conductors.
	// Studs.
	// Batteries.
	// Documents.
];
