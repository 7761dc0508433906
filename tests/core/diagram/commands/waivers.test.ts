import { describe, expect, test } from 'vitest';
import { change, emptyDiagram, parseDiagram, serializeDiagram, setStarting, waiveFinding, withdrawWaiver } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const waiver = {
	key: 'voltage-drop:P1,C1',
	reason: 'Lamp runs two minutes a week',
	by: 'A. Nwosu',
	date: '2024-05-01',
	fingerprint: { severity: 'error' as const, subjects: ['part:P1', 'conductor:C1'], numbers: { dropV: 0.5 } }
};

describe('waivers', () => {
	testCommand('accept a finding', small, waiveFinding(waiver), (after) => {
		const { key, ...kept } = waiver;
		expect(after.waivers).toEqual({ [key]: kept });
	});
	testCommand('are withdrawn', change(small, waiveFinding(waiver)).diagram, withdrawWaiver({ key: waiver.key }), (after) => {
		expect(after.waivers).toEqual({});
	});
	testRefusal(
		'need a reason',
		small,
		waiveFinding({ ...waiver, reason: '  ' }),
		'Say why it is acceptable: whoever reads this later has nothing else to go by.'
	);
	testRefusal('need a name', small, waiveFinding({ ...waiver, by: '' }), 'Give the name of whoever accepts it.');
	testRefusal(
		'are refused for what is fatal',
		small,
		waiveFinding({ ...waiver, fingerprint: { ...waiver.fingerprint, severity: 'fatal' } }),
		'A fatal finding cannot be accepted: the system cannot work as drawn, and nothing after it could be checked.'
	);
	testRefusal(
		'that do not exist cannot be withdrawn',
		small,
		withdrawWaiver({ key: waiver.key }),
		'This finding is not accepted, so there is nothing to withdraw.'
	);

	test('need a date of the calendar', () => {
		expect(() => waiveFinding({ ...waiver, date: '1 May' })).toThrow();
	});

	test('may be missing from a file made before there were any', () => {
		const { waivers, ...older } = JSON.parse(serializeDiagram(emptyDiagram())) as Record<string, unknown>;
		expect(waivers).toEqual({});
		const parsed = parseDiagram(older);
		expect(parsed.ok && parsed.diagram.waivers).toEqual({});
	});
});

describe('starting loads', () => {
	testCommand('are named in a case', small, setStarting({ case: 'peak', part: 'P1', starts: true }), (after) => {
		expect(after.cases['peak']!.starting).toEqual({ P1: true });
	});
	testCommand(
		'are taken out again',
		change(small, setStarting({ case: 'peak', part: 'P1', starts: true })).diagram,
		setStarting({ case: 'peak', part: 'P1', starts: false }),
		(after) => {
			expect(after.cases['peak']!.starting).toEqual({});
		}
	);
});
