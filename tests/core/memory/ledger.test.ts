import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Ledger } from '#core/memory';

interface State {
	readonly list: readonly { readonly name: string }[];
	readonly values: Readonly<Record<string, number>>;
	readonly factor: number;
}

const valueOf = (state: State, name: string): number => {
	if (!Object.hasOwn(state.values, name)) throw new Error(name);
	return state.values[name]!;
};
const factorOf = (state: State): number => state.factor;
const listOf = (state: State): State['list'] => state.list;

/** A ledger over states, with counts of how often each work was done. */
function watchedLedger() {
	const done = { say: 0, square: 0 };
	interface View {
		value(name: string): number;
		factor(): number;
		list(): State['list'];
	}
	const ledger: Ledger<State, View> = new Ledger(() => ({
		value: (name) => ledger.askAbout(valueOf, name),
		factor: () => ledger.ask(factorOf),
		list: () => ledger.ask(listOf)
	}));
	const square = (view: View, name: string): number => {
		done.square++;
		return view.value(name) ** 2;
	};
	const say = (view: View, { name }: { readonly name: string }): readonly number[] => {
		done.say++;
		const value = ledger.deriveAbout(square, name) * view.factor();
		return value > 10 ? [value] : [];
	};
	const things = (view: View) => view.list();
	const said = (state: State): readonly number[] => {
		ledger.enter(state);
		return ledger.gather(things, say);
	};
	return { said, done };
}

const [a, b, c] = [{ name: 'a' }, { name: 'b' }, { name: 'c' }];

describe('a ledger', () => {
	test('asks again only about the thing of which something has changed', () => {
		const { said, done } = watchedLedger();
		const state: State = { list: [a, b, c], values: { a: 4, b: 1, c: 5 }, factor: 1 };
		expect(said(state)).toEqual([16, 25]);
		expect(done).toEqual({ say: 3, square: 3 });
		expect(said({ ...state, values: { ...state.values, b: 6 } })).toEqual([16, 36, 25]);
		expect(done).toEqual({ say: 4, square: 4 });
	});

	test('goes no further where what was worked out comes to the same', () => {
		const { said, done } = watchedLedger();
		const state: State = { list: [a, b], values: { a: 4, b: 5 }, factor: 1 };
		const before = said(state);
		expect(said({ ...state, values: { a: -4, b: 5 } })).toBe(before);
		expect(done).toEqual({ say: 2, square: 3 });
	});

	test('asks about everything when what concerns everything has changed', () => {
		const { said, done } = watchedLedger();
		const state: State = { list: [a, b], values: { a: 4, b: 5 }, factor: 1 };
		said(state);
		expect(said({ ...state, factor: 2 })).toEqual([32, 50]);
		expect(done).toEqual({ say: 4, square: 2 });
	});

	test('looks past what has gone, and fails where that is still asked for', () => {
		const { said } = watchedLedger();
		const state: State = { list: [a, b], values: { a: 4, b: 5 }, factor: 1 };
		said(state);
		expect(said({ ...state, list: [a], values: { a: 4 } })).toEqual([16]);
		expect(() => said({ ...state, values: { a: 4 } })).toThrow('b');
		expect(said(state)).toEqual([16, 25]);
	});

	test('answers for any row of states as one that knows nothing of those before', () => {
		const list = fc.shuffledSubarray([a, b, c, { name: 'd' }, { name: 'e' }]);
		const values = fc.record({ a: fc.nat(6), b: fc.nat(6), c: fc.nat(6), d: fc.nat(6), e: fc.nat(6) });
		const states = fc.array(fc.record({ list, values, factor: fc.integer({ min: 1, max: 2 }) }), { minLength: 2, maxLength: 80 });
		fc.assert(
			fc.property(states, (row) => {
				const { said } = watchedLedger();
				for (const state of row) expect(said(state)).toEqual(watchedLedger().said(state));
			}),
			{ numRuns: 60 }
		);
	});
});
