/** Studs and points inside, as the form offers and names them. */
import { INSIDE, type OwnParams } from '#core/parts';
import { ownPartTexts } from './texts.ts';

const words = ownPartTexts.maker;

interface Choice {
	readonly value: string;
	readonly text: string;
}

const insideText = (id: string): string => words.inside(id.slice(1));

export const studChoices = ({ studs }: OwnParams): Choice[] => [
	{ value: '', text: words.choose },
	...studs.map(({ id, name }) => ({ value: id, text: name.trim() || id }))
];

export const pointChoices = (part: OwnParams): Choice[] => [
	...studChoices(part),
	...INSIDE.map((id) => ({ value: id, text: insideText(id) }))
];

/** "IN +", "point 1 inside", "choose a stud". */
export const pointName = (part: OwnParams, id: string): string => pointChoices(part).find(({ value }) => value === id)?.text ?? id;
