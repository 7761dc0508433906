import { describe as suite, expect, test } from 'vitest';
import { describe, type Link } from '#core/parts';
import type { Param } from '#core/diagram';

const described = (kind: string, params: Record<string, Param> = {}) =>
	describe({ kind, label: '', at: { x: 0, y: 0 }, rotation: 0, params, note: '' });

const link = <Kind extends Link['kind']>(kind: string, params: Record<string, Param>, wanted: Kind) =>
	described(kind, params).links.find((l): l is Extract<Link, { kind: Kind }> => l.kind === wanted)!;

suite('battery', () => {
	// Common practice, no source: 0.25 Ω·Ah per block of four cells, 5 mΩ in use; lead-acid 0.45 Ω·Ah per 12 V block.
	test('lithium iron phosphate: resistance into a short falls with capacity and rises with cells in series', () => {
		expect(link('battery', { capacityAh: 200 }, 'battery').faultResistanceOhm).toBeCloseTo(0.00125, 9);
		expect(link('battery', { capacityAh: 100, nominalV: 48 }, 'battery')).toMatchObject({
			faultResistanceOhm: 0.01,
			resistanceOhm: 0.02,
			emfV: 52.8,
			faultEmfV: 54.4
		});
	});

	test('lead-acid', () => {
		const { faultResistanceOhm, resistanceOhm, emfV } = link('battery', { chemistry: 'lead-acid', capacityAh: 150 }, 'battery');
		expect(faultResistanceOhm).toBeCloseTo(0.003, 9);
		expect(resistanceOhm).toBeCloseTo(0.0045, 9);
		expect(emfV).toBe(12.6);
	});

	test('figures from a data sheet go before those', () => {
		const { resistanceOhm, faultResistanceOhm, faultEmfV } = link(
			'battery',
			{ resistanceMilliohm: 0.8, faultResistanceMilliohm: 3.2, faultEmfV: 12.9 },
			'battery'
		);
		expect(resistanceOhm).toBeCloseTo(0.0008, 9);
		expect(faultResistanceOhm).toBeCloseTo(0.0032, 9);
		expect(faultEmfV).toBe(12.9);
	});
});

test('a 500 A, 50 mV shunt has 0.1 mΩ, by Ohm’s law', () => {
	expect(link('shunt', {}, 'shunt').resistanceOhm).toBeCloseTo(0.0001, 12);
});

test('a copper bar of 25 × 6 mm loses about 0.12 mΩ a metre', () => {
	// IEC 60028: annealed copper 1/58 Ω·mm²/m at 20 °C, hence 0.1149 mΩ/m; warm and in service a little more.
	const { resistanceOhm } = link('positive-bus', { sectionMm2: 150, pitchMm: 100 }, 'segment');
	expect((resistanceOhm / 0.1) * 1000).toBeGreaterThan(0.1149);
	expect((resistanceOhm / 0.1) * 1000).toBeLessThan(0.1149 * 1.1);
});

suite('converters', () => {
	test('input and output negatives are joined unless isolated', () => {
		const joined = (params: Record<string, Param>) => described('dcdc-charger', params).links.some(({ id }) => id === 'common-negative');
		expect(joined({ isolated: false })).toBe(true);
		expect(joined({ isolated: true })).toBe(false);
	});

	test('the input follows the output, or is fed from outside the drawing', () => {
		expect(link('dcdc-converter', {}, 'source')).toMatchObject({ fedBy: 'input', alwaysOn: true });
		expect(link('dcdc-converter', {}, 'load').followsSource).toBe('output');
		expect(link('dcdc-charger', { inputFrom: 'outside' }, 'source').fedBy).toBeNull();
		expect(link('dcdc-charger', { inputFrom: 'outside' }, 'load')).toBeUndefined();
	});

	test('an inverter draws its output over its efficiency, whatever the voltage', () => {
		expect(link('inverter', { watts: 1800, efficiency: 0.9 }, 'load').draw).toEqual({ kind: 'power', watts: 2000 });
	});
});

suite('where terminals are studs', () => {
	test('a blade fuse in line has tails, a strip fuse has studs, and either can be said', () => {
		const kinds = (params: Record<string, Param>) => described('inline-fuse', params).terminals.map(({ kind }) => kind);
		expect(kinds({ family: 'blade-regular' })).toEqual(['clamp', 'clamp']);
		expect(kinds({ family: 'class-t' })).toEqual(['stud', 'stud']);
		expect(kinds({ family: 'class-t', connection: 'clamps' })).toEqual(['clamp', 'clamp']);
	});

	test('usable length follows the thread until it is measured', () => {
		const length = (params: Record<string, Param>) => described('fused-bus', params).terminal('L')!.usableLengthMm;
		expect(length({ endThread: 'M8' })).toBe(20);
		expect(length({ endThread: 'M10' })).toBe(25);
		expect(length({ endThread: 'M10', endUsableMm: 18 })).toBe(18);
	});

	test('the fuse of a block sits on its post; the plate takes no lug', () => {
		const { terminals } = described('twin-fuse-block');
		expect(terminals.map(({ id, fuseInStack, mountingPlate }) => [id, fuseInStack, mountingPlate])).toEqual([
			['plate', undefined, true],
			['a', 'fuse-a', undefined],
			['b', 'fuse-b', undefined]
		]);
	});
});
