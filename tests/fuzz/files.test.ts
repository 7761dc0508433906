/**
 * What comes in spoilt, at every gate: read or refused with sentences, never thrown, never long; what is read keeps to
 * the schema, is saved and read again as it is, and is checked without a throw. 1,000 times; 10,000 with LONG=1. One
 * again: SEED=n.
 */
import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import {
	DiagramSchema,
	insertFragment,
	parseDiagram,
	parseRemarks,
	PictureText,
	remarksFile,
	run,
	serializeDiagram,
	start,
	type Diagram,
	type Problem
} from '#core/diagram';
import { EXAMPLES } from '#core/examples';
import { ownParams, parseParts, partsFile } from '#core/parts';
import { fragmentText, readFragment } from '../../src/editor/clipboard.ts';
import { diagramFromLink } from '../../src/files/link.ts';
import { isSvg, readSvg } from '../../src/files/svg-gate.ts';
import { ARCHIVE_FORMAT, readArchive } from '../../src/keeping/archive.ts';
import { pastedRows } from '../../src/ui/site/paste-rows.ts';
import { mutated, mutatedText } from '../support/mutate-file.ts';
import { oneOf, randomFrom, type Random } from '../support/random.ts';
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
const parts = partsFile([
	ownParams.parse({
		name: 'Heater',
		studs: [
			{ id: 's1', name: '+', role: 'positive', leftMm: 30, topMm: 20 },
			{ id: 's2', name: '−', role: 'negative', leftMm: 90, topMm: 20 }
		],
		devices: [{ does: 'load', id: 'd1', positive: 's1', negative: 's2', drawAs: 'resistance', draw: 2.4 }]
	})
]);
const icon = `data:image/png;base64,${readFileSync(new URL('../../static/icons/192.png', import.meta.url)).toString('base64')}`;
const drawing = `<?xml version="1.0"?><!-- plan --><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100"><style>.a{fill:#123}</style>
<defs><linearGradient id="g"><stop offset="0"/></linearGradient><g id="d"><rect width="3" height="4" fill="url(#g)"/></g></defs>
<g class="a"><use href="#d" x="3"/><use href="#d" x="9"/><path d="M0 0L1 1"/></g><image href="${icon}"/><text>a &lt; b</text></svg>`;

/** What a gate let through, or what it said. */
interface Read {
	readonly found: readonly Diagram[];
	readonly problems: readonly Problem[];
	/** Nothing to check further, where no diagram comes of it. */
	readonly passed?: boolean;
}
const refusedWith = (...problems: readonly Problem[]): Read => ({ found: [], problems });
const saying = (what: string): Read => refusedWith({ path: '', what, why: what, remedy: what });

/** Text as it comes, spoilt, and how it is read. */
interface Entry {
	readonly weight: number;
	readonly spoilt: (random: Random) => string;
	readonly read: (text: string) => Read | Promise<Read>;
}

const ENTRIES: Readonly<Record<string, Entry>> = {
	diagram: {
		weight: 6,
		spoilt: (random) => mutated(oneOf(random, diagrams), random),
		read(text) {
			const read = parseDiagram(text);
			return read.ok ? { found: [read.diagram], problems: [] } : refusedWith(...read.problems);
		}
	},
	link: {
		weight: 2,
		// Spoilt before it is packed, or after.
		spoilt(random) {
			const source = oneOf(random, diagrams);
			const isPackedSpoilt = random() < 0.5;
			const packed = `#1.${deflateRawSync(isPackedSpoilt ? mutated(source, random) : source).toString('base64url')}`;
			return isPackedSpoilt ? packed : mutatedText(packed, random);
		},
		async read(text) {
			const read = await diagramFromLink(text);
			if (read.status === 'cancelled') throw new Error('cancelled');
			return read.status === 'done' ? { found: [read.value.diagram], problems: [] } : refusedWith(...read.problems);
		}
	},
	pasted: {
		weight: 2,
		spoilt: (random) => mutated(fragmentText(small, Object.keys(small.parts)), random),
		read(text) {
			const read = readFragment(text);
			if ('problem' in read) return saying(read.problem);
			const command = insertFragment({ fragment: read.fragment, by: { x: 10, y: 10 } });
			const refused = command.refuse(small);
			return refused === null ? { found: [run(start(small), command).diagram], problems: [] } : saying(refused);
		}
	},
	remarks: {
		weight: 1,
		spoilt: (random) => mutated(remarks, random),
		read(text) {
			const read = parseRemarks(text);
			return read.ok ? { found: [], problems: [], passed: true } : refusedWith(read.problem);
		}
	},
	parts: {
		weight: 1,
		spoilt: (random) => mutated(parts, random),
		read(text) {
			const read = parseParts(text);
			return read.ok ? { found: [], problems: [], passed: true } : refusedWith(...read.problems);
		}
	},
	archive: {
		weight: 1,
		spoilt: (random) => mutated(archive, random),
		async read(text) {
			const read = await readArchive(new Blob([text]));
			if (!read.ok) return refusedWith(read.problem);
			const found = read.diagrams.flatMap(({ diagram, versions }) => [diagram, ...versions.map((version) => version.diagram)]);
			return { found, problems: [], passed: true };
		}
	},
	readings: {
		weight: 1,
		spoilt: (random) => mutatedText('F1 in\tF1 out\t12,5 mV\nB1 +;0.3\n', random),
		read: (text) => ({ found: [], problems: [], passed: Array.isArray(pastedRows(text, []).rows) })
	},
	drawing: {
		weight: 1,
		spoilt: (random) => mutatedText(drawing, random),
		read(text) {
			const read = isSvg(text) ? readSvg(text) : ({ ok: false, why: 'It is no SVG.' } as const);
			return read.ok ? { found: [], problems: [], passed: true } : saying(read.why);
		}
	},
	picture: {
		weight: 1,
		spoilt: (random) => mutatedText(icon, random),
		read: (text) => (PictureText.safeParse(text).success ? { found: [], problems: [], passed: true } : saying('Refused.'))
	}
};
const NAMES = Object.entries(ENTRIES).flatMap(([name, { weight }]) => Array<string>(weight).fill(name));

/** Milliseconds of processor time. */
async function timed<Result>(work: () => Result | Promise<Result>): Promise<{ result: Result; ms: number }> {
	const before = process.cpuUsage();
	const result = await work();
	const { user, system } = process.cpuUsage(before);
	return { result, ms: (user + system) / 1000 };
}

function expectWhole(diagram: Diagram): void {
	expect(DiagramSchema.safeParse(diagram).success).toBe(true);
	const again = parseDiagram(serializeDiagram(diagram));
	expect(again).toEqual({ ok: true, diagram, notes: [], migratedFrom: null });
}

const inherited = () => JSON.stringify([Object.getOwnPropertyNames(Object.prototype), Object.getOwnPropertyNames(Array.prototype)]);

test(`${COUNT} spoilt files from seed ${FIRST} on`, { timeout: 3_600_000 }, async () => {
	const untouched = inherited();
	const counts: Record<string, { passed: number; refused: number }> = {};
	let [worstReadMs, worstCheckMs] = [0, 0];
	for (let seed = FIRST; seed < FIRST + COUNT; seed += 1) {
		const random = randomFrom(seed);
		const name = oneOf(random, NAMES);
		const { spoilt, read } = ENTRIES[name]!;
		const text = spoilt(random);
		const story = `${name}, again with SEED=${seed}`;
		const { result, ms } = await timed(() => read(text)).catch((error: unknown) => {
			throw new Error(`Reading threw: ${story}`, { cause: error });
		});
		expect(ms, `milliseconds to read ${text.length} characters: ${story}`).toBeLessThan(MOST_MS);
		worstReadMs = Math.max(worstReadMs, ms);
		const { found, problems, passed = found.length > 0 } = result;
		if (passed) expect(problems, story).toEqual([]);
		else for (const said of [problems[0]?.what, problems[0]?.why, problems[0]?.remedy]) expect(said, story).toMatch(/\S/);
		expect(JSON.stringify(problems).length, story).toBeLessThan(20_000);
		const count = (counts[name] ??= { passed: 0, refused: 0 });
		count[passed ? 'passed' : 'refused'] += 1;
		for (const diagram of found) {
			try {
				expectWhole(diagram);
				const { ms: checkMs } = await timed(() => checkDiagram(diagram));
				worstCheckMs = Math.max(worstCheckMs, checkMs);
			} catch (error) {
				throw new Error(`What was read could not be used: ${story}`, { cause: error });
			}
		}
	}
	expect(inherited()).toBe(untouched);
	const figures = Object.entries(counts).map(([name, { passed, refused }]) => `${name} ${passed} passed, ${refused} refused`);
	console.log(
		`${COUNT} spoilt: ${figures.join('; ')}; longest reading ${Math.round(worstReadMs)} ms, longest check ${Math.round(worstCheckMs)} ms`
	);
	if (COUNT < 1_000) return;
	// Spoiling that nothing survives, or everything, tries no gate.
	for (const { passed, refused } of [counts['diagram']!, counts['pasted']!, counts['link']!])
		expect(Math.min(passed, refused)).toBeGreaterThan((passed + refused) / 40);
});
