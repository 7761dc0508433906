/**
 * Reads markup once from left to right, for counting what is in it; in time proportional to its length whatever it is.
 * Comments are passed over. Values and text come with their entities resolved.
 */
export type Token =
	| { readonly kind: 'open'; readonly name: string; readonly attributes: ReadonlyMap<string, string>; readonly isEmpty: boolean }
	| { readonly kind: 'close'; readonly name: string }
	| { readonly kind: 'text'; readonly text: string };

/** Without the namespace's prefix, in small letters. */
const localName = (name: string): string => name.replace(/^.*:/, '').toLowerCase();

const NAMED: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

function resolved(text: string): string {
	if (!text.includes('&')) return text;
	return text.replace(/&(?:#(\d{1,7})|#x([\dA-Fa-f]{1,6})|([a-z]{2,4}));/g, (whole, decimal?: string, hex?: string, name?: string) => {
		if (name !== undefined) return NAMED[name] ?? whole;
		const code = decimal === undefined ? Number.parseInt(hex!, 16) : Number(decimal);
		return code <= 0x10_ff_ff ? String.fromCodePoint(code) : whole;
	});
}

const END_OF_NAME = /[\s/>]/g;
const NOT_SPACE = /[^\s/]/g;
const END_OF_KEY = /[\s=/>]/g;

/** Where the pattern is found first from there on; the text's end when it is not. */
function find(pattern: RegExp, text: string, from: number): number {
	pattern.lastIndex = from;
	return pattern.exec(text)?.index ?? text.length;
}

/** Null in place of a token: what follows is no markup, or is cut short. */
export function* scanMarkup(text: string): Generator<Token | null> {
	for (let at = 0; at < text.length;) {
		const next = text.indexOf('<', at);
		const end = next < 0 ? text.length : next;
		if (end > at) yield { kind: 'text', text: resolved(text.slice(at, end)) };
		if (next < 0) return;
		const skip = passedOver(text, next);
		if (skip) {
			const close = text.indexOf(skip.end, next + skip.begin.length);
			if (close < 0) return yield null;
			if (skip.isText) yield { kind: 'text', text: text.slice(next + skip.begin.length, close) };
			at = close + skip.end.length;
		} else if (text[next + 1] === '/') {
			const close = text.indexOf('>', next);
			if (close < 0) return yield null;
			yield { kind: 'close', name: localName(text.slice(next + 2, close).trim()) };
			at = close + 1;
		} else {
			const opened = openTag(text, next);
			if (!opened) return yield null;
			yield opened.token;
			at = opened.end;
		}
	}
}

const PASSED_OVER = [
	{ begin: '<!--', end: '-->', isText: false },
	{ begin: '<![CDATA[', end: ']]>', isText: true },
	{ begin: '<?', end: '?>', isText: false },
	{ begin: '<!', end: '>', isText: false }
] as const;

const passedOver = (text: string, at: number) => PASSED_OVER.find(({ begin }) => text.startsWith(begin, at));

function openTag(text: string, start: number): { token: Token; end: number } | null {
	let at = find(END_OF_NAME, text, start + 1);
	const name = localName(text.slice(start + 1, at));
	const attributes = new Map<string, string>();
	for (;;) {
		at = find(NOT_SPACE, text, at);
		if (at >= text.length) return null;
		if (text[at] === '>') return { token: { kind: 'open', name, attributes, isEmpty: text[at - 1] === '/' }, end: at + 1 };
		const keyEnd = find(END_OF_KEY, text, at);
		const key = localName(text.slice(at, keyEnd));
		at = find(/[^\s]/g, text, keyEnd);
		// Without a value, or with one that stands bare, it is no XML.
		if (text[at] !== '=') return null;
		at = find(/[^\s]/g, text, at + 1);
		const quote = text[at];
		if (quote !== '"' && quote !== "'") return null;
		const close = text.indexOf(quote, at + 1);
		if (close < 0) return null;
		attributes.set(key, resolved(text.slice(at + 1, close)));
		at = close + 1;
	}
}
