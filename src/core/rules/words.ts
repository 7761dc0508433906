/** Words rules share, so that one thing has one name in every finding. */
import { studKey, type Conductor, type StudKey } from '#core/diagram';

import type { PartView } from './study.ts';

/** "B1 +", "unlabelled battery +". */
export const studName = (part: Pick<PartView, 'label' | 'definition'>, terminalLabel: string): string =>
	`${partName(part)} ${terminalLabel}`;

/** The label, or "unlabelled battery". */
export const partName = ({ label, definition }: Pick<PartView, 'label' | 'definition'>): string =>
	label.trim() || `unlabelled ${definition ? definition.name.toLowerCase() : 'part'}`;

/** The label, or "unlabelled conductor from B1 + to D1 L". */
export const conductorName = ({ label, from, to }: Conductor, nameOf: (key: StudKey) => string): string =>
	label.trim() || `unlabelled conductor from ${nameOf(studKey(from))} to ${nameOf(studKey(to))}`;

/** "W1", "W1 and W2", "W1, W2 and W3"; beyond `most`, "W1, W2, W3 and 4 more". */
export function listed(names: readonly string[], most = 6): string {
	if (names.length > most) return `${names.slice(0, most - 1).join(', ')} and ${names.length - most + 1} more`;
	return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** First letter in upper case, for a sentence that begins with a name. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
