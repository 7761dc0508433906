import { expect, test } from 'vitest';
import { secondsText } from '../../../src/core/rules/fault-words.ts';

test('seconds are told in the unit that suits them', () => {
	expect([0.0052, 0.999, 1, 119, 120, 7199, 7200].map(secondsText)).toEqual([
		'5.2 ms',
		'999 ms',
		'1 s',
		'119 s',
		'2 min',
		'120 min',
		'2 h'
	]);
});
