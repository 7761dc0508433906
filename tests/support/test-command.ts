import { applyPatches } from 'immer';
import { expect, test } from 'vitest';
import { change, DiagramSchema, serializeDiagram, type Command, type Diagram } from '#core/diagram';

/**
 * Checks a command on a diagram four ways: it is not refused and does what `then` looks for; its patches, sent
 * through JSON, replay it; its inverse patches restore the first diagram; the result is a valid file, unchanged by
 * saving and opening. The first diagram must not have been touched, and the command must be good for a second run.
 */
export function testCommand(title: string, before: Diagram, command: Command, then: (after: Diagram, before: Diagram) => void): void {
	test(title, () => {
		const untouched = structuredClone(before);
		expect(command.refuse(before)).toBeNull();
		const { diagram: after, patches, inverse } = change(before, command);
		then(after, before);
		expect(before).toEqual(untouched);
		expect(change(before, command).diagram).toEqual(after);
		expect(applyPatches(before, JSON.parse(JSON.stringify(patches)))).toEqual(after);
		expect(applyPatches(after, JSON.parse(JSON.stringify(inverse)))).toEqual(before);
		expect(DiagramSchema.parse(JSON.parse(serializeDiagram(after)))).toEqual(after);
		expect(command.label).not.toBe('');
		expect(String(command)).toContain(command.name);
	});
}

/** Checks that a command is refused with exactly this reason. */
export function testRefusal(title: string, diagram: Diagram, command: Command, reason: string): void {
	test(title, () => {
		expect(command.refuse(diagram)).toBe(reason);
	});
}
