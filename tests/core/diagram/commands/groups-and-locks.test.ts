import { describe, expect, test } from 'vitest';
import {
	change,
	fragmentOf,
	freshGroup,
	groupItems,
	insertFragment,
	lockItems,
	moveEach,
	moveParts,
	reroute,
	rotateParts,
	setBends,
	withGroups,
	type Diagram
} from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const applied = (diagram: Diagram, command: ReturnType<typeof groupItems>): Diagram => change(diagram, command).diagram;
const grouped = applied(small, groupItems({ parts: ['B1', 'D1'], group: 'G1' }));
const locked = applied(small, lockItems({ parts: ['D1'], conductors: ['C1'], locked: true }));

describe('group-items', () => {
	testCommand('makes parts belong together', small, groupItems({ parts: ['B1', 'D1'], group: 'G1' }), (after) => {
		expect([after.parts['B1']!.group, after.parts['D1']!.group]).toEqual(['G1', 'G1']);
	});
	testCommand('takes a group apart without a trace', grouped, groupItems({ parts: ['B1', 'D1'], group: null }), (after) =>
		expect(after).toEqual(small)
	);
	testRefusal('takes two', small, groupItems({ parts: ['B1'], group: 'G1' }), 'Select two or more parts, areas or notes to group.');
});

test('one member stands for all, and a new group has a name of its own', () => {
	expect(withGroups(grouped, ['part:D1', 'conductor:C1'])).toEqual(['part:D1', 'part:B1', 'conductor:C1']);
	expect(withGroups(small, ['part:D1'])).toEqual(['part:D1']);
	expect(freshGroup(grouped)).toBe('G2');
});

test('copies of a group are a group of their own, and copies of locked parts are not locked', () => {
	const both = applied(grouped, lockItems({ parts: ['B1'], locked: true }));
	const after = change(both, insertFragment({ fragment: fragmentOf(both, ['B1', 'D1']), by: { x: 0, y: 900 } })).diagram;
	const copies = Object.entries(after.parts).filter(([id]) => !Object.hasOwn(both.parts, id) && both.parts[id] === undefined);
	const names = copies.map(([, { group }]) => group).filter((group) => group !== undefined);
	expect(names).toEqual(['G2', 'G2']);
	expect(copies.some(([, part]) => part.locked)).toBe(false);
});

describe('lock-items', () => {
	testCommand('and unlocking leave no trace', locked, lockItems({ parts: ['D1'], conductors: ['C1'], locked: false }), (after) =>
		expect(after).toEqual(small)
	);
	testRefusal('says that nothing is selected', small, lockItems({ locked: true }), 'Nothing is selected to lock.');
	testRefusal('keeps a part where it is', locked, moveParts({ parts: ['B1', 'D1'], by: { x: 5, y: 0 } }), 'D1 is locked. Unlock it first.');
	testRefusal('keeps it as it is turned', locked, rotateParts({ parts: ['D1'], quarterTurns: 1 }), 'D1 is locked. Unlock it first.');
	testRefusal(
		'keeps it from being aligned',
		locked,
		moveEach({ moves: { D1: { x: 1, y: 0 } }, verb: 'align' }),
		'D1 is locked. Unlock it first.'
	);
	testRefusal('keeps a conductor’s bends', locked, setBends({ conductor: 'C1', bends: null }), 'C1+ is locked. Unlock it first.');
});

describe('reroute', () => {
	testCommand('leaves routes to the program again', small, reroute({ conductors: Object.keys(small.conductors) }), (after) =>
		expect(Object.values(after.conductors).every(({ bends }) => bends === null)).toBe(true)
	);
	testRefusal(
		'keeps those of locked conductors',
		locked,
		reroute({ conductors: ['C1'] }),
		'The conductors with bends set by hand are locked. Unlock them first.'
	);
	testRefusal(
		'says that there is nothing to do',
		applied(small, reroute({ conductors: ['C1'] })),
		reroute({ conductors: ['C1'] }),
		'None of these conductors has bends set by hand: their routes are the program’s already.'
	);
});
