import { describe, expect } from 'vitest';
import { moveEach } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const move = (moves: Record<string, { x: number; y: number }>) => moveEach({ moves, verb: 'align' });

describe('move-each', () => {
	testCommand(
		'moves each part its own way; bends between them stay',
		small,
		move({ B1: { x: 5, y: 0 }, D1: { x: 0, y: 7 } }),
		(after, before) => {
			expect(after.parts['B1']!.at).toEqual({ x: 5, y: 0 });
			expect(after.parts['D1']!.at).toEqual({ x: 400, y: 7 });
			expect(after.conductors['C1']!.bends).toEqual(before.conductors['C1']!.bends);
		}
	);
	testCommand('takes bends along where both ends move alike', small, move({ B1: { x: 3, y: 4 }, D1: { x: 3, y: 4 } }), (after) => {
		expect(after.conductors['C1']!.bends).toEqual([{ x: 103, y: -46 }]);
	});
	testRefusal('refuses a block on a stud', small, move({ F1: { x: 1, y: 0 } }), 'F1 sits on a stud and moves with what it sits on.');
	testRefusal(
		'refuses to leave the drawing',
		small,
		move({ D1: { x: 1e6, y: 0 } }),
		'That is beyond the edge of the drawing, which reaches 1000 m each way.'
	);
});
