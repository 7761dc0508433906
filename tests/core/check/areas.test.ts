/** Areas say what is around things: figures and rules follow them. */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { change, moveParts, type Area, type Diagram } from '#core/diagram';
import { createMemory } from '#core/memory';
import { circuit } from '../../support/circuit.ts';

const area = (like: Partial<Area>): Diagram['areas'] => ({
	A1: { label: 'Bay', at: { x: 0, y: 0 }, widthMm: 1000, heightMm: 1000, spaces: [], ambientC: null, ...like }
});
const wired = (areas: Diagram['areas']): Diagram => ({
	...circuit({ B1: ['battery', {}, { at: { x: 200, y: 200 } }], E1: ['load', { draw: 10 }, { at: { x: 3000, y: 200 } }] }, [
		['B1.pos', 'E1.pos', { gauge: '10', insulationC: 105 }],
		['B1.neg', 'E1.neg', { gauge: '10', insulationC: 105 }]
	]),
	areas
});
const amperage = (diagram: Diagram): number => checkDiagram(diagram).conductors['W1']!.ampacityA;

describe('amperage', () => {
	test('in an engine space is that of 33 CFR 183.425 Table 5 with the factor of its note 1 for 105 °C insulation', () => {
		// 10 AWG, 105 °C: 60 A; note 1: multiplied by 0.85.
		expect(amperage(wired({}))).toBe(60);
		expect(amperage(wired(area({ spaces: ['engine'] })))).toBeCloseTo(60 * 0.85, 9);
	});

	test('in hot air follows the ambient equation of NEC 310.15(B)(2), from a table for 30 °C', () => {
		expect(amperage(wired(area({ ambientC: 50 })))).toBeCloseTo(60 * Math.sqrt((105 - 50) / (105 - 30)), 9);
	});

	test('is not touched by an area the conductor does not reach', () => {
		expect(amperage(wired(area({ spaces: ['engine'], at: { x: 0, y: 5000 } })))).toBe(60);
	});
});

test('the estimated temperature starts from the air of the area', () => {
	const figures = checkDiagram(wired(area({ ambientC: 50 }))).conductors['W1']!;
	expect(figures.ambientC).toBe(50);
	expect(figures.workingC).toBeGreaterThan(50);
});

test('a switch in an area where petrol may gather is asked for ignition protection', () => {
	const rules = (areas: Diagram['areas']) => {
		const diagram = circuit({ Q1: ['battery-disconnect', {}, { at: { x: 200, y: 200 } }] }, []);
		return checkDiagram({ ...diagram, areas }).findings.map(({ rule }) => rule);
	};
	expect(rules({})).not.toContain('ignition-source');
	expect(rules(area({ spaces: ['fuel'] }))).toContain('ignition-source');
});

test('moving a part out of an area is seen by a check that remembers the one before', () => {
	const memory = createMemory();
	const hot = wired(area({ spaces: ['engine'] }));
	expect(checkDiagram(hot, memory).conductors['W1']!.ampacityA).toBeCloseTo(51, 9);
	const moved = change(hot, moveParts({ parts: ['B1'], by: { x: 0, y: 4000 } })).diagram;
	expect(checkDiagram(moved, memory)).toEqual(checkDiagram(moved));
	expect(checkDiagram(moved, memory).conductors['W1']!.ampacityA).toBe(60);
});
