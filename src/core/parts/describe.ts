import * as z from 'zod';
import type { Part } from '#core/diagram';
import type { Box } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import type { Link, PartDefinition, Terminal } from './define.ts';
import { definitionOf } from './list.ts';
import { body, centredBox } from './sketch.ts';
import { reader, type Reader } from '#core/units';

/** A part with all that its definition says of it, parameters read and made sound. */
export interface PartDescription {
	/** Null for a kind this build does not know: then there are no terminals and no links. */
	readonly definition: PartDefinition | null;
	/** In the trade, or as its maker calls it; its kind, where that is not known. */
	readonly name: string;
	readonly params: Readonly<Record<string, unknown>>;
	/** Parameters that could not be read, each with what was used in its place, in words. */
	readonly problems: readonly string[];
	readonly terminals: readonly Terminal[];
	readonly links: readonly Link[];
	readonly summary: string;
	/** What is written on the drawing: the ratings, under the name where parts of the kind have names of their own. */
	readonly printed: string;
	/** The body, around (0, 0), before rotation. */
	readonly box: Box;
	/** Free area for designation and ratings; null where they go beside the body. */
	readonly nameplate: Box | null;
	/** Around (0, 0), before rotation; worked out on first use and kept. A function, so that a check never pays for it. */
	outline(): readonly Primitive[];
	terminal(id: string): Terminal | undefined;
}

const UNKNOWN_BOX = centredBox(120, 80);
const UNKNOWN_OUTLINE = [body(UNKNOWN_BOX)];

/** Reads each parameter on its own, so that one bad value costs only itself. */
function readParams(definition: PartDefinition, given: Part['params']): { params: Record<string, unknown>; problems: string[] } {
	const problems: string[] = [];
	const shape = definition.params.shape as Record<string, z.ZodType>;
	const params: Record<string, unknown> = {};
	for (const [name, schema] of Object.entries(shape)) {
		const result = schema.safeParse(Object.hasOwn(given, name) ? given[name] : undefined);
		if (result.success) params[name] = result.data;
		else {
			params[name] = schema.parse(undefined);
			const title = schema.meta()?.title ?? name;
			problems.push(`${title}: ${JSON.stringify(given[name])} is not a possible value, ${JSON.stringify(params[name])} is used.`);
		}
	}
	for (const name of Object.keys(given)) {
		if (!Object.hasOwn(shape, name)) problems.push(`"${name}" is not a property of this kind of part and is not used.`);
	}
	return { params, problems };
}

function describeUnknown(part: Part): PartDescription {
	return {
		definition: null,
		name: part.kind,
		params: part.params,
		problems: [`This version does not know parts of kind "${part.kind}". The part is kept as it is and takes no part in the check.`],
		terminals: [],
		links: [],
		summary: part.kind,
		printed: part.kind,
		box: UNKNOWN_BOX,
		nameplate: UNKNOWN_BOX,
		outline: () => UNKNOWN_OUTLINE,
		terminal: () => undefined
	};
}

function describeKnown(definition: PartDefinition, part: Part): PartDescription {
	const { params, problems } = readParams(definition, part.params);
	const terminals = definition.terminals(params);
	const called = definition.called?.(params).name;
	const byId = new Map(terminals.map((terminal) => [terminal.id, terminal]));
	let outline: { readonly of: Reader; readonly is: readonly Primitive[] } | null = null;
	return {
		definition,
		name: called ?? definition.name,
		params,
		problems: [...problems, ...(definition.faults?.(params) ?? [])],
		terminals,
		links: definition.links(params),
		/** These are not kept: they are written for whoever reads it. */
		get summary() {
			return definition.summary(params);
		},
		get printed() {
			return [called, definition.summary(params)].filter(Boolean).join(', ');
		},
		box: definition.box(params),
		nameplate: definition.nameplate?.(params) ?? null,
		outline() {
			if (outline?.of !== reader()) outline = { of: reader(), is: definition.outline(params) };
			return outline.is;
		},
		terminal: (id) => byId.get(id)
	};
}

const described = new WeakMap<Part['params'], Map<string, PartDescription>>();

/**
 * What a part is. Parts are immutable values, so the answer is kept for as long as the part's parameters are the
 * same object: moving a part costs nothing.
 */
export function describe(part: Part): PartDescription {
	let byKind = described.get(part.params);
	if (!byKind) described.set(part.params, (byKind = new Map()));
	let description = byKind.get(part.kind);
	if (!description) {
		const definition = definitionOf(part.kind);
		description = definition ? describeKnown(definition, part) : describeUnknown(part);
		byKind.set(part.kind, description);
	}
	return description;
}
