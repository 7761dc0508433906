/** The document: schema, commands, history, migrations. The only thing a file holds. */
export {
	AREA_SPACES,
	AWG_SIZES,
	COLOURS,
	DiagramSchema,
	FORMAT,
	IEC_SIZES,
	INSULATION_C,
	VERSION,
	type Area,
	type AreaSpace,
	type CaseId,
	type Colour,
	type ColourScheme,
	type Conductor,
	type ConductorEnd,
	type ConductorId,
	type Content,
	type Diagram,
	type Fingerprint,
	type Gauge,
	type InsulationC,
	type Note,
	type OperatingCase,
	type Param,
	type Part,
	type PartId,
	type Remark,
	type Revision,
	type Rotation,
	type StackItem,
	type StudKey,
	type TakenReading,
	type TerminalRef,
	type TitleBlock,
	type Underlay,
	type Waiver
} from './schema.ts';
export { emptyDiagram, newConductor } from './empty.ts';
export { airAroundC, areaAt, areaBox, areaOfPart, spacesOfPart, surroundingsOf, type Surroundings } from './areas.ts';
export { freshGroup, groupOf, isLockedIn, membersOf, withGroups } from './groups.ts';
export { freshId } from './ids.ts';
export { nextLabel } from './labels.ts';
export { conductorsAmong, hostsOf, withBlocks } from './mounts.ts';
export { landedOn } from './stack.ts';
export { FragmentSchema, fragmentOf, insertedIds, type Fragment, type InsertedIds } from './fragment.ts';
export { parseDiagram, SIZE_LIMIT, type ParseResult } from './parse.ts';
export { explainIssues } from './explain-issue.ts';
export type { Problem } from './problem.ts';
export { gate, type Gate, type GateReason, type Passed } from './gate.ts';
export { unsafeKey } from './unsafe-keys.ts';
export {
	PICTURE_PIXEL_LIMIT,
	PICTURE_TEXT_LIMIT,
	pictureSize,
	PictureText,
	sizeOfPictureText,
	type PictureSize,
	type PictureType
} from './picture.ts';
export { serializeDiagram } from './serialize.ts';
export { contentOf, nextLetter, revisionsInOrder } from './revisions.ts';
export { parseRemarks, remarksFile, REMARKS_FORMAT, type RemarksFile, type RemarksResult } from './remarks-file.ts';
export { diagramJsonSchema } from './json-schema.ts';
export { idsByKind, itemKey, parseItemKey, type FrameKind, type IdsByKind, type ItemKey, type ItemKind } from './item.ts';
export { sameTerminal, studKey, terminalRef } from './stud-key.ts';
export { change, compose, defineCommand, together, type Change, type Command } from './command.ts';
export { moveItems } from './move-items.ts';
export { recorded, type Recording } from './recorded.ts';
export { addArea } from './commands/add-area.ts';
export { addCase } from './commands/add-case.ts';
export { addConductor } from './commands/add-conductor.ts';
export { addNote } from './commands/add-note.ts';
export { addPart } from './commands/add-part.ts';
export { addRemark } from './commands/add-remark.ts';
export { addUnderlay } from './commands/add-underlay.ts';
export { answerRemark } from './commands/answer-remark.ts';
export { editArea } from './commands/edit-area.ts';
export { editCase } from './commands/edit-case.ts';
export { editConductors } from './commands/edit-conductors.ts';
export { editCustomProfile } from './commands/edit-custom-profile.ts';
export { editNote } from './commands/edit-note.ts';
export { editPart } from './commands/edit-part.ts';
export { editReadings } from './commands/edit-readings.ts';
export { editSystem } from './commands/edit-system.ts';
export { editTitleBlock } from './commands/edit-title-block.ts';
export { editUnderlay } from './commands/edit-underlay.ts';
export { groupItems } from './commands/group-items.ts';
export { importRemarks } from './commands/import-remarks.ts';
export { insertFragment } from './commands/insert-fragment.ts';
export { issueRevision } from './commands/issue-revision.ts';
export { lockItems } from './commands/lock-items.ts';
export { mountBlock } from './commands/mount-block.ts';
export { moveEach } from './commands/move-each.ts';
export { moveFrames } from './commands/move-frames.ts';
export { moveParts } from './commands/move-parts.ts';
export { placeArea } from './commands/place-area.ts';
export { reconnectConductor } from './commands/reconnect-conductor.ts';
export { removeCase } from './commands/remove-case.ts';
export { removeItems } from './commands/remove-items.ts';
export { removeRemark } from './commands/remove-remark.ts';
export { reorderStack } from './commands/reorder-stack.ts';
export { reroute } from './commands/reroute.ts';
export { rotateParts } from './commands/rotate-parts.ts';
export { setBends } from './commands/set-bends.ts';
export { setLevel } from './commands/set-level.ts';
export { setStarting } from './commands/set-starting.ts';
export { setParams } from './commands/set-params.ts';
export { unmountBlock } from './commands/unmount-block.ts';
export { waiveFinding } from './commands/waive-finding.ts';
export { withdrawWaiver } from './commands/withdraw-waiver.ts';
export { redo, run, start, undo, type Entry, type History, type RunOptions } from './history.ts';
export { stepBetween, takeStep, type Step } from './step.ts';
export { becomeDiagram } from './become.ts';
