/** Words of the drawing as a tree. */
import { catalogue } from '../language/catalogue.ts';
import type { Severity } from '#core/rules';
import { texts } from '../texts.ts';

export const outlineTexts = catalogue('outline', {
	conductors: (n: number) => `Conductors (${n})`,
	findings: (n: number) => `Findings (${n})`,
	way: (from: string, to: string, size: string) => `${from} to ${to}, ${size}`,
	severity: (severity: Severity) => texts.findings.severities[severity],
	renaming: (name: string) => `New name of ${name}. Enter takes it, Escape leaves it.`,
	renamed: (name: string) => `Now called ${name}.`,
	size: (name: string, size: string) => `${name} is ${size} now.`,
	largest: (name: string, size: string) => `${name} is ${size}: there is no larger size.`,
	smallest: (name: string, size: string) => `${name} is ${size}: there is no smaller size.`,
	/** The keys, under the tree and as its description. */
	keys: 'Arrow keys walk the tree; with Alt they move the part. On a conductor the right arrow leads to its other end. F2 renames, Delete removes. C on a stud connects from it, C on another ends there. Plus and minus make a conductor thicker and thinner. Enter on a finding shows it.'
});
