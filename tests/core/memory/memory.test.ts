import { describe, expect, test } from 'vitest';
import { createMemory } from '#core/memory';

describe('a value kept', () => {
	test('is the same one until something it is made of is another', () => {
		const memory = createMemory();
		const part = { label: 'F1' };
		const first = memory.keep('view', [part, 12], () => ({ part }));
		expect(memory.keep('view', [part, 12], () => ({ part }))).toBe(first);
		expect(memory.keep('view', [{ ...part }, 12], () => ({ part }))).not.toBe(first);
	});

	test('is another one under another name, and with more or fewer ingredients', () => {
		const memory = createMemory();
		memory.keep('a', [1], () => 'one');
		expect(memory.keep('b', [1], () => 'two')).toBe('two');
		expect(memory.keep('a', [1, 2], () => 'three')).toBe('three');
		expect(memory.keep('a', [], () => 'four')).toBe('four');
	});

	test('tells NaN from nothing: it is the same as itself', () => {
		const memory = createMemory();
		memory.keep('a', [NaN], () => 'one');
		expect(memory.keep('a', [NaN], () => 'two')).toBe('one');
	});
});

describe('a value kept for each key', () => {
	const each = (memory: ReturnType<typeof createMemory>, record: Record<string, number>, made: string[]) =>
		memory.keepEach(
			'doubles',
			Object.keys(record),
			(key) => [record[key]],
			(key) => {
				made.push(key);
				return { double: record[key]! * 2 };
			}
		);

	test('is made anew where its own ingredients changed, and nowhere else', () => {
		const [memory, made] = [createMemory(), [] as string[]];
		const before = each(memory, { a: 1, b: 2, c: 3 }, made);
		made.length = 0;
		const after = each(memory, { a: 1, b: 5, c: 3 }, made);
		expect(made).toEqual(['b']);
		expect(after).toEqual([{ double: 2 }, { double: 10 }, { double: 6 }]);
		expect([after[0] === before[0], after[2] === before[2]]).toEqual([true, true]);
	});

	test('is found again when keys are added, removed and put in another order', () => {
		const [memory, made] = [createMemory(), [] as string[]];
		each(memory, { a: 1, b: 2, c: 3 }, made);
		made.length = 0;
		expect(each(memory, { n: 9, c: 3, a: 1 }, made)).toEqual([{ double: 18 }, { double: 6 }, { double: 2 }]);
		expect(made).toEqual(['n']);
	});

	test('comes in the same list while nothing changed, not when one is gone', () => {
		const memory = createMemory();
		const before = each(memory, { a: 1, b: 2 }, []);
		expect(each(memory, { a: 1, b: 2 }, [])).toBe(before);
		const fewer = each(memory, { a: 1 }, []);
		expect(fewer).toEqual([{ double: 2 }]);
		expect(each(memory, { a: 1 }, [])).toBe(fewer);
	});
});

test('a list is the one before while its members are', () => {
	const memory = createMemory();
	const [a, b] = [{}, {}];
	const before = memory.keepList('list', [a, b]);
	expect(memory.keepList('list', [a, b])).toBe(before);
	expect(memory.keepList('list', [b, a])).toEqual([b, a]);
	expect(memory.keepList('list', [a])).toHaveLength(1);
});
