import fc from 'fast-check';
import { expect, test } from 'vitest';
import { becomeDiagram, change, editTitleBlock, emptyDiagram, redo, run, start, undo } from '#core/diagram';
import { commandOf, plan } from '../../support/arbitrary-command.ts';
import { smallDiagram } from '../../support/small-diagram.ts';
import { testCommand } from '../../support/test-command.ts';

testCommand('the whole diagram becomes another', smallDiagram(), becomeDiagram('restore', emptyDiagram()), (after) => {
	expect(after).toEqual(emptyDiagram());
});

test('only what differs is touched', () => {
	const before = smallDiagram();
	const { diagram: target } = change(before, editTitleBlock({ set: { title: 'Other' } }));
	const { patches } = change(before, becomeDiagram('restore', target));
	expect(patches).toEqual([{ op: 'replace', path: ['titleBlock', 'title'], value: 'Other' }]);
});

test('any diagram becomes any other, and comes back by one undo', () => {
	fc.assert(
		fc.property(fc.array(plan, { maxLength: 20 }), (plans) => {
			let target = smallDiagram();
			for (const step of plans) {
				const command = commandOf(target, step);
				if (command && command.refuse(target) === null) target = change(target, command).diagram;
			}
			const done = run(start(smallDiagram()), becomeDiagram('restore', target));
			expect(done.diagram).toEqual(target);
			expect(undo(done).diagram).toEqual(smallDiagram());
			expect(redo(undo(done)).diagram).toEqual(target);
		}),
		{ numRuns: 60 }
	);
});
