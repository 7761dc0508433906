import { describe, expect, test } from 'vitest';
import { AWG_SIZES, type Diagram } from '#core/diagram';
import { composeScene, sceneComposer, type DrawnItem } from '#core/drawing';
import { boxContainsBox, distanceToPolyline } from '#core/geometry';
import { PALETTES, svgOf, boundsOf } from '#core/graphics';
import { terminalPoint } from '#core/layout';
import { newParams, partDefinitions } from '#core/parts';
import { circuit } from '../../support/circuit.ts';

const system = (): Diagram =>
	circuit(
		{ b: ['battery'], f: ['fuse-block'], d: ['fused-bus'], l: ['load', { connection: 'studs' }] },
		[
			['f.post', 'd.L', { gauge: '2/0' }],
			['d.1', 'l.pos', { gauge: '6' }],
			['l.neg', 'b.neg', { gauge: '6' }]
		],
		{ mounts: { f: 'b.pos' } }
	);

const withPart = (diagram: Diagram, id: string, change: Partial<Diagram['parts'][string]>): Diagram => ({
	...diagram,
	parts: { ...diagram.parts, [id]: { ...diagram.parts[id]!, ...change } }
});

const strokesOf = ({ primitives }: DrawnItem) =>
	primitives.flatMap((p) => (p.kind === 'polyline' && p.stroke?.startsWith('conductor:') ? [p.stroke] : []));

describe('the scene of a diagram', () => {
	test('has an item for every part and every conductor between terminals that exist', () => {
		expect([...composeScene(system()).items.keys()].sort()).toEqual(
			['conductor:W1', 'conductor:W2', 'conductor:W3', 'part:b', 'part:d', 'part:f', 'part:l'].sort()
		);
	});

	test('an empty diagram has no bounds', () => {
		expect(composeScene(circuit({}, [])).bounds).toBeNull();
	});

	test('conductors run from their studs, and lie over parts; blocks lie over their hosts', () => {
		const diagram = system();
		const { items, order } = composeScene(diagram);
		const route = items.get('conductor:W1')!.route!;
		expect(route[0]).toEqual(terminalPoint(diagram, { part: 'f', terminal: 'post' }));
		expect(route.at(-1)).toEqual(terminalPoint(diagram, { part: 'd', terminal: 'L' }));
		expect(order.indexOf('part:f')).toBeGreaterThan(order.indexOf('part:b'));
		expect(order.indexOf('conductor:W1')).toBeGreaterThan(order.indexOf('part:f'));
	});

	test('a mounted block’s plate is its host’s stud, not a second one', () => {
		const keys = [...composeScene(system()).items.values()].flatMap(({ terminals }) => terminals.map(({ key }) => key));
		expect(keys).toContain('stud:b.pos');
		expect(keys).toContain('stud:f.post');
		expect(keys).not.toContain('stud:f.plate');
	});

	test('every kind of part is drawn within its item’s box', () => {
		const all = circuit(Object.fromEntries(partDefinitions.map(({ kind }) => [kind, [kind, newParams(kind)] as const])), []);
		const { items, bounds } = composeScene(all);
		for (const item of items.values()) {
			expect(boxContainsBox(item.box, boundsOf(item.primitives)), item.key).toBe(true);
			expect(boxContainsBox(item.box, boundsOf(item.labels)), item.key).toBe(true);
			expect(boxContainsBox(bounds!, item.box), item.key).toBe(true);
		}
	});

	test('a part of an unknown kind is drawn and named', () => {
		const diagram = withPart(system(), 'l', { kind: 'flux-compensator' });
		const item = composeScene(diagram).items.get('part:l')!;
		expect(item.terminals).toEqual([]);
		expect(svgOf(item.labels, item.box, PALETTES.light)).toContain('flux-compensator');
		expect(composeScene(diagram).items.has('conductor:W2')).toBe(false);
	});
});

describe('identity', () => {
	test('nothing changed: the same scene', () => {
		const diagram = system();
		const first = composeScene(diagram);
		expect(composeScene({ ...diagram }, {}, first)).toBe(first);
	});

	test('a moved part is drawn anew with what hangs on it, and nothing else', () => {
		const compose = sceneComposer();
		const diagram = system();
		const before = compose(diagram);
		const { x, y } = diagram.parts.l!.at;
		const after = compose(withPart(diagram, 'l', { at: { x, y: y + 100 } }));
		const kept = [...after.items.keys()].filter((key) => after.items.get(key) === before.items.get(key));
		expect(kept).toEqual(expect.arrayContaining(['part:b', 'part:f', 'part:d']));
		expect(kept).not.toContain('part:l');
		expect(kept).not.toContain('conductor:W2');
	});

	test('a renamed conductor is drawn anew', () => {
		const diagram = system();
		const before = composeScene(diagram);
		const renamed = { ...diagram, conductors: { ...diagram.conductors, W1: { ...diagram.conductors.W1!, label: 'C9' } } };
		const after = composeScene(renamed, {}, before);
		expect(after.items.get('conductor:W1')).not.toBe(before.items.get('conductor:W1'));
		expect(after.items.get('conductor:W3')).toBe(before.items.get('conductor:W3'));
	});

	test('a block moves with its host', () => {
		const diagram = system();
		const before = composeScene(diagram);
		const after = composeScene(withPart(diagram, 'b', { at: { x: -500, y: 0 } }), {}, before);
		expect(after.items.get('part:f')).not.toBe(before.items.get('part:f'));
	});
});

describe('conductors', () => {
	test('grow thicker with their gauge', () => {
		const widths = AWG_SIZES.map((gauge) => {
			const diagram = circuit({ a: ['link-post'], b: ['link-post'] }, [['a.stud', 'b.stud', { gauge }]]);
			return composeScene(diagram).items.get('conductor:W1')!.widthMm;
		});
		widths.slice(1).forEach((width, index) => expect(width).toBeGreaterThan(widths[index]!));
	});

	test('take their colour from scheme and pole', () => {
		const colours = (colourScheme: Diagram['colourScheme'], negative: Diagram['system']['negative'] = 'insulated') => {
			const { items } = composeScene({ ...system(), colourScheme, system: { nominalV: 12, craft: 'boat', negative } });
			return [...strokesOf(items.get('conductor:W1')!), ...strokesOf(items.get('conductor:W3')!)];
		};
		expect(colours('abyc')).toEqual(['conductor:red', 'conductor:black']);
		// Lessons in Electric Circuits, reference volume, wiring colour codes (IEC): L+ brown, L− grey, M blue.
		expect(colours('iec-60446')).toEqual(['conductor:brown', 'conductor:grey']);
		expect(colours('iec-60446', 'bonded')).toEqual(['conductor:brown', 'conductor:blue']);
	});

	test('keep a colour of their own', () => {
		const diagram = system();
		const own = { ...diagram, conductors: { ...diagram.conductors, W1: { ...diagram.conductors.W1!, colour: 'orange' as const } } };
		expect(strokesOf(composeScene(own).items.get('conductor:W1')!)).toEqual(['conductor:orange']);
	});

	test('poles differ without colour: marks on positive and negative are not the same', () => {
		const { items } = composeScene(system());
		const marks = (key: 'conductor:W1' | 'conductor:W3') =>
			items
				.get(key)!
				.primitives.flatMap((p) => (p.kind === 'rect' && p.fill?.startsWith('conductor:') ? [`${p.w > p.h ? '−' : '|'}`] : []));
		expect(marks('conductor:W1')).toContain('|');
		expect(marks('conductor:W3')).toContain('−');
		expect(marks('conductor:W3')).not.toContain('|');
	});

	test('a bond to the chassis is green', () => {
		const diagram = circuit({ n: ['negative-bus'], c: ['chassis-point'] }, [['n.1', 'c.stud']]);
		expect(strokesOf(composeScene(diagram).items.get('conductor:W1')!)).toEqual(['conductor:green']);
	});

	test('a post may be left by any side: the one that faces the other end', () => {
		const diagram = circuit({ a: ['link-post', {}, { at: { x: 0, y: 0 } }], b: ['link-post', {}, { at: { x: 400, y: 0 } }] }, [
			['a.stud', 'b.stud']
		]);
		expect(composeScene(diagram).items.get('conductor:W1')!.route).toEqual([
			{ x: 0, y: 0 },
			{ x: 400, y: 0 }
		]);
	});

	test('tags lie on their conductor and name gauge and label', () => {
		const item = composeScene(system()).items.get('conductor:W1')!;
		expect(item.labels.flatMap((p) => (p.kind === 'text' ? [p.text] : []))).toEqual(['W1 · 2/0 AWG']);
		const tag = item.labels.find((p) => p.kind === 'text')!;
		expect(distanceToPolyline(tag, item.route!)).toBeCloseTo(0, 6);
	});
});
