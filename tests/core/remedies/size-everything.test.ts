import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { gaugeText } from '#core/conductors';
import { change, editConductors, editPart, type Diagram } from '#core/diagram';
import { sizeEverything } from '#core/remedies';
import { circuit } from '../../support/circuit.ts';
import { changed, example } from '../../support/examples/figures.ts';

/** One critical load on 12 V, 6 m away, with a fuse in the run. */
const lamp = (gauge: string, fuseA: number, draw = 6) =>
	circuit(
		{
			b: ['battery', { capacityAh: 100 }],
			// Any short is broken, whatever the family.
			f: ['inline-fuse', { fuseA, breakingA: 20_000 }],
			l: ['load', { draw, critical: true }]
		},
		[
			['b.pos', 'f.in', { gauge, lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge, lengthM: 6 }],
			['l.neg', 'b.neg', { gauge, lengthM: 6.1 }]
		]
	);

const size = (diagram: Diagram, id: string) => gaugeText(diagram.conductors[id]!.gauge);

describe('sizing everything', () => {
	test('finds the least copper for a drop of 3 %', () => {
		const sized = sizeEverything(lamp('14', 30)).preview();
		// ABYC's formula, CM = 10.75 × I × feet there and back / V = 10.75 × 6 × 39.7 / 0.36 = 7113: 12 AWG is 6530, 10 AWG 10 380.
		// One 12 and one 10 AWG lose 6 × 6.1 × (5.40 + 3.40) mΩ = 0.32 V, within 0.36 V with joints and fuse or not.
		expect(sized.errorsAfter).toBe(0);
		expect(['10 AWG', '12 AWG']).toContain(size(sized.diagram, 'W2'));
		expect(['10 AWG', '12 AWG']).toContain(size(sized.diagram, 'W3'));
		expect([size(sized.diagram, 'W2'), size(sized.diagram, 'W3')]).toContain('10 AWG');
	});

	test('fits the smallest fuse that carries the load with room to spare', () => {
		// 6 A / 0.8 = 7.5 A, a rating blade fuses have.
		const { fuses } = sizeEverything(lamp('8', 30));
		expect(fuses).toMatchObject([{ part: 'f', link: 'fuse', fromA: 30, toA: 7.5 }]);
	});

	test('saves copper where there is too much', () => {
		const { copperKgBefore, copperKgAfter, command } = sizeEverything(lamp('2', 30));
		// 12.2 m of 2 AWG, 33.6 mm², at 8.96 g/cm³: 3.68 kg.
		expect(copperKgBefore).toBeCloseTo(3.68, 1);
		expect(copperKgAfter).toBeLessThan(0.7);
		expect(command).not.toBeNull();
	});

	test('keeps what is pinned and says what that costs', () => {
		const diagram = lamp('16', 7.5, 6);
		const { conductors, left, preview } = sizeEverything(diagram, { pinned: { conductors: ['W2', 'W3'], fuses: ['f'] } });
		expect(conductors.map(({ id }) => id)).not.toContain('W2');
		expect(size(preview().diagram, 'W3')).toBe('16 AWG');
		expect(left.map(({ finding, why }) => [finding.rule, why])).toEqual([['voltage-drop', 'What it is about keeps its size.']]);
	});

	test('keeps what the diagram pins, and names it', () => {
		const diagram = changed(
			lamp('16', 30),
			editConductors({ conductors: ['W2'], set: { pinned: true } }),
			editPart({ part: 'f', set: { pinned: true } })
		);
		const { conductors, fuses, kept } = sizeEverything(diagram);
		expect(kept).toEqual({ conductors: ['W2'], parts: ['f'] });
		expect(conductors.map(({ id }) => id)).not.toContain('W2');
		expect(fuses).toEqual([]);
	});

	test('says why no thinner', () => {
		const { conductors, fuses } = sizeEverything(lamp('14', 30));
		// 14 AWG loses 6 × 12.1 × 8.6 mΩ = 0.62 V in all, more than 3 % of 12 V.
		expect(conductors.find(({ to }) => gaugeText(to) === '10 AWG')!.why).toBe(
			'carries 6 A; 12 AWG would not pass “A load gets the voltage it needs”'
		);
		expect(fuses[0]!.why).toBe('carries 6 A, at most 80 % of 7.5 A');
	});

	test('says what size does not mend', () => {
		const bare = circuit({ b: ['battery'], l: ['load', { draw: 20 }] }, [
			['b.pos', 'l.pos', { lengthM: 3 }],
			['l.neg', 'b.neg', { lengthM: 3 }]
		]);
		const { left } = sizeEverything(bare);
		expect(left.map(({ finding, why }) => [finding.rule, why])).toContainEqual([
			'unprotected-conductor',
			'No size of conductor or fuse mends this.'
		]);
	});

	test('changes nothing the second time', () => {
		const once = sizeEverything(lamp('14', 30)).preview().diagram;
		expect(sizeEverything(once).command).toBeNull();
	});

	test.each(['ridge-post-after', 'otters-reach-after', 'skarv-fell-after'])(
		'%s passes, with less copper where its fuses were generous',
		(name) => {
			const diagram = example(name);
			const sizing = sizeEverything(diagram);
			const after = change(diagram, sizing.command!).diagram;
			expect(
				checkDiagram(after)
					.findings.filter(({ severity }) => severity === 'error' || severity === 'fatal')
					.map(({ key, message }) => [key, message])
			).toEqual([]);
			expect(sizing.left).toEqual([]);
			// The boat's fuses grow to let its pump and fridge start, and their conductors with them.
			if (name !== 'otters-reach-after') expect(sizing.copperKgAfter).toBeLessThan(sizing.copperKgBefore);
		},
		60_000
	);
});
