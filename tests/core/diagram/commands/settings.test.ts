import { describe, expect } from 'vitest';
import { addCase, change, editCase, editCustomProfile, editSystem, editTitleBlock, removeCase, setLevel } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const surge = { label: 'Starting', order: 3, duration: 'surge', loads: 1, sources: 0, levels: { P1: 3 } } as const;

describe('title block and settings', () => {
	testCommand('fills the title block', small, editTitleBlock({ set: { title: 'Trailer', revisionIndex: 'B' } }), (after) => {
		expect(after.titleBlock).toMatchObject({ title: 'Trailer', revisionIndex: 'B', creator: '' });
	});
	testCommand(
		'changes the settings given and no others',
		small,
		editSystem({ set: { nominalV: 24, engineSpaceC: 60, profile: 'us-small-craft' } }),
		(after) => {
			expect(after.system).toEqual({ nominalV: 24, craft: 'vehicle', negative: 'bonded' });
			expect(after.ambient).toEqual({ outsideC: 30, engineSpaceC: 60 });
			expect(after.profile).toBe('us-small-craft');
			expect(after.colourScheme).toBe('abyc');
		}
	);
});

describe('operating cases', () => {
	testCommand('adds one', small, addCase({ id: 'start', case: surge }), (after) => {
		expect(after.cases['start']).toEqual(surge);
	});
	testRefusal(
		'refuses an id in use',
		small,
		addCase({ id: 'peak', case: surge }),
		'There is already an operating case "peak". A new case needs an id of its own.'
	);
	testCommand('edits one', small, editCase({ case: 'peak', set: { label: 'Night', loads: 0.5 } }), (after) => {
		expect(after.cases['peak']).toMatchObject({ label: 'Night', loads: 0.5, levels: { P1: 0.5 } });
	});
	testCommand('sets a level', small, setLevel({ case: 'charging', part: 'P1', level: 0.2 }), (after) => {
		expect(after.cases['charging']!.levels).toEqual({ P1: 0.2 });
	});
	testCommand('leaves a level to the case', small, setLevel({ case: 'peak', part: 'P1', level: null }), (after) => {
		expect(after.cases['peak']!.levels).toEqual({});
	});
	testRefusal(
		'refuses a level of nothing',
		small,
		setLevel({ case: 'peak', part: 'X', level: 1 }),
		'There is no part "X" in this diagram; it may have been deleted.'
	);
	testCommand('removes one', small, removeCase({ case: 'peak' }), (after) => {
		expect(Object.keys(after.cases)).toEqual(['charging']);
	});
	testRefusal(
		'keeps the last one',
		change(small, removeCase({ case: 'peak' })).diagram,
		removeCase({ case: 'charging' }),
		'This is the last operating case, and currents are worked out for at least one. Add another case first.'
	);
	testRefusal(
		'refuses a case that is not there',
		small,
		editCase({ case: 'x', set: {} }),
		'There is no operating case "x" in this diagram; it may have been deleted.'
	);
});

describe('custom profile', () => {
	const made = change(small, editCustomProfile({ numbers: { deviceFactor: 1.1 } })).diagram;

	testCommand(
		'is made from the profile in use, and chosen',
		small,
		editCustomProfile({ numbers: { deviceFactor: 1.1 } }),
		(after, before) => {
			expect(after.profile).toBe('custom');
			expect(after.customProfile).toEqual({ base: before.profile, numbers: { deviceFactor: 1.1 } });
		}
	);
	testCommand(
		'takes one number more and gives one back',
		made,
		editCustomProfile({ numbers: { batteryM: 1, deviceFactor: null } }),
		(after) => {
			expect(after.customProfile!.numbers).toEqual({ batteryM: 1 });
		}
	);
	testCommand('changes its base and keeps its numbers', made, editCustomProfile({ base: 'caravan', numbers: {} }), (after) => {
		expect(after.customProfile).toEqual({ base: 'caravan', numbers: { deviceFactor: 1.1 } });
	});
	testRefusal(
		'is not made from itself',
		small,
		editCustomProfile({ base: 'custom', numbers: {} }),
		'A custom profile is made from a published one, not from itself.'
	);
});
