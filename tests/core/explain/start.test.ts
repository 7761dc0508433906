/**
 * A start worked by hand. 12.8 V battery behind 10 mΩ, a 20 A blade fuse (80 mV at its rating: 4 mΩ), a pump of 8 A
 * that draws six times as much for half a second: 48 A, 2.4 times the fuse's rating.
 *
 * The blade curve itself is from memory and no oracle: times are only compared with what the table says at its gates.
 */
import { describe, expect, test } from 'vitest';
import type { Param } from '#core/diagram';
import { explain, partFigures, startOf } from '#core/explain';
import { buildStudy } from '#core/rules';
import { fuseTimes, timeAt } from '#core/tables';
import { circuit } from '../../support/circuit.ts';
import { holdsThroughout } from '../../support/explained.ts';

const pump = (load: Record<string, Param>, fuseA = 20) =>
	buildStudy(
		circuit(
			{
				b: ['battery', { emfV: 12.8, resistanceMilliohm: 10 }],
				f: ['inline-fuse', { fuseA, family: 'blade-regular' }],
				l: ['load', { draw: 8, startTimes: 6, ...load }]
			},
			[
				['b.pos', 'f.in', { gauge: '10', lengthM: 1 }],
				['f.out', 'l.pos', { gauge: '10', lengthM: 4 }],
				['l.neg', 'b.neg', { gauge: '10', lengthM: 5 }]
			]
		)
	);
const ref = { part: 'l', link: 'load' };

test('six times 8 A flow, and the volts dip by 40 A times all that is in the way', () => {
	const study = pump({ startS: 0.5 });
	const { before, during, times } = startOf(study, ref)!;
	expect(times).toBe(6);
	expect(during.point.loadA[0]).toBeCloseTo(48, 9);
	// ASTM B258: 10 AWG is 5.261 mm². Ten metres of it there and back, six lugs of 0.2 mΩ, 4 mΩ in the fuse, 10 mΩ in the battery.
	const ohm = (0.01787 * 10) / 5.261 + 6 * 0.0002 + 0.004 + 0.01;
	expect(before.point.loadV[0]! - during.point.loadV[0]!).toBeCloseTo(40 * ohm, 3);
	for (const figure of ['current', 'volts', 'dip'] as const) holdsThroughout(study, explain(study, { of: 'start', ...ref, figure })!);
});

describe('whether the fuse before it holds', () => {
	const { earliest, latest } = fuseTimes('blade-regular').value;
	const [from, by] = [timeAt(earliest, 2.4), timeAt(latest, 2.4)];

	test.each([
		['holds', from / 2],
		['may-open', (from + by) / 2],
		['opens', Math.min(300, by * 2)]
	] as const)('%s', (verdict, startS) => {
		const [device] = startOf(pump({ startS }), ref)!.devices;
		expect(device).toMatchObject({ name: 'F', currentA: expect.closeTo(48, 6) as number, verdict });
	});
	test('a start within what it carries for good is held however long it lasts', () => {
		expect(startOf(pump({ startS: null }, 100), ref)!.devices[0]).toMatchObject({ verdict: 'holds' });
	});
	test('not known how long: no verdict, and the details ask for it', () => {
		const study = pump({ startS: null });
		expect(startOf(study, ref)!.devices[0]!.verdict).toBeNull();
		expect(
			partFigures(study, 'l')
				.flatMap(({ says }) => says)
				.join()
		).toMatch(/depends on how long the start lasts/);
	});
	test('the times open to gates of the curve, marked as not verified', () => {
		const study = pump({ startS: 0.5 });
		for (const [figure, seconds] of [
			['opens-from', from],
			['opens-by', by]
		] as const) {
			const found = explain(study, { of: 'start-device', ...ref, device: { part: 'f', link: 'fuse' }, figure })!;
			expect(found.value).toBeCloseTo(seconds, 9);
			expect(found.confidence).toBe('memory');
			holdsThroughout(study, found);
		}
	});
});

test('a load that starts like it runs, and one that never runs, have no start', () => {
	expect(startOf(pump({ startTimes: null }), ref)).toBeNull();
	const idle = buildStudy(circuit({ b: ['battery'], l: ['load', { draw: 5, startTimes: 3 }] }, []));
	expect(startOf(idle, ref)).toBeNull();
});
