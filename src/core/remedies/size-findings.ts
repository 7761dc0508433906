/** What sizes of conductors and fuses may mend. */
import type { Diagram } from '#core/diagram';
import type { Finding } from '#core/rules';
import { findingsOfRule } from './findings.ts';

/** What thicker copper mends, in the severities that are not to be left. */
export const BY_COPPER = [
	'undersized-conductor',
	'undersized-return',
	'oversized-protection',
	'two-source-conductor',
	'protection-too-far',
	'voltage-drop',
	'no-fast-clearing',
	'conductor-below-minimum',
	'negative-smaller-than-positive',
	'inverter-low-voltage-current'
];
export const BY_FUSE = 'fuse-below-load';

/** Drops that other loads cause are not mended by a circuit's own copper, so warnings of those are left. */
const WARNINGS_TOO = ['undersized-conductor', 'negative-smaller-than-positive', BY_FUSE];

export const toMend = (diagram: Diagram): Finding[] =>
	[...BY_COPPER, BY_FUSE]
		.flatMap((rule) => findingsOfRule(diagram, rule))
		.filter(({ severity, rule }) => severity === 'error' || (severity === 'warning' && WARNINGS_TOO.includes(rule)));
