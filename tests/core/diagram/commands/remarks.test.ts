import { describe, expect, test } from 'vitest';
import { addRemark, answerRemark, change, importRemarks, parseRemarks, remarksFile, removeRemark, type Remark } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const said = { id: 'm1', on: { kind: 'part' as const, id: 'P1' }, text: 'Which lug is this?', by: 'R. Iyer', date: '2024-05-03' };
const remark: Remark = { on: said.on, text: said.text, by: said.by, date: said.date, answer: '', answeredBy: '', closed: false };
const remarked = change(small, addRemark(said)).diagram;
const answered = change(remarked, answerRemark({ id: 'm1', answer: '6 AWG, M8', answeredBy: 'A. Nwosu', closed: true })).diagram;

describe('a remark', () => {
	testCommand('is pinned to something', small, addRemark(said), (after) => {
		expect(after.remarks).toEqual({ m1: remark });
	});
	testCommand('is answered', remarked, answerRemark({ id: 'm1', answer: ' 6 AWG, M8 ', answeredBy: 'A. Nwosu' }), (after) => {
		expect(after.remarks['m1']).toEqual({ ...remark, answer: '6 AWG, M8', answeredBy: 'A. Nwosu' });
	});
	testCommand('is opened again', answered, answerRemark({ id: 'm1', closed: false }), (after) => {
		expect(after.remarks['m1']).toMatchObject({ closed: false, answer: '6 AWG, M8' });
	});
	testCommand('is taken out', remarked, removeRemark({ id: 'm1' }), (after) => {
		expect(after.remarks).toEqual({});
	});
	testRefusal('needs words', small, addRemark({ ...said, text: ' ' }), 'The remark is empty; write what should be looked at.');
	testRefusal('needs a name', small, addRemark({ ...said, by: '' }), 'Give the name of whoever remarks it.');
	testRefusal('that is gone is not answered', small, answerRemark({ id: 'm1', closed: true }), 'This remark is not there any more.');
});

describe('a reviewer’s remarks', () => {
	const theirs: Remark = { ...remark, text: 'Which lug, and which hole?', closed: false };
	testCommand(
		'come in new, unanswered whatever they claim',
		small,
		importRemarks({ remarks: { x: { ...theirs, closed: true, answer: 'yes' } } }),
		(after) => {
			expect(after.remarks['x']).toEqual({ ...theirs, closed: false, answer: '' });
		}
	);
	testCommand('leave the author’s answer alone', answered, importRemarks({ remarks: { m1: theirs } }), (after) => {
		expect(after.remarks['m1']).toEqual({ ...theirs, answer: '6 AWG, M8', answeredBy: 'A. Nwosu', closed: true });
	});
	testCommand('change nothing else', answered, importRemarks({ remarks: { x: theirs } }), (after, before) => {
		expect({ ...after, remarks: before.remarks }).toEqual(before);
	});
	testRefusal('may be none', small, importRemarks({ remarks: {} }), 'There is no remark in this file.');
});

describe('their file', () => {
	const about = { title: 'Trailer', revisionIndex: 'B' };
	const text = remarksFile(about, { x: remark });

	test('is read back', () => {
		expect(parseRemarks(text)).toEqual({ ok: true, file: { format: 'wireworthy-remarks', version: 1, about, remarks: { x: remark } } });
	});

	test.each([
		['not JSON', '{"format": "wireworthy-remarks"'],
		['another format', '{"format": "wireworthy-diagram"}'],
		['a reserved name', text.replace('"x"', '"constructor"')],
		['more than remarks', text.replace('"version": 1', '"version": 1, "parts": {}')],
		['an id with a path in it', text.replace('"x"', '"../x"')],
		['another version', text.replace('"version": 1', '"version": 2')],
		['something that is not a remark', text.replace('"closed": false', '"closed": "no"')],
		['megabytes', `${text}${' '.repeat(2_000_001)}`]
	])('is refused with reasons: %s', (_, bad) => {
		const result = parseRemarks(bad);
		expect(result.ok).toBe(false);
		if (!result.ok) expect(result.problem).toMatchObject({ what: expect.stringMatching(/./), why: expect.stringMatching(/./) });
	});
});
