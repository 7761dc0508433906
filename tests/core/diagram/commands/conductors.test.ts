import { describe, expect } from 'vitest';
import { addConductor, editConductors, reconnectConductor, reorderStack, setBends, type StackItem } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const at = (part: string, terminal: string) => ({ part, terminal });
const lug = (conductor: string, end: 'from' | 'to'): StackItem => ({ kind: 'lug', conductor, end });

describe('add-conductor', () => {
	testCommand(
		'draws one with the usual fields, and lays its lug under the washers of a stud whose order is kept',
		small,
		addConductor({ id: 'C4', conductor: { from: at('D1', 'L'), to: at('P1', 'pos'), label: undefined } }),
		(after) => {
			expect(after.conductors['C4']).toMatchObject({ label: '', gauge: { system: 'awg', size: '10' }, lengthM: null, insulationC: 105 });
			expect(after.stacks['D1.L']!.map(({ kind }) => kind)).toEqual(['lug', 'lug', 'washer', 'lock-washer', 'nut']);
			expect(after.stacks['D1.L']![1]).toEqual(lug('C4', 'from'));
			expect(after.stacks['P1.pos']).toBeUndefined();
		}
	);
	testRefusal(
		'refuses one stud for both ends',
		small,
		addConductor({ id: 'C4', conductor: { from: at('D1', 'L'), to: at('D1', 'L') } }),
		'A conductor needs two different studs: both ends are on the same one. Choose another stud for one end.'
	);
	testRefusal(
		'refuses an id in use',
		small,
		addConductor({ id: 'C1', conductor: { from: at('D1', 'L'), to: at('P1', 'pos') } }),
		'There is already a conductor "C1". A new conductor needs an id of its own.'
	);
	testRefusal(
		'refuses an end on nothing',
		small,
		addConductor({ id: 'C4', conductor: { from: at('D1', 'L'), to: at('X', 'pos') } }),
		'There is no part "X" in this diagram; it may have been deleted.'
	);
	const full = { ...small, stacks: { 'D1.L': Array.from({ length: 32 }, (): StackItem => ({ kind: 'washer' })) } };
	testRefusal(
		'refuses a stud that holds as much as can be recorded',
		full,
		addConductor({ id: 'C4', conductor: { from: at('D1', 'L'), to: at('P1', 'pos') } }),
		'This stud already holds 32 things, which is as many as can be recorded. Use another stud.'
	);
});

describe('reconnect-conductor', () => {
	testCommand(
		'moves an end, its lug and its route',
		small,
		reconnectConductor({ conductor: 'C1', end: 'to', on: at('D1', 'R') }),
		(after) => {
			expect(after.conductors['C1']!.to).toEqual(at('D1', 'R'));
			expect(after.conductors['C1']!.bends).toBeNull();
			expect(after.stacks['D1.L']).toBeUndefined();
		}
	);
	testCommand('lays the lug on its new stud', small, reconnectConductor({ conductor: 'C3', end: 'to', on: at('B1', 'pos') }), (after) => {
		expect(after.stacks['B1.pos']!.map(({ kind }) => kind)).toEqual(['block', 'lug', 'washer', 'nut']);
	});
	testRefusal(
		'refuses the stud of the other end',
		small,
		reconnectConductor({ conductor: 'C1', end: 'to', on: at('F1', 'out') }),
		'The other end of this conductor is on that stud. A conductor needs two different studs.'
	);
	testRefusal(
		'refuses where it is already',
		small,
		reconnectConductor({ conductor: 'C1', end: 'to', on: at('D1', 'L') }),
		'This end is on that stud already.'
	);
	testRefusal(
		'refuses a conductor that is not there',
		small,
		reconnectConductor({ conductor: 'C9', end: 'to', on: at('D1', 'L') }),
		'There is no conductor "C9" in this diagram; it may have been deleted.'
	);
});

describe('edit-conductors', () => {
	testCommand(
		'sets fields of several at once',
		small,
		editConductors({ conductors: ['C1', 'C2'], set: { gauge: { system: 'iec', size: '35' }, lengthM: 0.5 } }),
		(after) => {
			for (const id of ['C1', 'C2']) expect(after.conductors[id]).toMatchObject({ gauge: { system: 'iec', size: '35' }, lengthM: 0.5 });
			expect(after.conductors['C1']!.label).toBe('C1+');
		}
	);
	testRefusal(
		'refuses a conductor that is not there',
		small,
		editConductors({ conductors: ['C1', 'C9'], set: { sheathed: true } }),
		'There is no conductor "C9" in this diagram; it may have been deleted.'
	);
});

describe('set-bends', () => {
	testCommand('routes by hand', small, setBends({ conductor: 'C2', bends: [{ x: 1, y: 2 }] }), (after) => {
		expect(after.conductors['C2']!.bends).toEqual([{ x: 1, y: 2 }]);
	});
	testCommand('gives the route back', small, setBends({ conductor: 'C1', bends: null }), (after) => {
		expect(after.conductors['C1']!.bends).toBeNull();
	});
	testRefusal(
		'refuses a conductor that is not there',
		small,
		setBends({ conductor: 'C9', bends: null }),
		'There is no conductor "C9" in this diagram; it may have been deleted.'
	);
});

describe('reorder-stack', () => {
	testCommand(
		'keeps the order it is given',
		small,
		reorderStack({ stud: 'D1.L', stack: [{ kind: 'washer' }, lug('C1', 'to'), { kind: 'nut' }] }),
		(after) => {
			expect(after.stacks['D1.L']).toEqual([{ kind: 'washer' }, lug('C1', 'to'), { kind: 'nut' }]);
		}
	);
	testCommand('records an order for a stud that had none', small, reorderStack({ stud: 'D1.p1', stack: [lug('C2', 'from')] }), (after) => {
		expect(after.stacks['D1.p1']).toEqual([lug('C2', 'from')]);
	});
	testCommand('forgets the order when given none', small, reorderStack({ stud: 'D1.L', stack: [] }), (after) => {
		expect(after.stacks['D1.L']).toBeUndefined();
	});
	testRefusal(
		'refuses a lug of another stud',
		small,
		reorderStack({ stud: 'D1.L', stack: [lug('C1', 'to'), lug('C2', 'from')] }),
		'The lug of C2+ does not land on this stud. Connect it here first.'
	);
	testRefusal(
		'refuses to leave out what lands there',
		small,
		reorderStack({ stud: 'B1.pos', stack: [{ kind: 'washer' }] }),
		'The plate of F1 lands on this stud too and needs its place in the order.'
	);
	testRefusal(
		'refuses one lug twice',
		small,
		reorderStack({ stud: 'D1.L', stack: [lug('C1', 'to'), lug('C1', 'to')] }),
		'The lug of C1+ is in the list twice.'
	);
});
