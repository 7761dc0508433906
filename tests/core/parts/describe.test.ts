import { describe as suite, expect, test } from 'vitest';
import { describe, newParams } from '#core/parts';
import type { Param, Part } from '#core/diagram';

const part = (kind: string, params: Record<string, Param> = {}): Part => ({
	kind,
	label: '',
	at: { x: 0, y: 0 },
	rotation: 0,
	params: { ...newParams(kind), ...params },
	note: ''
});

suite('describing a part', () => {
	test('one bad value costs only itself and is reported', () => {
		const { params, problems } = describe(part('shunt', { ratedA: -1, millivolt: 75 }));
		expect(params).toMatchObject({ ratedA: 500, millivolt: 75 });
		expect(problems).toEqual(['Rating: -1 is not a possible value, 500 is used.']);
	});

	test('a property the kind does not have is reported', () => {
		expect(describe(part('shunt', { colour: 'red' })).problems).toEqual([
			'"colour" is not a property of this kind of part and is not used.'
		]);
	});

	test('a kind this build does not know has no terminals and no links', () => {
		const unknown = { ...part('shunt'), kind: 'flux-compensator' };
		const { definition, terminals, links, problems } = describe(unknown);
		expect({ definition, terminals, links }).toEqual({ definition: null, terminals: [], links: [] });
		expect(problems).toHaveLength(1);
	});

	test('is worked out once, and again only when parameters change', () => {
		const shunt = part('shunt');
		expect(describe({ ...shunt, at: { x: 9, y: 9 } })).toBe(describe(shunt));
		expect(describe({ ...shunt, kind: 'load' })).not.toBe(describe(shunt));
	});
});

suite('fuses for each position', () => {
	const fuses = (params: Record<string, Param>) => describe(part('fused-bus', params)).links.filter(({ kind }) => kind === 'protective');

	test('an empty position passes no current', () => {
		expect(fuses({ positions: 3, fuseA: [100, null, 40] }).map(({ id }) => id)).toEqual(['fuse-1', 'fuse-3']);
	});

	test('positions beyond the list are empty, values beyond the positions are not used', () => {
		expect(fuses({ positions: 4, fuseA: [100] })).toHaveLength(1);
		expect(fuses({ positions: 2, fuseA: [100, 100, 100] })).toHaveLength(2);
	});

	test('a bar joins both end studs through every position', () => {
		const segments = describe(part('fused-bus', { positions: 3 })).links.filter(({ kind }) => kind === 'segment');
		expect(segments.map((link) => ('between' in link ? link.between.join(' ') : ''))).toEqual(['L @1', '@1 @2', '@2 @3', '@3 R']);
	});
});
