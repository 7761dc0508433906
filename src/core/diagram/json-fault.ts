/**
 * Where a text stops being JSON. Browsers word their own messages differently and some give no place, so the place
 * is found here; it runs only after JSON.parse has refused the text.
 */
export interface JsonFault {
	/** Both counted from 1. */
	readonly line: number;
	readonly column: number;
	/** "a comma or } was expected", in plain words. */
	readonly expected: string;
	/** What stands there instead, or null at the end of the text. */
	readonly found: string | null;
}

const SPACE = /[ \t\n\r]*/y;
// Control characters are refused inside a text, except those from U+007F, which \p{Cc} counts and JSON allows.
const STRING = /"(?:[^"\\\p{Cc}]|[\u007f-\u009f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const LITERAL = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;

/** The first fault, or null when the text is JSON. */
export function findJsonFault(text: string): JsonFault | null {
	const open: ('{' | '[')[] = [];
	let at = 0;
	let expecting: 'value' | 'first-value' | 'key' | 'first-key' | 'colon' | 'next' = 'value';

	const eat = (pattern: RegExp): boolean => {
		pattern.lastIndex = at;
		if (!pattern.test(text)) return false;
		at = pattern.lastIndex;
		return true;
	};
	const fault = (expected: string): JsonFault => ({ ...place(text, at), expected, found: at < text.length ? text[at]! : null });

	for (;;) {
		eat(SPACE);
		const char = text[at];
		if (expecting === 'next' && open.length === 0) return char === undefined ? null : fault('the end of the file');
		if (expecting === 'colon') {
			if (char !== ':') return fault('a colon after the name');
			at += 1;
			expecting = 'value';
		} else if (expecting === 'next') {
			const closing = open.at(-1) === '{' ? '}' : ']';
			if (char === ',') expecting = open.at(-1) === '{' ? 'key' : 'value';
			else if (char === closing) open.pop();
			else return fault(`a comma or ${closing}`);
			at += 1;
		} else if (expecting === 'first-key' && char === '}') {
			at += 1;
			open.pop();
			expecting = 'next';
		} else if (expecting === 'key' || expecting === 'first-key') {
			if (!eat(STRING)) return fault('a name in double quotes');
			expecting = 'colon';
		} else if (expecting === 'first-value' && char === ']') {
			at += 1;
			open.pop();
			expecting = 'next';
		} else if (char === '{' || char === '[') {
			at += 1;
			open.push(char);
			expecting = char === '{' ? 'first-key' : 'first-value';
		} else if (eat(STRING) || eat(LITERAL)) {
			expecting = 'next';
		} else return fault(char === '"' ? 'a text closed by a double quote on the same line' : 'a value');
	}
}

function place(text: string, offset: number): { line: number; column: number } {
	const before = text.slice(0, offset).split('\n');
	return { line: before.length, column: before.at(-1)!.length + 1 };
}
