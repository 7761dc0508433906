import { describe, expect, test } from 'vitest';
import { airAroundC, areaAt, areaOfPart, spacesOfPart, surroundingsOf, type Area, type Diagram } from '#core/diagram';
import { smallDiagram } from '../../support/small-diagram.ts';

const area = (label: string, x: number, y: number, size: number, like: Partial<Area> = {}): Area => ({
	label,
	at: { x, y },
	widthMm: size,
	heightMm: size,
	spaces: [],
	ambientC: null,
	...like
});
const small = smallDiagram();
/** B1 with its block at 0, 0; D1 at 400, 0; P1 at 800, 0. C2 runs from D1 to P1. */
const inAreas = (areas: Record<string, Area>): Diagram => ({ ...small, areas });
const c2 = small.conductors['C2']!;

describe('where a part is', () => {
	const cabin = area('Cabin', -500, -500, 1500);
	const bay = area('Battery bay', -100, -100, 200, { spaces: ['fuel'], ambientC: 45 });

	test('the smallest area around it counts', () => {
		const diagram = inAreas({ A1: cabin, A2: bay });
		expect(areaOfPart(diagram, 'B1')!.label).toBe('Battery bay');
		expect(areaOfPart(diagram, 'P1')!.label).toBe('Cabin');
		expect(areaAt(diagram, { x: 5000, y: 0 })).toBeNull();
	});

	test('a block is where the part is that carries it, wherever its own record says', () => {
		const diagram = inAreas({ A2: bay });
		const moved = { ...diagram, parts: { ...diagram.parts, F1: { ...diagram.parts['F1']!, at: { x: 9000, y: 0 } } } };
		expect(spacesOfPart(moved, 'F1')).toEqual(['fuel']);
	});

	test('its air is that of the area, or of the diagram', () => {
		expect(airAroundC(inAreas({ A2: bay }), 'B1', false)).toBe(45);
		expect(airAroundC(inAreas({ A1: cabin }), 'B1', false)).toBe(small.ambient.outsideC);
		expect(airAroundC(inAreas({}), 'B1', true)).toBe(small.ambient.engineSpaceC);
	});
});

describe('what a conductor runs through', () => {
	const engine = area('Engine', 300, -100, 200, { spaces: ['engine'] });

	test('without areas, what is set on it', () => {
		expect(surroundingsOf(small, c2)).toEqual({ environment: 'outside', ambientC: 30, area: null });
	});

	test('an area around one of its ends', () => {
		expect(surroundingsOf(inAreas({ A1: engine }), c2)).toEqual({ environment: 'engine-space', ambientC: 50, area: 'Engine' });
	});

	test('of two, the engine space before a hotter place, and the hotter before the cooler', () => {
		const hot = area('Roof', 700, -100, 200, { ambientC: 70 });
		expect(surroundingsOf(inAreas({ A1: engine, A2: hot }), c2).area).toBe('Engine');
		const warm = area('Bay', 300, -100, 200, { ambientC: 45 });
		expect(surroundingsOf(inAreas({ A1: warm, A2: hot }), c2)).toEqual({ environment: 'outside', ambientC: 70, area: 'Roof' });
	});

	test('a cold place cools nothing that also runs elsewhere', () => {
		const cold = area('Freezer', 300, -100, 200, { ambientC: -18 });
		expect(surroundingsOf(inAreas({ A1: cold }), c2).ambientC).toBe(30);
	});

	test('a bend set by hand leads through an area', () => {
		const through = { ...c2, bends: [{ x: 600, y: 900 }] };
		const far = area('Engine', 500, 800, 200, { spaces: ['engine'], ambientC: 65 });
		expect(surroundingsOf(inAreas({ A1: far }), through)).toEqual({ environment: 'engine-space', ambientC: 65, area: 'Engine' });
	});

	test('what was set by hand stays', () => {
		const own = { environment: 'outside', ambientC: 30, area: null };
		expect(surroundingsOf(inAreas({ A1: engine }), { ...c2, placedByHand: true })).toEqual(own);
		expect(surroundingsOf(inAreas({}), { ...c2, environment: 'engine-space' }).ambientC).toBe(50);
	});
});
