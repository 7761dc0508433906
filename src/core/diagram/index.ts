/** The document: schema, commands, history, migrations. The only thing a file holds. */
export {
	AWG_SIZES,
	COLOURS,
	DiagramSchema,
	FORMAT,
	IEC_SIZES,
	INSULATION_C,
	VERSION,
	type CaseId,
	type Colour,
	type ColourScheme,
	type Conductor,
	type ConductorEnd,
	type ConductorId,
	type Diagram,
	type Gauge,
	type InsulationC,
	type OperatingCase,
	type Param,
	type Part,
	type PartId,
	type Rotation,
	type StackItem,
	type StudKey,
	type TerminalRef,
	type TitleBlock
} from './schema.ts';
export { itemKey, parseItemKey, type ItemKey, type ItemKind } from './item.ts';
export { sameTerminal, studKey, terminalRef } from './stud-key.ts';
export { change, compose, defineCommand, type Change, type Command } from './command.ts';
export { redo, run, start, undo, type Entry, type History, type RunOptions } from './history.ts';
