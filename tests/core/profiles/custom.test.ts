import { describe, expect, test } from 'vitest';
import { emptyDiagram, newConductor, parseDiagram, serializeDiagram, type Diagram } from '#core/diagram';
import { profileNumbers, profileOf, PROFILES, unknownNumbers } from '#core/profiles';

const custom = (base: string, numbers: Record<string, number>): Diagram => ({
	...emptyDiagram(),
	profile: 'custom',
	customProfile: { base, numbers }
});
const MILD = { outsideC: 30, engineSpaceC: 50 };
const conductor = newConductor({ part: 'a', terminal: 'b' }, { part: 'c', terminal: 'd' });

describe('a custom profile', () => {
	test('is its base with some numbers changed, and says which', () => {
		const changed = profileOf(custom('us-small-craft', { deviceFactor: 1.2, 'cfr-5:10:105': 50, 'engine-space:105': 0.8 }));
		const law = PROFILES['us-small-craft'];
		expect(changed).toMatchObject({ id: 'custom', basedOn: 'us-small-craft', name: 'Custom, from US small craft (33 CFR 183)' });
		expect(changed.overcurrent.factor(12)).toMatchObject({ value: 1.2, confidence: 'given' });
		expect(changed.overcurrent.factor(12).source).toContain('in place of 1.5 × (33 CFR 183.455(c)(1))');
		expect(changed.overcurrent.unsheathedM).toMatchObject(law.overcurrent.unsheathedM);

		const amperage = changed.ampacity({ ...conductor, environment: 'engine-space' }, 12, MILD);
		expect(amperage.currentA).toBeCloseTo(40, 9);
		expect(amperage.table).toContain('custom profile of this diagram, in place of 60 A');
		expect(law.ampacity(conductor, 12, MILD).currentA).toBe(60);
		expect(profileNumbers(changed).filter(({ changedFrom }) => changedFrom !== null)).toHaveLength(3);
	});

	test('turns a number from memory into one that was entered', () => {
		const changed = profileOf(custom('metric-small-craft', { 'iso-13297:25:105': 155 }));
		const { currentA, unverified } = changed.ampacity({ ...conductor, gauge: { system: 'iec', size: '25' } }, 12, MILD);
		expect(currentA).toBe(155);
		expect(unverified).toBe(false);
	});

	test('of nothing, or from a base no one knows, is common practice', () => {
		for (const diagram of [custom('common-practice', {}), custom('of-the-future', {}), { ...custom('caravan', {}), customProfile: null }]) {
			const { basedOn, numbers } = profileOf(diagram);
			expect(basedOn).toBe('common-practice');
			expect(numbers).toEqual(PROFILES['common-practice'].numbers);
		}
	});

	test('is only asked when it is chosen', () => {
		const waiting = { ...custom('us-small-craft', { deviceFactor: 1.2 }), profile: 'caravan' };
		expect(profileOf(waiting)).toBe(PROFILES.caravan);
	});

	test('keeps numbers it does not know, and lists them', () => {
		const diagram = custom('us-small-craft', { 'iso-13297:25:105': 155, deviceFactor: 1.2 });
		expect(unknownNumbers(diagram)).toEqual(['iso-13297:25:105']);
		expect(unknownNumbers({ ...diagram, profile: 'caravan' })).toEqual([]);
	});

	test('every number can be changed', () => {
		for (const { key } of PROFILES['rv-nec-552'].numbers) {
			const found = profileOf(custom('rv-nec-552', { [key]: 0.123 })).numbers.find((number) => number.key === key);
			expect(found).toMatchObject({ value: 0.123, confidence: 'given' });
		}
	});
});

test('files from before there were custom profiles open with none', () => {
	const { customProfile, ...older } = emptyDiagram();
	expect(customProfile).toBeNull();
	const result = parseDiagram(JSON.stringify(older));
	expect(result.ok && result.diagram.customProfile).toBeNull();
	const kept = parseDiagram(serializeDiagram(custom('caravan', { deviceFactor: 1.1 })));
	expect(kept.ok && kept.diagram.customProfile).toEqual({ base: 'caravan', numbers: { deviceFactor: 1.1 } });
});
