import type { StudKey, TerminalRef } from './schema.ts';

export const studKey = ({ part, terminal }: TerminalRef): StudKey => `${part}.${terminal}`;

export function terminalRef(key: StudKey): TerminalRef {
	const dot = key.indexOf('.');
	return { part: key.slice(0, dot), terminal: key.slice(dot + 1) };
}

export const sameTerminal = (a: TerminalRef, b: TerminalRef): boolean => a.part === b.part && a.terminal === b.terminal;
