/** Things of several kinds, as commands take them: ids by the record of the diagram they stand in. */
import * as z from 'zod';
import type { Draft } from 'immer';
import { count, firstReason, missingArea, missingConductor, missingNote, missingPart, missingUnderlay } from '../names.ts';
import { Id, type Diagram } from '../schema.ts';

const MISSING = {
	parts: missingPart,
	conductors: missingConductor,
	areas: missingArea,
	notes: missingNote,
	underlays: missingUnderlay
} as const;
const NOUNS: Readonly<Record<Kinds, string>> = {
	parts: 'part',
	conductors: 'conductor',
	areas: 'area',
	notes: 'note',
	underlays: 'picture'
};

type Kinds = keyof typeof MISSING;
type Several<Kind extends Kinds> = { readonly [Name in Kind]: readonly string[] };

/** An argument: none, when left out. */
export const ids = z.array(Id).default([]);

const idsOf = <Kind extends Kinds>(several: Several<Kind>): [kind: Kind, ids: readonly string[]][] =>
	(Object.keys(MISSING) as Kind[]).flatMap((kind): [Kind, readonly string[]][] =>
		several[kind]?.length > 0 ? [[kind, several[kind]]] : []
	);

export const countSeveral = <Kind extends Kinds>(several: Several<Kind>): number =>
	idsOf(several).reduce((sum, [, each]) => sum + each.length, 0);

/** "2 parts and 1 note". */
export const severalText = <Kind extends Kinds>(several: Several<Kind>): string =>
	idsOf(several)
		.map(([kind, each]) => count(each.length, NOUNS[kind]))
		.join(' and ');

/** Why the first that is not there cannot be found, or null. */
export const missingAmong = <Kind extends Kinds>(diagram: Diagram, several: Several<Kind>): string | null =>
	firstReason(idsOf(several).flatMap(([kind, each]) => each.map((id) => MISSING[kind](diagram, id))));

/** The things themselves; each has to be there. */
export const severalIn = <Kind extends Kinds>(draft: Draft<Diagram>, several: Several<Kind>): Draft<Diagram>[Kind][string][] =>
	idsOf(several).flatMap(([kind, each]) => each.map((id) => (draft[kind] as Record<string, Draft<Diagram>[Kind][string]>)[id]!));
