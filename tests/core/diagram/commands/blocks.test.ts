import { describe, expect, test } from 'vitest';
import { change, fragmentOf, insertedIds, insertFragment, mountBlock, unmountBlock } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const loose = change(small, unmountBlock({ block: 'F1', at: { x: 50, y: 50 } })).diagram;

describe('mount-block', () => {
	testCommand(
		'sets a block on top of what was drawn there',
		loose,
		mountBlock({ block: 'F1', on: { part: 'D1', terminal: 'p1' } }),
		(after) => {
			expect(after.mounts).toEqual({ F1: { part: 'D1', terminal: 'p1' } });
			expect(after.stacks['D1.p1']).toEqual([
				{ kind: 'lug', conductor: 'C2', end: 'from' },
				{ kind: 'block', block: 'F1' }
			]);
		}
	);
	testCommand('moves a block from stud to stud', small, mountBlock({ block: 'F1', on: { part: 'D1', terminal: 'L' } }), (after) => {
		expect(after.mounts).toEqual({ F1: { part: 'D1', terminal: 'L' } });
		expect(after.stacks['B1.pos']).toBeUndefined();
		expect(after.stacks['D1.L']!.map(({ kind }) => kind)).toEqual(['lug', 'block', 'washer', 'lock-washer', 'nut']);
	});
	testRefusal(
		'refuses its own stud',
		small,
		mountBlock({ block: 'F1', on: { part: 'F1', terminal: 'out' } }),
		'A fuse block cannot sit on its own stud. Choose a stud of another part.'
	);
	testRefusal(
		'refuses a ring of blocks',
		small,
		mountBlock({ block: 'B1', on: { part: 'F1', terminal: 'out' } }),
		'F1 sits on B1, so B1 cannot sit on it as well.'
	);
	testRefusal(
		'refuses where it is already',
		small,
		mountBlock({ block: 'F1', on: { part: 'B1', terminal: 'pos' } }),
		'The block is on that stud already.'
	);
	testRefusal(
		'refuses a host that is not there',
		small,
		mountBlock({ block: 'F1', on: { part: 'X', terminal: 'pos' } }),
		'There is no part "X" in this diagram; it may have been deleted.'
	);
});

describe('unmount-block', () => {
	testCommand('sets the block down', small, unmountBlock({ block: 'F1', at: { x: 50, y: 60 } }), (after) => {
		expect(after.mounts).toEqual({});
		expect(after.parts['F1']!.at).toEqual({ x: 50, y: 60 });
		expect(after.stacks['B1.pos']).toBeUndefined();
	});
	testRefusal(
		'refuses a block that stands by itself',
		loose,
		unmountBlock({ block: 'F1', at: { x: 0, y: 0 } }),
		"F1 is not on another part's stud."
	);
});

describe('insert-fragment', () => {
	const fragment = fragmentOf(small, ['B1', 'D1']);

	test('a fragment holds the parts, the blocks on them and the conductors among them', () => {
		expect(Object.keys(fragment.parts).sort()).toEqual(['B1', 'D1', 'F1']);
		expect(Object.keys(fragment.conductors)).toEqual(['C1']);
		expect(fragment.mounts).toEqual(small.mounts);
		expect(fragment.stacks).toEqual(small.stacks);
	});

	test('a block copied without its host lies where the host is', () => {
		expect(fragmentOf(small, ['F1'])).toMatchObject({ parts: { F1: { at: { x: 0, y: 0 } } }, mounts: {}, stacks: {} });
	});

	testCommand('pastes copies under fresh ids and labels', small, insertFragment({ fragment, by: { x: 0, y: 300 } }), (after) => {
		const ids = insertedIds(small, fragment);
		expect(Object.fromEntries(ids.parts)).toEqual({ B1: 'B2', F1: 'F2', D1: 'D2' });
		expect(Object.fromEntries(ids.conductors)).toEqual({ C1: 'C4' });
		expect(after.parts['B2']).toMatchObject({ label: 'B2', at: { x: 0, y: 300 } });
		// C2 is in use, so the copy of C1+ takes the next number and keeps its sign.
		expect(after.conductors['C4']).toMatchObject({ label: 'C3+', from: { part: 'F2' }, to: { part: 'D2' }, bends: [{ x: 100, y: 250 }] });
		expect(after.mounts['F2']).toEqual({ part: 'B2', terminal: 'pos' });
		expect(after.stacks['B2.pos']![0]).toEqual({ kind: 'block', block: 'F2' });
		expect(after.stacks['D2.L']![0]).toEqual({ kind: 'lug', conductor: 'C4', end: 'to' });
	});

	testRefusal(
		'refuses an empty clipboard',
		small,
		insertFragment({ fragment: { parts: {}, conductors: {}, mounts: {}, stacks: {} } }),
		'There is nothing to paste.'
	);
	testRefusal(
		'refuses a piece that names what was not copied',
		small,
		insertFragment({ fragment: { ...fragment, parts: { B1: fragment.parts['B1']! } } }),
		'What was copied is incomplete: it names a part "F1" that was not copied.'
	);
});
