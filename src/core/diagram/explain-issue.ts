/** Turns what the schema found into sentences for somebody who opened a file. */
import type * as z from 'zod';
import type { Problem } from './problem.ts';

const MOST = 20;

/** At most 20 problems: a file that is wrong throughout is explained well enough by its first ones. */
export function explainIssues(raw: unknown, issues: readonly z.core.$ZodIssue[]): Problem[] {
	const problems = issues.slice(0, MOST).map((issue) => explain(raw, issue));
	const more = issues.length - problems.length;
	if (more > 0) problems.push({ path: '', what: `There are ${more} more of this sort.`, why: '', remedy: '' });
	return problems;
}

function explain(raw: unknown, issue: z.core.$ZodIssue): Problem {
	const path = issue.path.map(String).join('.');
	const place = path === '' ? 'The file' : `"${clipped(path, 160)}"`;
	const found = shown(valueAt(raw, issue.path));
	return { path: clipped(path, 160), ...sentence(place, found, issue) };
}

function sentence(place: string, found: string, issue: z.core.$ZodIssue): Omit<Problem, 'path'> {
	const because = 'The diagram cannot be drawn or checked from it.';
	switch (issue.code) {
		case 'invalid_type':
			return found === 'nothing'
				? { what: `${place} is missing.`, why: because, remedy: `Add it; it should be ${kindName(issue.expected)}.` }
				: { what: `${place} is ${found}.`, why: because, remedy: `Make it ${kindName(issue.expected)}.` };
		case 'unrecognized_keys':
			return {
				what: `${place} contains ${names(issue.keys)}, which this format does not have.`,
				why: 'It may be a misspelling, and what it was meant to say would be lost on saving.',
				remedy: 'Correct the name or take it out.'
			};
		case 'invalid_value':
			return {
				what: `${place} is ${found}.`,
				why: because,
				remedy: `Use ${issue.values.length > 1 ? 'one of ' : ''}${issue.values.map((value) => JSON.stringify(value)).join(', ')}.`
			};
		case 'invalid_union':
			return { what: `${place} is ${found}, which is not among the values possible here.`, why: because, remedy: unionRemedy(issue) };
		case 'too_big':
			return {
				what: `${place} is ${found}, which is more than ${issue.maximum}${unit(issue.origin)}.`,
				why: because,
				remedy: `Bring it to ${issue.maximum}${unit(issue.origin)} or less.`
			};
		case 'too_small':
			return {
				what: `${place} is ${found}, which is ${issue.inclusive === false ? 'not more' : 'less'} than ${issue.minimum}${unit(issue.origin)}.`,
				why: because,
				remedy: `Bring it ${issue.inclusive === false ? 'above' : 'to at least'} ${issue.minimum}${unit(issue.origin)}.`
			};
		case 'invalid_key':
			return {
				what: `${place} has a name that cannot be an id.`,
				why: 'Other places in the file refer to it by this name.',
				remedy: issue.issues.map(({ message }) => message).join(' ')
			};
		default:
			return { what: `${place} is ${found}.`, why: because, remedy: issue.message };
	}
}

const unit = (origin: string): string => (origin === 'string' ? ' characters' : origin === 'array' ? ' entries' : '');

function unionRemedy(issue: z.core.$ZodIssueInvalidUnion): string {
	const values = issue.errors.flat().flatMap((inner) => (inner.code === 'invalid_value' ? inner.values : []));
	return values.length > 0
		? `Use one of ${values.map((value) => JSON.stringify(value)).join(', ')}.`
		: 'Compare it with the JSON Schema of the format.';
}

const KIND_NAMES: Record<string, string> = {
	object: 'an object in { }',
	record: 'an object in { }',
	array: 'a list in [ ]',
	string: 'a text in double quotes',
	number: 'a number',
	int: 'a whole number',
	boolean: 'true or false'
};

const kindName = (expected: string): string => KIND_NAMES[expected] ?? expected;

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
	let value = raw;
	for (const key of path) {
		if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
		value = (value as Record<PropertyKey, unknown>)[key];
	}
	return value;
}

/** A value in a few words. */
export function shown(value: unknown): string {
	if (value === undefined) return 'nothing';
	if (Array.isArray(value)) return 'a list';
	if (typeof value === 'object' && value !== null) return 'an object';
	return clipped(JSON.stringify(value), 60);
}

/** A file may name things at any length; a sentence has to be readable. */
const clipped = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most - 3)}…` : text);

function names(keys: readonly string[]): string {
	const shownKeys = keys.slice(0, 5).map((key) => `"${clipped(key, 60)}"`);
	return keys.length > 5 ? `${shownKeys.join(', ')} and ${keys.length - 5} more` : shownKeys.join(', ');
}
