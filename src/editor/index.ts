/** What the user is doing: the diagram being edited, its history, selection, tool and check. Runes, no markup. */
export { Editor, type EditorOptions, type Message, type Resumed, type StepListener } from './editor.svelte.ts';
export { SELECT } from './tool.ts';
export { selectedIds, type Selected } from './selection.ts';
export { copyText, deleteSelection, duplicate, nudge, pasteText, selectAll, turn } from './actions.ts';
export { align, distribute } from './align.ts';
export { hireCheckWorker, type CheckAnswer, type CheckRequest, type CheckWorker } from './checker.ts';
export { Asker, hireAnswerWorker, type AnswerWorker, type Asked, type Told } from './asker.ts';
export type { LoadLoss, QuestionKind, Questions, RemedyOffer } from './answers.ts';
export type { CompareAsk, Comparison } from './comparison.ts';
export type { FullBusOffer, PlacementOffer } from './full-bus-offer.ts';
export type { PositionsOffer } from './positions-offer.ts';
export type { ReadingsOffer, SuspectOffer } from './readings-offer.ts';
export type { NoShort, ShortAsk, ShortDevice, ShortOffer, ShortStep } from './short-offer.ts';
export type { SizingOffer } from './sizing-offer.ts';
export { conductorName, partName, studName } from './names.ts';
export { GRID_MM } from './new-part.ts';
