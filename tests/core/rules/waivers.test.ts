import { describe, expect, test } from 'vitest';
import { countAccepted, countFindings, countText } from '#core/check';
import { change, waiveFinding, type Diagram } from '#core/diagram';
import { buildStudy, fingerprintOf, idleWaivers, isOpen, runRules, RULES, type Finding } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

const rule = RULES.filter(({ meta }) => meta.id === 'undersized-conductor');

/** A 16 AWG feed that carries `drawA`; 25 A is its amperage by 33 CFR 183.425 Table 5. */
const feed = (drawA: number): Diagram =>
	circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 40 }], l: ['load', { draw: drawA }] }, [
		['b.pos', 'f.in'],
		['f.out', 'l.pos', { gauge: '16' }],
		['l.neg', 'b.neg']
	]);

const find = (diagram: Diagram): readonly Finding[] => runRules(buildStudy(diagram), rule);

const accept = (diagram: Diagram, finding: Finding): Diagram => {
	const command = waiveFinding({
		key: finding.key,
		reason: 'Bench test only',
		by: 'A. Nwosu',
		date: '2024-05-01',
		fingerprint: fingerprintOf(finding)
	});
	expect(command.refuse(diagram)).toBeNull();
	return change(diagram, command).diagram;
};

describe('a finding', () => {
	test('carries the figures its message is made of', () => {
		const [finding] = find(feed(30));
		expect(finding!.numbers['currentA']).toBeCloseTo(30, 9);
		expect(finding!.numbers['amperageA']).toBe(25);
	});

	test('stays listed when accepted, and is not counted as an error', () => {
		const accepted = find(accept(feed(30), find(feed(30))[0]!));
		expect(accepted).toHaveLength(1);
		expect(accepted[0]).toMatchObject({
			severity: 'error',
			waiver: { reason: 'Bench test only', by: 'A. Nwosu', date: '2024-05-01' },
			waiverLapsed: false,
			lapse: null
		});
		expect(isOpen(accepted[0]!)).toBe(false);
		expect(countFindings(accepted).error).toBe(0);
		expect(countAccepted(accepted)).toBe(1);
		expect(countText(accepted)).toBe('1 accepted');
	});

	test('stays accepted while its figures move by up to 5 %, and is open again beyond', () => {
		const { waivers } = accept(feed(30), find(feed(30))[0]!);
		const at = (drawA: number) => find({ ...feed(drawA), waivers })[0]!;
		expect(isOpen(at(31.4))).toBe(false);
		expect(isOpen(at(31.6))).toBe(true);
		expect(at(31.6)).toMatchObject({
			waiverLapsed: true,
			lapse: 'Accepted by A. Nwosu on 2024-05-01, but open again: a figure in it (current) went from 30 A to 31.6 A.'
		});
		expect(countFindings([at(31.6)]).error).toBe(1);
	});

	test('is open again when a printed figure moved', () => {
		const diagram = accept(feed(30), find(feed(30))[0]!);
		const hotter = { ...diagram, conductors: { ...diagram.conductors, W2: { ...diagram.conductors['W2']!, insulationC: 75 as const } } };
		// 16 AWG at 75 °C: 15 A.
		expect(find(hotter)[0]!.lapse).toContain('(amperage) went from 25 A to 15 A');
	});

	test('is open again when it became more severe', () => {
		const warned = find(feed(24))[0]!;
		expect(warned.severity).toBe('warning');
		const { waivers } = accept(feed(24), warned);
		expect(find({ ...feed(25.1), waivers })[0]!.lapse).toContain('it was a warning and is now an error');
	});

	test('is open again when it is about other things', () => {
		const finding = find(feed(30))[0]!;
		const diagram = accept(feed(30), finding);
		const waiver = diagram.waivers[finding.key]!;
		const wider = { ...waiver, fingerprint: { ...waiver.fingerprint, subjects: ['conductor:W2', 'conductor:W3'] } };
		expect(find({ ...diagram, waivers: { 'undersized-conductor:W2,W3': wider } })[0]!.lapse).toContain('about other things');
	});

	test('that is gone leaves an idle waiver', () => {
		const finding = find(feed(30))[0]!;
		const { waivers } = accept(feed(30), finding);
		const mended = { ...feed(10), waivers };
		expect(idleWaivers(mended, find(mended))).toEqual([finding.key]);
	});

	test('that is fatal is never accepted, whatever a file says', () => {
		const diagram = circuit({ b: ['battery'] }, [['b.pos', 'b.neg']]);
		const fatal = runRules(buildStudy(diagram)).find(({ severity }) => severity === 'fatal')!;
		const waiver = { reason: 'r', by: 'b', date: '2024-05-01', fingerprint: fingerprintOf(fatal) };
		const again = runRules(buildStudy({ ...diagram, waivers: { [fatal.key]: waiver } })).find(({ key }) => key === fatal.key)!;
		expect(isOpen(again)).toBe(true);
	});
});

test('an acceptance holds when the file keeps parts in another order', () => {
	const bonds = RULES.filter(({ meta }) => meta.id === 'case-bond');
	const found = (diagram: Diagram) => runRules(buildStudy(diagram), bonds);
	const drawn = circuit({ z: ['inverter'], a: ['inverter'], b: ['battery'] }, [
		['b.pos', 'z.pos'],
		['b.pos', 'a.pos']
	]);
	const accepted = accept(drawn, found(drawn)[0]!);
	const { z, ...others } = accepted.parts;
	const reordered = found({ ...accepted, parts: { ...others, z: z! } });
	expect(reordered[0]!.subjects.map(({ id }) => id)).toEqual(['a', 'z']);
	expect(reordered[0]).toMatchObject({ waiver: { reason: 'Bench test only' }, waiverLapsed: false });
});
