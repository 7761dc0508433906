/** Questions about a diagram that take too long for the thread that draws. Questions and answers are plain data. */
import { change, type CaseId, type Change, type Diagram, type PartId, type StackItem, type StudKey } from '#core/diagram';
import { thumbnails } from '#core/drawing';
import { arrangementOf, remediesFor, tryOrder, type Difference, type StudArrangement, type StudTrial } from '#core/remedies';
import type { Picture } from '#core/drawing';
import type { PictureAsk } from './change-picture.ts';
import { comparison, type CompareAsk, type Comparison } from './comparison.ts';
import { fullBusOffer, type FullBusOffer } from './full-bus-offer.ts';
import { picture } from './change-picture.ts';
import { positionsOffer, type PositionsAsk, type PositionsOffer } from './positions-offer.ts';
import { sizingOffer, type SizingOffer } from './sizing-offer.ts';
import type { FullBusRequest } from '#core/placement';
import { energyBalance, type EnergyBalance } from '#core/energy';
import {
	caseCells,
	explain,
	partFigures,
	studyOf,
	voltsLost,
	type CaseCells,
	type Explanation,
	type FigureGroup,
	type FigureId,
	type VoltsLost
} from '#core/explain';
import { assemblyOrder, reportInput, sectionsOf, verdictOf, type AssemblyStep, type Section } from '#core/reports';
import { readingsOffer, type ReadingsAsk, type ReadingsOffer } from './readings-offer.ts';
import { shortOffer, type NoShort, type ShortAsk, type ShortOffer } from './short-offer.ts';

export interface Questions {
	/** What would mend the finding with this key. */
	readonly remedies: { readonly ask: { readonly finding: string }; readonly answer: readonly RemedyOffer[] };
	/** Where the volts of a load go, in a case or, with null, in the one in which most are lost. */
	readonly 'volts-lost': { readonly ask: { readonly load: PartId; readonly caseId: CaseId | null }; readonly answer: LoadLoss };
	readonly 'part-figures': { readonly ask: { readonly part: PartId }; readonly answer: readonly FigureGroup[] };
	readonly energy: { readonly ask: Readonly<Record<string, never>>; readonly answer: EnergyBalance };
	/** What each case comes to; null for one without an operating point. */
	readonly cases: { readonly ask: Readonly<Record<string, never>>; readonly answer: Readonly<Record<CaseId, CaseCells | null>> };
	/** Where a figure comes from; null where there is no such figure. */
	readonly explain: { readonly ask: { readonly figure: FigureId }; readonly answer: Explanation | null };
	/** What flows and what is found on a stud, with what is on it in another order or, with null, as it is. */
	readonly stud: {
		readonly ask: { readonly stud: StudKey; readonly order: readonly StackItem[] | null };
		readonly answer: { readonly order: readonly StackItem[] | null; readonly trial: StudTrial | null };
	};
	/** The best legal order of a stud; null where nothing sits on it. */
	readonly arrange: { readonly ask: { readonly stud: StudKey }; readonly answer: StudArrangement | null };
	/** Where new circuits may land on a bus. */
	readonly 'full-bus': { readonly ask: FullBusRequest; readonly answer: FullBusOffer };
	/** The order of circuits that asks least of a bus; null for what is no bus. */
	readonly positions: { readonly ask: PositionsAsk; readonly answer: PositionsOffer | null };
	/** Least copper and the fuses to go with it. */
	readonly sizing: { readonly ask: Record<string, never>; readonly answer: SizingOffer };
	/** How a change looks on the drawing; null where it does not show. */
	readonly picture: { readonly ask: PictureAsk; readonly answer: Picture | null };
	/** The whole drawing small, as SVG text for each theme; null for an empty sheet. */
	readonly thumbnail: { readonly ask: { readonly sizePx: number }; readonly answer: ReturnType<typeof thumbnails> };
	/** What differs between two revisions, or one and the diagram as it stands; null where one is not there. */
	readonly compare: { readonly ask: CompareAsk; readonly answer: Comparison | null };
	/** What follows from a short somewhere. */
	readonly short: { readonly ask: ShortAsk; readonly answer: ShortOffer | NoShort };
	/** What the readings kept in the diagram say in a case. */
	readonly readings: { readonly ask: ReadingsAsk; readonly answer: ReadingsOffer };
	/** In which order it is put together. */
	readonly assembly: { readonly ask: null; readonly answer: readonly AssemblyStep[] };
	/** Every table of the packet, and the check's outcome in a sentence. */
	readonly reports: { readonly ask: null; readonly answer: { readonly sections: readonly Section[]; readonly verdict: string } };
}
export type QuestionKind = keyof Questions;

export interface LoadLoss {
	/** Null where the diagram has no case. */
	readonly caseId: CaseId | null;
	readonly lost: VoltsLost | { readonly ok: false; readonly why: string };
}

/** A remedy without its functions. */
export interface RemedyOffer {
	readonly title: string;
	readonly safe: boolean;
	readonly caution: string | null;
	readonly difference: Difference;
	/** What it does to the diagram that was asked about. */
	readonly patches: Change['patches'];
}

/** How far a long answer is: steps done, of so many. */
export type Progress = (done: number, of: number) => void;

const ANSWERS: {
	readonly [Kind in QuestionKind]: (diagram: Diagram, ask: Questions[Kind]['ask'], progress: Progress) => Questions[Kind]['answer'];
} = {
	remedies: (diagram, { finding }) =>
		remediesFor(diagram, { key: finding }).map(({ title, safe, caution, command, preview }) => {
			const { cleared, added, changed, errorsBefore, errorsAfter, warningsBefore, warningsAfter } = preview();
			const difference = { cleared, added, changed, errorsBefore, errorsAfter, warningsBefore, warningsAfter };
			return { title, safe, caution, difference, patches: change(diagram, command).patches };
		}),
	'volts-lost': (diagram, { load, caseId }) => loadLoss(diagram, load, caseId),
	explain: (diagram, { figure }) => explain(diagram, figure),
	'part-figures': (diagram, { part }) => (Object.hasOwn(diagram.parts, part) ? partFigures(studyOf(diagram), part) : []),
	energy: (diagram) => energyBalance(diagram, studyOf(diagram).network),
	cases: (diagram) => caseCells(studyOf(diagram)),
	stud: (diagram, { stud, order }) => ({ order, trial: tryOrder(diagram, stud, order) }),
	arrange: (diagram, { stud }) => arrangementOf(diagram, stud),
	'full-bus': fullBusOffer,
	positions: positionsOffer,
	sizing: (diagram) => sizingOffer(diagram),
	picture,
	thumbnail: (diagram, { sizePx }) => thumbnails(diagram, sizePx),
	compare: comparison,
	short: shortOffer,
	readings: readingsOffer,
	assembly: (diagram) => assemblyOrder(reportInput(diagram)),
	reports: (diagram) => reports(diagram)
};

function reports(diagram: Diagram): Questions['reports']['answer'] {
	const input = reportInput(diagram);
	return { sections: sectionsOf(input), verdict: verdictOf(input) };
}

function loadLoss(diagram: Diagram, load: PartId, caseId: CaseId | null): LoadLoss {
	const cases = caseId === null ? Object.keys(diagram.cases) : [caseId];
	const losses = cases.map((id): LoadLoss => ({ caseId: id, lost: voltsLost(diagram, load, null, id) }));
	const voltsOf = ({ lost }: LoadLoss) => (lost.ok ? lost.totalV : -1);
	const [first, ...others] = losses;
	if (!first) return { caseId: null, lost: { ok: false, why: 'Without an operating case no current flows.' } };
	return others.reduce((worst, loss) => (voltsOf(loss) > voltsOf(worst) ? loss : worst), first);
}

export const answer = <Kind extends QuestionKind>(
	diagram: Diagram,
	kind: Kind,
	ask: Questions[Kind]['ask'],
	progress: Progress = () => {}
): Questions[Kind]['answer'] => ANSWERS[kind](diagram, ask, progress);
