/**
 * Spoilt files at every gate: read or refused with sentences, never thrown, never long; what is read keeps to the
 * schema, is saved and read again as it is, and is checked without a throw. 1,000 files; 10,000 with LONG=1. One file again: SEED=n.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { DiagramSchema, parseDiagram, parseRemarks, remarksFile, serializeDiagram, type Diagram } from '#core/diagram';
import { EXAMPLES } from '#core/examples';
import { ARCHIVE_FORMAT, readArchive } from '../../src/keeping/archive.ts';
import { mutated } from '../support/mutate-file.ts';
import { oneOf, randomFrom } from '../support/random.ts';
import { smallDiagram } from '../support/small-diagram.ts';

const FILES = process.env.LONG === '1' ? 10_000 : 1_000;
const FIRST = Number(process.env.SEED ?? 1);
const COUNT = process.env.SEED === undefined ? FILES : 1;
/** Of the processor, not of the clock: a busy machine is slow, not wrong. */
const MOST_MS = 1_000;

const examples = EXAMPLES.map(({ file }) => readFileSync(new URL(`../../static/examples/${file}`, import.meta.url), 'utf8'));
const diagrams = [...examples, serializeDiagram(smallDiagram())];
const small = smallDiagram();
const remarks = remarksFile(
	{ title: 'A', revisionIndex: 'B' },
	{ R1: { on: { kind: 'part', id: 'P1' }, text: 'x', by: 'A', date: '2024-05-01', answer: '', answeredBy: '', closed: false } }
);
const archive = JSON.stringify({
	format: ARCHIVE_FORMAT,
	version: 1,
	diagrams: [{ createdMs: 1, changedMs: 2, diagram: small, versions: [{ atMs: 1, why: 'saved', diagram: small }] }]
});

/** Milliseconds of processor time. */
async function timed(work: () => unknown): Promise<number> {
	const before = process.cpuUsage();
	await work();
	const { user, system } = process.cpuUsage(before);
	return (user + system) / 1000;
}

function expectWhole(diagram: Diagram): void {
	expect(DiagramSchema.safeParse(diagram).success).toBe(true);
	const again = parseDiagram(serializeDiagram(diagram));
	expect(again).toEqual({ ok: true, diagram, notes: [], migratedFrom: null });
}

const inherited = () => JSON.stringify([Object.getOwnPropertyNames(Object.prototype), Object.getOwnPropertyNames(Array.prototype)]);

test(`${COUNT} spoilt files from seed ${FIRST} on`, { timeout: 3_600_000 }, async () => {
	const untouched = inherited();
	let [opened, refused, worstReadMs, worstCheckMs] = [0, 0, 0, 0];
	for (let seed = FIRST; seed < FIRST + COUNT; seed += 1) {
		const random = randomFrom(seed);
		const gate = oneOf(random, ['diagram', 'diagram', 'diagram', 'diagram', 'remarks', 'archive'] as const);
		const text = mutated(gate === 'diagram' ? oneOf(random, diagrams) : gate === 'remarks' ? remarks : archive, random);
		const story = `again with SEED=${seed}`;
		let found: Diagram[] = [];
		const readMs = await timed(async () => {
			if (gate === 'remarks') {
				parseRemarks(text);
			} else if (gate === 'archive') {
				const read = await readArchive(new Blob([text]));
				if (read.ok) found = read.diagrams.flatMap(({ diagram, versions }) => [diagram, ...versions.map((version) => version.diagram)]);
			} else {
				const read = parseDiagram(text);
				if (read.ok) found = [read.diagram];
				else {
					const { what, why, remedy } = read.problems[0];
					for (const text of [what, why, remedy]) expect(text, story).toMatch(/\S/);
					expect(JSON.stringify(read.problems).length, story).toBeLessThan(20_000);
				}
			}
		}).catch((error: unknown) => {
			throw new Error(`Reading threw, ${story}`, { cause: error });
		});
		expect(readMs, `milliseconds to read ${text.length} characters, ${story}`).toBeLessThan(MOST_MS);
		worstReadMs = Math.max(worstReadMs, readMs);
		if (found.length > 0) opened += 1;
		else refused += 1;
		for (const diagram of found) {
			try {
				expectWhole(diagram);
				const checkMs = await timed(() => checkDiagram(diagram));
				worstCheckMs = Math.max(worstCheckMs, checkMs);
			} catch (error) {
				throw new Error(`A file that was read could not be used, ${story}`, { cause: error });
			}
		}
	}
	expect(inherited()).toBe(untouched);
	console.log(
		`${COUNT} spoilt files: ${opened} opened, ${refused} refused; longest reading ${Math.round(worstReadMs)} ms, longest check ${Math.round(worstCheckMs)} ms`
	);
	if (COUNT > 100) expect(Math.min(opened, refused)).toBeGreaterThan(COUNT / 20);
});
