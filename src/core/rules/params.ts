/** Parameters of a part as rules ask for them; what a kind does not have is not known. */
import { airAroundC, spacesOfPart, type AreaSpace } from '#core/diagram';
import type { Space } from '#core/parts';
import type { PartView, Study } from './study.ts';

type Params = Pick<PartView, 'params'>;

export const numberOf = ({ params }: Params, name: string): number | null => {
	const value = params[name];
	return typeof value === 'number' ? value : null;
};

/** A choice's value; empty where the kind has no such parameter. */
export const choiceOf = ({ params }: Params, name: string): string => String(params[name] ?? '');

export const isSet = ({ params }: Params, name: string): boolean => params[name] === true;

/**
 * Whether a part stands in such a place: as said of the part itself, or else of the part it is mounted on, or else of the
 * area it is in.
 */
export function isIn(study: Study, id: string, space: AreaSpace): boolean {
	const own = spaceOf(study, id);
	return own === 'ordinary' ? spacesOfPart(study.diagram, id).includes(space) : own === space;
}

/** Temperature of the air around a part, °C: that of its area, or of engine space or ordinary space in general. */
export const aroundPartC = (study: Study, id: string): number => airAroundC(study.diagram, id, isIn(study, id, 'engine'));

/** Where a part stands; a fuse block left as it comes stands where the part stands that it is mounted on. */
function spaceOf({ diagram, part }: Study, id: string): Space {
	const own = (choiceOf(part(id), 'space') || 'ordinary') as Space;
	const host = diagram.mounts[id]?.part;
	if (own !== 'ordinary' || host === undefined || host === id || !Object.hasOwn(diagram.parts, host)) return own;
	return (choiceOf(part(host), 'space') || 'ordinary') as Space;
}
