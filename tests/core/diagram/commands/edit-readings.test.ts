import { describe, expect, test } from 'vitest';
import { change, editReadings, parseDiagram, removeCase, removeItems, serializeDiagram, type TakenReading } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const [first, second] = Object.keys(small.parts) as [string, string];
const [caseId] = Object.keys(small.cases) as [string];
const reading: TakenReading = {
	case: caseId,
	at: { part: first, terminal: 'pos' },
	to: { part: second, terminal: 'neg' },
	volts: 12.61,
	order: 1,
	date: '2024-05-03',
	by: 'R. Iyer'
};
const read = change(small, editReadings({ readings: { r1: reading } })).diagram;

describe('readings of a meter', () => {
	testCommand('are kept', small, editReadings({ readings: { r1: reading } }), (after) => {
		expect(after.readings).toEqual({ r1: reading });
	});
	testCommand('are planned without volts', small, editReadings({ readings: { r1: { ...reading, volts: null, date: null } } }), (after) => {
		expect(after.readings['r1']).toMatchObject({ volts: null, date: null });
	});
	testCommand('are taken out', read, editReadings({ readings: { r1: null } }), (after) => {
		expect(after.readings).toEqual({});
	});
	testCommand('go with the part they were taken at', read, removeItems({ parts: [second], conductors: [] }), (after) => {
		expect(after.readings).toEqual({});
	});
	testCommand('go with their case', read, removeCase({ case: caseId }), (after) => {
		expect(after.readings).toEqual({});
	});
	testRefusal(
		'with both leads on one stud say nothing',
		small,
		editReadings({ readings: { r1: { ...reading, to: reading.at } } }),
		'Both leads are on the same stud, where every meter reads 0 V. Move one of them.'
	);
	testRefusal('that are gone are not taken out', small, editReadings({ readings: { r1: null } }), 'This reading is not there any more.');
});

test('a file without readings opens, and one whose part is missing opens without them', () => {
	const raw = JSON.parse(serializeDiagram(read)) as { readings?: Record<string, { at: { part: string } }> };
	const stray = structuredClone(raw);
	stray.readings!['r1']!.at.part = 'gone';
	const mended = parseDiagram(stray);
	expect(mended.ok && mended.diagram.readings).toEqual({});
	expect(mended.ok && mended.notes).toEqual(['1 reading named a part or a case that is not in the file; left out.']);
	delete raw.readings;
	const older = parseDiagram(raw);
	expect(older.ok && older.diagram.readings).toEqual({});
	expect(older.ok && older.notes).toEqual([]);
});
