/**
 * The one gate for whatever comes from outside as text: files, links, pasted parts, remarks, part files, all diagrams in
 * one file. What passes is JSON of the right format and of limited size, depth and count, with finite numbers, and
 * without names that every object inherits. Its schema is looked at by whoever asked. Never throws.
 */
import { findJsonFault } from './json-fault.ts';
import type { Problem } from './problem.ts';
import { unsafeKey } from './unsafe-keys.ts';

/** What may pass, and how it is spoken of. */
export interface Gate {
	/** Value of the "format" that stands in it. */
	readonly format: string;
	/** "a file of remarks" */
	readonly thing: string;
	/** Most characters. */
	readonly characters: number;
	/** Most values in it, each number, text, list and object counted. */
	readonly values: number;
	/** Sentence: what to choose instead. */
	readonly remedy: string;
}

export type GateReason = 'large' | 'empty' | 'broken' | 'format' | 'reserved' | 'deep' | 'many' | 'infinite';

export type Passed =
	| { readonly ok: true; readonly raw: Readonly<Record<string, unknown>> }
	| { readonly ok: false; readonly reason: GateReason; readonly problem: Problem };

/** Levels. What this program writes has a dozen. */
const DEEPEST = 40;

/** @param input text, or JSON that was parsed already */
export function gate(input: unknown, { format, thing, characters, values, remedy }: Gate): Passed {
	const refused = (reason: GateReason, what: string, why: string, then = remedy, path = ''): Passed => ({
		ok: false,
		reason,
		problem: { path, what, why, remedy: then }
	});
	let raw = input;
	if (typeof input === 'string') {
		if (input.length > characters)
			return refused(
				'large',
				`This file is too large: it has ${counted(input.length)} characters, and at most ${counted(characters)} are read.`,
				`${thing[0]!.toUpperCase()}${thing.slice(1)} is never that large, so it is probably another kind of file.`
			);
		const text = input.startsWith('\uFEFF') ? input.slice(1) : input;
		if (text.trim() === '') return refused('empty', 'This file is empty.', 'There is nothing in it to read.', 'Choose another file.');
		try {
			raw = JSON.parse(text);
		} catch {
			return { ok: false, reason: 'broken', problem: notJson(text) };
		}
	}
	if (typeof raw !== 'object' || raw === null || Array.isArray(raw) || (raw as { format?: unknown }).format !== format)
		return refused(
			'format',
			`This is not ${thing}.`,
			`Such a file begins with "format": "${format}", and this one does not.`,
			remedy,
			'format'
		);
	const unsafe = unsafeKey(raw);
	if (unsafe !== null)
		return refused(
			'reserved',
			`The file uses the name "${unsafe.split('.').at(-1)}", which is reserved.`,
			'Such a name could change how the program behaves, so the file is not opened.',
			'Give that entry another name, or do not use this file if you do not know where it comes from.',
			unsafe
		);
	const measured = measure(raw, values);
	if (measured === 'deep')
		return refused(measured, 'This file is nested too deeply.', `At most ${DEEPEST} levels are read; this program writes a dozen.`);
	if (measured === 'many') return refused(measured, 'There is too much in this file.', `At most ${counted(values)} values are read.`);
	if (measured === 'infinite')
		return refused(measured, 'A number in this file is larger than can be worked with.', 'Nothing could be worked out from it.');
	return { ok: true, raw: raw as Record<string, unknown> };
}

const counted = (count: number): string => count.toLocaleString('en');

function notJson(text: string): Problem {
	const fault = findJsonFault(text);
	const remedy = 'If it was edited by hand, correct that place. If it was cut short, use an earlier copy.';
	if (fault === null) return { path: '', what: 'This file could not be read.', why: 'It is nested too deeply.', remedy };
	const path = `line ${fault.line}, column ${fault.column}`;
	const found = fault.found === null ? 'the file ends' : `there is ${JSON.stringify(fault.found)}`;
	return {
		path,
		what: `At ${path} ${found} where ${fault.expected} should be.`,
		why: 'From there on it is not JSON and cannot be read.',
		remedy
	};
}

/** Level by level: what is nested a million times is not followed by calls. */
function measure(root: unknown, most: number): 'deep' | 'many' | 'infinite' | null {
	let count = 0;
	let level: unknown[] = [root];
	for (let depth = 0; level.length > 0; depth += 1) {
		if (depth > DEEPEST) return 'deep';
		count += level.length;
		if (count > most) return 'many';
		const next: unknown[] = [];
		for (const value of level) {
			if (typeof value === 'number' && !Number.isFinite(value)) return 'infinite';
			if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) next.push(inner);
		}
		level = next;
	}
	return null;
}
