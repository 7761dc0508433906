import { expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { buildStudy } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

/** Open-circuit volts from stud `b` to stud `a`. */
function volts(diagram: Diagram, a: string, b: string): number | null {
	const { nets, network } = buildStudy(diagram);
	return nets.voltsBetween(network.nodeOf.get(a)!, network.nodeOf.get(b)!);
}

const block = ['battery', { emfV: 12 }] as const;

test('volts add up along a string and through conductors, fuses and open switches', () => {
	const string = circuit({ b1: block, b2: block, f: ['inline-fuse'], s: ['battery-disconnect'] }, [
		['b1.pos', 'b2.neg'],
		['b2.pos', 'f.in'],
		['f.out', 's.in']
	]);
	expect(volts(string, 's.out', 'b1.neg')).toBe(24);
	expect(volts(string, 's.out', 'b2.neg')).toBe(12);
	expect(volts(string, 'b1.neg', 's.out')).toBe(-24);
	expect(volts(string, 'f.out', 'b2.pos')).toBe(0);
});

test('nothing is said across parts that share no metal', () => {
	expect(volts(circuit({ b1: block, b2: block }), 'b1.pos', 'b2.neg')).toBeNull();
	expect(volts(circuit({ b1: block, l: ['load'] }, [['b1.pos', 'l.pos']]), 'l.pos', 'l.neg')).toBeNull();
});

test('a charger sets the volts of a rail only where no battery does', () => {
	const charger = ['mains-charger', { setV: 14.4 }] as const;
	const alone = circuit({ c: charger, p: ['positive-bus'] }, [['c.pos', 'p.1']]);
	expect(volts(alone, 'p.4', 'c.neg')).toBe(14.4);
	const beside = circuit({ c: charger, b: block }, [
		['c.pos', 'b.pos'],
		['c.neg', 'b.neg']
	]);
	expect(volts(beside, 'c.pos', 'c.neg')).toBe(12);
});

test('a loop whose volts do not add up is named with all its batteries, and only with those', () => {
	const loop = circuit({ a: block, b1: block, b2: block, other: block }, [
		['other.pos', 'b1.neg'],
		['b1.pos', 'b2.neg'],
		['a.neg', 'b1.neg'],
		['a.pos', 'b2.pos']
	]);
	const { clashes } = buildStudy(loop).nets;
	expect(clashes).toHaveLength(1);
	expect(Math.abs(clashes[0]!.excessV)).toBe(12);
	expect(clashes[0]!.loop.map(({ part }) => part).toSorted()).toEqual(['a', 'b1', 'b2']);
});

test('a battery across its own posts is no loop', () => {
	expect(buildStudy(circuit({ b: block }, [['b.pos', 'b.neg']])).nets.clashes).toEqual([]);
});
