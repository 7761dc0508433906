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
 * New labels for copies: one already in use takes the next number, and copies that share a number ("C4+", "C4-")
 * go on sharing one. A label without a number gets one ("INV" → "INV2"). Empty labels stay empty.
 */
export function relabelled(diagram: Pick<Diagram, 'parts' | 'conductors'>, copies: readonly string[]): Map<string, string> {
	const used = new Set(labels(diagram));
	const designations = new Map(
		[...new Set(copies)].filter(Boolean).map((label) => [label, split(label) ?? { prefix: label, number: 1, suffix: '' }])
	);
	const numbers = new Map<string, number>();
	const taken = [...used, ...designations.keys()];
	for (const [label, { prefix, number }] of designations) {
		const stem = `${prefix} ${number}`;
		if (!used.has(label) || numbers.has(stem)) continue;
		const next = Math.max(number, highest(taken, prefix)) + 1;
		numbers.set(stem, next);
		taken.push(`${prefix}${next}`);
	}
	return new Map(
		[...designations].map(([label, { prefix, number, suffix }]) => {
			const next = numbers.get(`${prefix} ${number}`);
			return [label, next === undefined ? label : `${prefix}${next}${suffix}`];
		})
	);
}
