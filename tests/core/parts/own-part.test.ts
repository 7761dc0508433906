import { describe as suite, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { parseDiagram, serializeDiagram, type Param } from '#core/diagram';
import { describe, newParams, ownFaults, ownParams, parseParts, partsFile, type OwnParams } from '#core/parts';
import { circuit } from '../../support/circuit.ts';

type Given = Partial<Record<keyof OwnParams, unknown>>;
const own = (given: Given): OwnParams => ownParams.parse(given);
const params = (given: Given) => own(given) as unknown as Record<string, Param>;

const twoPoles = [
	{ id: 's1', name: '+', role: 'positive', leftMm: 30, topMm: 20 },
	{ id: 's2', name: '−', role: 'negative', leftMm: 90, topMm: 20 }
];
const heater = {
	name: 'Heater',
	studs: twoPoles,
	devices: [{ does: 'load', id: 'd1', positive: 's1', negative: 's2', drawAs: 'resistance', draw: 2.4 }]
};

suite('a part of somebody’s own', () => {
	test('as it comes it has a place for each pole and nothing is wrong with it', () => {
		expect(ownFaults(own({}))).toEqual([]);
		const { terminals, name, summary } = describe({
			kind: 'own-part',
			label: '',
			at: { x: 0, y: 0 },
			rotation: 0,
			params: newParams('own-part'),
			note: ''
		});
		expect(terminals.map(({ label, role, at }) => [label, role, at])).toEqual([
			['+', 'positive', { x: -30, y: -25 }],
			['−', 'negative', { x: 30, y: -25 }]
		]);
		expect([name, summary]).toEqual(['Own part', '']);
	});

	test('draws through what is inside it', () => {
		const inside = {
			...heater,
			links: [{ kind: 'plain', id: 'l1', from: 's1', to: '@1', milliohm: 300 }],
			devices: [{ ...heater.devices[0], positive: '@1' }]
		};
		const diagram = circuit(
			{
				b: [
					'own-part',
					params({ studs: twoPoles, devices: [{ does: 'battery', id: 'd1', positive: 's1', negative: 's2', emfV: 12, milliohm: 300 }] })
				],
				h: ['own-part', params(inside)]
			},
			[
				['b.s1', 'h.s1', { lengthM: 0.01 }],
				['b.s2', 'h.s2', { lengthM: 0.01 }]
			]
		);
		const { conductors } = checkDiagram(diagram);
		// 12 V / (0.3 + 0.3 + 2.4) Ω, the conductors being under a milliohm.
		expect(conductors['W1']!.continuousA).toBeCloseTo(4, 2);
	});

	test('is judged as the built-in part with the same ratings', () => {
		const fuse = (kind: string, given: Record<string, Param>, [a, b]: readonly [string, string]) =>
			checkDiagram(
				circuit({ b: ['battery'], f: [kind, given], e: ['load', { draw: 40 }] }, [
					['b.pos', `f.${a}`, { gauge: '6' }],
					[`f.${b}`, 'e.pos', { gauge: '14' }],
					['e.neg', 'b.neg', { gauge: '6' }]
				])
			);
		const holder = params({
			name: 'Holder',
			studs: [
				{ id: 'in', name: 'in', thread: 'clamp', leftMm: 10, topMm: 20, most: 1 },
				{ id: 'out', name: 'out', thread: 'clamp', leftMm: 60, topMm: 20, most: 1 }
			],
			links: [{ kind: 'fuse', id: 'fuse', from: 'in', to: 'out', ratingA: 60, family: 'blade-large' }]
		});
		const built = fuse('inline-fuse', { fuseA: 60, family: 'blade-large' }, ['in', 'out']);
		const mine = fuse('own-part', holder, ['in', 'out']);
		const rules = (result: typeof built) => result.findings.map(({ rule }) => rule).toSorted();
		expect(rules(mine)).toEqual(rules(built));
		expect(rules(mine)).toContain('oversized-protection');
		expect(mine.conductors['W2']!.letThroughA).toEqual(built.conductors['W2']!.letThroughA);
	});

	test('is in the diagram’s file as it was made', () => {
		const diagram = circuit({ h: ['own-part', params(heater)] });
		const read = parseDiagram(serializeDiagram(diagram));
		expect(read.ok && read.diagram.parts['h']).toEqual(diagram.parts['h']);
	});

	test.each<[string, Given, string]>([
		['no name', { name: ' ' }, 'name'],
		['no stud', { studs: [] }, 'studs'],
		['two studs of one name', { studs: [twoPoles[0], { ...twoPoles[1], name: '+' }] }, 'studs.1.name'],
		['two studs in one place', { studs: [twoPoles[0], { ...twoPoles[1], leftMm: 31 }] }, 'studs.1.leftMm'],
		['a stud off the part', { studs: [twoPoles[0], { ...twoPoles[1], leftMm: 121 }] }, 'studs.1.leftMm'],
		['a stud below the part', { studs: [twoPoles[0], { ...twoPoles[1], topMm: 91 }] }, 'studs.1.topMm'],
		['an id used twice', { studs: [twoPoles[0], { ...twoPoles[1], id: 's1' }] }, 'studs.1.id'],
		['a link to nowhere', { studs: twoPoles, links: [{ kind: 'plain', id: 'l', from: 's1', to: 's9' }] }, 'links.0.to'],
		['a link that ends where it begins', { studs: twoPoles, links: [{ kind: 'switch', id: 'l', from: 's1', to: 's1' }] }, 'links.0.to'],
		['a load on one stud', { studs: twoPoles, devices: [{ ...heater.devices[0], negative: 's1' }] }, 'devices.0.negative'],
		[
			'a converter whose output is one stud',
			{ studs: twoPoles, devices: [{ does: 'converter', id: 'd', positive: 's1', negative: 's2', outPositive: 's1', outNegative: 's1' }] },
			'devices.0.outNegative'
		]
	])('%s is said beside the field', (_, given, path) => {
		expect(ownFaults(own(given)).map((fault) => fault.path)).toContain(path);
		// What is wrong is left out; the rest of the part stays sound.
		const { links, problems } = describe({ kind: 'own-part', label: '', at: { x: 0, y: 0 }, rotation: 0, params: params(given), note: '' });
		expect(links).toEqual([]);
		expect(problems.length).toBeGreaterThan(0);
	});
});

suite('a file of parts', () => {
	test('gives back what was put in', () => {
		const parts = [own(heater), own({ name: 'Other' })];
		expect(parseParts(partsFile(parts))).toEqual({ ok: true, parts });
	});

	const text = partsFile([own(heater)]);
	const spoilt = (change: (raw: { parts: Record<string, unknown>[] } & Record<string, unknown>) => void): string => {
		const raw = JSON.parse(text);
		change(raw);
		return JSON.stringify(raw);
	};

	test.each<[string, string, RegExp]>([
		['nothing', '', /empty/],
		['half a file', text.slice(0, 80), /cut short/],
		['a diagram', '{"format": "wireworthy-diagram"}', /not a file of parts/],
		['too much', `"${'x'.repeat(2_000_000)}"`, /too large/],
		['a deep nest', '['.repeat(200_000), /not JSON/],
		['a reserved name', text.replace('"name": "Heater"', '"__proto__": {"x": 1}'), /reserved/],
		['a reserved id', spoilt(({ parts }) => ((parts[0]!['studs'] as { id: string }[])[0]!.id = 'constructor')), /reserved/],
		['a later version', spoilt((raw) => (raw['version'] = 2)), /version/],
		['no parts', spoilt((raw) => (raw.parts = [])), /parts/],
		['too many parts', spoilt((raw) => (raw.parts = Array(201).fill(raw.parts[0]))), /200/],
		['too many studs', spoilt(({ parts }) => (parts[0]!['studs'] = Array(41).fill((parts[0]!['studs'] as unknown[])[0]))), /40/],
		['a width nobody has', spoilt(({ parts }) => (parts[0]!['widthMm'] = 1e9)), /1000/],
		['a field it does not have', spoilt(({ parts }) => (parts[0]!['colour'] = 'red')), /colour/],
		['a link to nowhere', spoilt(({ parts }) => ((parts[0]!['devices'] as { positive: string }[])[0]!.positive = 's9')), /no stud "s9"/]
	])('%s is refused in words', (_, given, words) => {
		const result = parseParts(given);
		expect(result.ok).toBe(false);
		if (result.ok) return;
		const [{ what, why, remedy }] = result.problems;
		expect(`${what} ${why} ${remedy}`).toMatch(words);
	});
});
