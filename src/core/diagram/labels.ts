/**
 * Designations are a prefix and a number, sometimes with a suffix: "F3", "C4-". Copies keep the prefix and suffix
 * and take a number nobody uses.
 */
import type { Diagram } from './schema.ts';

interface Designation {
	readonly prefix: string;
	readonly number: number;
	readonly suffix: string;
}

const DESIGNATION = /^(.*?)(\d{1,6})(\D*)$/su;

function split(label: string): Designation | null {
	const match = DESIGNATION.exec(label);
	return match && { prefix: match[1]!, number: Number(match[2]), suffix: match[3]! };
}

const labels = ({ parts, conductors }: Pick<Diagram, 'parts' | 'conductors'>): string[] =>
	[...Object.values(parts), ...Object.values(conductors)].map(({ label }) => label);

function highest(used: Iterable<string>, prefix: string): number {
	let number = 0;
	for (const label of used) {
		const designation = split(label);
		if (designation?.prefix === prefix) number = Math.max(number, designation.number);
	}
	return number;
}

/** The next designation with this prefix, one above the highest in use: "F3" where there are F1 and F2. */
export const nextLabel = (diagram: Pick<Diagram, 'parts' | 'conductors'>, prefix: string): string =>
	`${prefix}${highest(labels(diagram), prefix) + 1}`;

/**
 * New labels for copies: one already in use takes the next number, and copies that shared a number ("C4+", "C4-")
 * share the new one. A label without a number gets one ("INV" → "INV2"). Empty labels stay empty.
 */
export function relabelled(diagram: Pick<Diagram, 'parts' | 'conductors'>, copies: readonly string[]): Map<string, string> {
	const used = new Set(labels(diagram));
	const numbers = new Map<string, number>();
	const renamed = new Map<string, string>();
	for (const label of copies) {
		if (label === '' || renamed.has(label)) continue;
		if (!used.has(label)) {
			renamed.set(label, label);
			continue;
		}
		const { prefix, number, suffix } = split(label) ?? { prefix: label, number: 1, suffix: '' };
		const stem = `${prefix} ${number}`;
		const taken = [...used, ...renamed.values()];
		const next = numbers.get(stem) ?? Math.max(number, highest(taken, prefix)) + 1;
		numbers.set(stem, next);
		renamed.set(label, `${prefix}${next}${suffix}`);
	}
	return renamed;
}
