/**
 * Whether a drawing in SVG may be handed to the browser to be painted. It is painted as an image, where nothing of it
 * runs or is fetched; what is left is that a small file may take for ever to paint, and that is stopped here.
 */
import { sizeOfPictureText } from '#core/diagram';
import { scanMarkup, type Token } from './markup-scan.ts';

/** Characters. */
const TEXT_LIMIT = 5_000_000;
const MOST_ELEMENTS = 100_000;
const MOST_REFERENCES = 20_000;
const MOST_IMAGES = 20;
const DEEPEST = 200;
/** Elements painted when each reference is followed: a few that use each other grow without end. */
const MOST_PAINTED = 300_000;
/** What is painted aside and then laid over the rest costs more than its lines. */
const LAYER = 100;
const LAYERS = /opacity|mask|blend/;

/** What makes no still drawing, or costs time by its area. */
const REFUSED: ReadonlySet<string> = new Set([
	...['script', 'foreignobject', 'iframe', 'filter'],
	...['animate', 'animatetransform', 'animatemotion', 'set']
]);

export interface SvgSize {
	readonly width: number;
	readonly height: number;
}

export type SvgRead =
	| { readonly ok: true; readonly size: SvgSize }
	/** `why` is a sentence. */
	| { readonly ok: false; readonly why: string };

interface Element {
	readonly name: string;
	/** Elements painted for it and for what stands in it, references not followed. */
	own: number;
	readonly refs: string[];
}

/** Thrown within the gate only. */
class Refusal extends Error {}

/** True when the first element is the one of an SVG file. */
export function isSvg(text: string): boolean {
	for (const token of scanMarkup(text.replace(/^\uFEFF/, '').slice(0, 50_000))) {
		if (token?.kind === 'open') return token.name === 'svg';
		if (!token || token.kind === 'close' || token.text.trim() !== '') return false;
	}
	return false;
}

export function readSvg(text: string): SvgRead {
	try {
		return { ok: true, size: sizeOfSafe(text) };
	} catch (error) {
		if (error instanceof Refusal) return { ok: false, why: error.message };
		throw error;
	}
}

function sizeOfSafe(text: string): SvgSize {
	if (text.length > TEXT_LIMIT) throw new Refusal(`It has more than ${TEXT_LIMIT / 1e6} million characters.`);
	if (/<!ENTITY/i.test(text)) throw new Refusal('It defines entities of its own, by which a small file can grow without end.');
	const named = new Map<string, Element>();
	const whole: Element = { name: '', own: 0, refs: [] };
	const open: Element[] = [whole];
	let size: SvgSize | null = null;
	let [elements, references, images, each] = [0, 0, 0, 1];
	for (const token of scanMarkup(text)) {
		if (!token) throw new Refusal('It is cut short, or no SVG after all.');
		if (token.kind === 'close') {
			if (open.length > 1) open.pop();
		} else if (token.kind === 'text') {
			if (open.at(-1)!.name !== 'style') continue;
			if (/url\s*\(|\\|@import/i.test(token.text)) throw new Refusal('Its style sheet refers to other drawings.');
			if (LAYERS.test(token.text)) each = LAYER;
		} else {
			const { name, attributes, isEmpty } = token;
			size ??= sizeIn(attributes);
			elements += 1;
			if (elements > MOST_ELEMENTS) throw new Refusal(`It has more than ${MOST_ELEMENTS.toLocaleString('en')} elements.`);
			if (REFUSED.has(name)) throw new Refusal(`It holds "${name}", which is not part of a still drawing.`);
			if (name.endsWith('image')) images += imageIn(attributes);
			if (images > MOST_IMAGES) throw new Refusal(`It holds more than ${MOST_IMAGES} pictures.`);
			const { refs, cost } = costOf(attributes);
			references += refs.length;
			if (references > MOST_REFERENCES) throw new Refusal('Parts of it use each other too often.');
			const element: Element = { name, own: 0, refs: [] };
			const id = attributes.get('id');
			if (id !== undefined) named.set(id, element);
			for (const holder of [...open, element]) {
				holder.own += cost;
				holder.refs.push(...refs);
			}
			if (isEmpty) continue;
			open.push(element);
			if (open.length > DEEPEST) throw new Refusal(`It is nested more than ${DEEPEST} deep.`);
		}
	}
	if (!size) throw new Refusal('It does not say how large it is.');
	if (paintedBy(whole, named) * each > MOST_PAINTED)
		throw new Refusal('Painting it would take too long: it has too many parts, or they use each other too often.');
	return size;
}

/** References to parts of the drawing, and how many plain elements this one is worth. */
function costOf(attributes: Extract<Token, { kind: 'open' }>['attributes']): { refs: string[]; cost: number } {
	const refs: string[] = [];
	let cost = 1;
	for (const [key, value] of attributes) {
		if (LAYERS.test(key) || (key === 'style' && LAYERS.test(value))) cost = LAYER;
		if (key === 'href' && value.trim().startsWith('#')) refs.push(value.trim().slice(1));
		if (!/url\s*\(/i.test(value)) continue;
		if (value.includes('\\')) throw new Refusal('It hides what it refers to.');
		for (const [, to] of value.matchAll(/url\s*\(\s*["']?\s*#([^"')\s]+)/gi)) refs.push(to!);
	}
	return { refs, cost };
}

/** One, for a picture that stands in the file itself. */
function imageIn(attributes: ReadonlyMap<string, string>): 1 {
	if (sizeOfPictureText((attributes.get('href') ?? '').replace(/\s/g, '')) === null)
		throw new Refusal('It holds a picture that lies elsewhere, is too large, or is no PNG, JPEG or WebP.');
	return 1;
}

/** Infinity when references go round in a ring. */
function paintedBy(whole: Element, named: ReadonlyMap<string, Element>): number {
	const known = new Map<Element, number>();
	const count = (element: Element, depth: number): number => {
		const before = known.get(element);
		if (before !== undefined) return before;
		if (depth > DEEPEST) return Infinity;
		// Whoever comes here again goes round.
		known.set(element, Infinity);
		let sum = element.own;
		for (const ref of element.refs) {
			const target = named.get(ref);
			if (target) sum += count(target, depth + 1);
		}
		known.set(element, sum);
		return sum;
	};
	return count(whole, 0);
}

/** In user units; a share of something ("100%") is no size. */
function sizeIn(attributes: ReadonlyMap<string, string>): SvgSize | null {
	const length = (name: string): number => {
		const text = attributes.get(name) ?? '';
		return text.includes('%') ? NaN : Number.parseFloat(text);
	};
	const box = (attributes.get('viewbox') ?? '')
		.trim()
		.split(/[\s,]+/)
		.map(Number);
	const sizes = [
		{ width: length('width'), height: length('height') },
		{ width: box[2] ?? NaN, height: box[3] ?? NaN }
	];
	const usable = ({ width, height }: SvgSize) => width > 0 && height > 0 && width / height > 1 / 1000 && width / height < 1000;
	return sizes.find(usable) ?? null;
}
