import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import type { Diagram } from '#core/diagram';
import { fingerprintOf } from '#core/rules';
import { circuit } from '../support/circuit.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const TSX = fileURLToPath(import.meta.resolve('tsx/cli'));

const sound = circuit(
	{
		b: ['battery', { faultResistanceMilliohm: 2.5 }],
		f: ['fuse-block', { fuseA: 30 }],
		s: ['battery-disconnect'],
		l: ['load', { draw: 15 }]
	},
	[
		['f.post', 's.in', { gauge: '10', lengthM: 0.5 }],
		['s.out', 'l.pos', { gauge: '10', lengthM: 1 }],
		['l.neg', 'b.neg', { gauge: '10', lengthM: 1.5 }]
	],
	{ mounts: { f: 'b.pos' } }
);
const faulty = circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.pos', { gauge: '12', lengthM: null }]]);

const overloaded = circuit(
	{ b: ['battery', { faultResistanceMilliohm: 2.5 }], f: ['fuse-block', { fuseA: 30 }], l: ['load', { draw: 27 }] },
	[
		['f.post', 'l.pos', { gauge: '16', lengthM: 1 }],
		['l.neg', 'b.neg', { gauge: '16', lengthM: 1 }]
	],
	{ mounts: { f: 'b.pos' } }
);

let folder: string;
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), 'check-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: Diagram | string): string {
	const path = join(folder, name);
	writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
	return path;
}

/** Runs the command as a user would. */
const check = (...args: string[]): Promise<{ code: number; out: string; err: string }> =>
	new Promise((resolve) => {
		execFile(process.execPath, [TSX, 'src/cli/check.ts', ...args], { cwd: ROOT }, (error, out, err) => {
			resolve({ code: error ? Number(error.code) : 0, out, err });
		});
	});

describe('the check command', { timeout: 60_000 }, () => {
	test('passes a sound diagram with 0, and says what it was checked against and what was not checked', async () => {
		const { code, out, err } = await check(file('sound.json', sound));
		expect(err).toBe('');
		expect(out).toMatch(/^.*sound\.json: Test circuit\n/);
		expect(out).toContain(`Checked against profile "${checkDiagram(sound).profileName}": no findings.`);
		expect(out).toContain('  Not checked:\n    - ');
		expect(code).toBe(0);
	});

	test('prints what the editor would of a faulty one, and ends with 1', async () => {
		const { code, out, err } = await check(file('faulty.json', faulty));
		expect(err).toBe('');
		const { findings, notChecked } = checkDiagram(faulty);
		expect(findings.length).toBeGreaterThan(1);
		for (const { severity, rule, message, remedy, source } of findings) {
			expect(out).toMatch(new RegExp(`  ${severity.toUpperCase()} at .+ \\(${rule}\\)`));
			for (const text of [`    ${message}\n`, `    To do: ${remedy}\n`, `    Source: ${source}`]) expect(out).toContain(text);
		}
		for (const text of notChecked) expect(out).toContain(`    - ${text}\n`);
		expect(code).toBe(1);
	});

	test('gives the same as data', async () => {
		const { code, out } = await check('--json', file('faulty.json', faulty));
		const [report] = (JSON.parse(out) as { files: Record<string, unknown>[] }).files;
		const { findings, assumptions, notChecked } = checkDiagram(faulty);
		expect(report).toMatchObject({ readable: true, title: 'Test circuit', profile: { id: 'common-practice' }, assumptions, notChecked });
		expect(report!['findings']).toMatchObject(JSON.parse(JSON.stringify(findings)) as object[]);
		expect(code).toBe(1);
	});

	test('ends with 0 when all that is wrong was accepted, and says by whom and why', async () => {
		const { findings } = checkDiagram(overloaded);
		const waivers = Object.fromEntries(
			findings.map((finding) => [
				finding.key,
				{ reason: 'Test bench', by: 'A. Nwosu', date: '2024-05-01', fingerprint: fingerprintOf(finding) }
			])
		);
		const name = file('accepted.json', { ...overloaded, waivers });
		const { code, out } = await check(name);
		expect(findings.some(({ severity }) => severity === 'error')).toBe(true);
		expect(out).toContain(`: ${findings.length} accepted.`);
		expect(out).toContain('  Accepted:\n\n  ERROR at');
		expect(out).toContain('    Accepted by A. Nwosu on 2024-05-01: Test bench\n');
		expect(code).toBe(0);
		const asData = await check('--json', name);
		const [report] = (JSON.parse(asData.out) as { files: { findings: object[]; counts: object }[] }).files;
		expect(report!.findings).toHaveLength(findings.length);
		expect(report!.counts).toEqual({ fatal: 0, error: 0, warning: 0, note: 0, accepted: findings.length });
	});

	test('ends with 2 where a file cannot be read, and checks the others all the same', async () => {
		const { code, out, err } = await check(join(folder, 'missing.json'), file('broken.json', '{ "format": '), file('sound.json', sound));
		expect(err).toMatch(/missing\.json\n {2}Not read: The file .+ could not be opened\. There is no file of this name\. Check its name/);
		expect(err).toMatch(/broken\.json\n {2}Not read: At line 1, column \d+/);
		expect(out).toContain('sound.json: Test circuit');
		expect(code).toBe(2);
	});

	test('reports unreadable files as data too', async () => {
		const { code, out } = await check('--json', file('other.json', '{}'));
		expect(JSON.parse(out)).toMatchObject({ files: [{ readable: false, problems: [{ what: 'This is not a Wireworthy diagram.' }] }] });
		expect(code).toBe(2);
	});

	test('explains itself when it is not told what to do', async () => {
		const [none, unknown, help] = [await check(), await check('--fast', 'x.json'), await check('--help')];
		expect(none).toMatchObject({ code: 2, err: expect.stringMatching(/^No file is given\.\n\n.*FILE…/s) });
		expect(unknown).toMatchObject({ code: 2, err: expect.stringMatching(/^"--fast" is not an option\./) });
		expect(help).toMatchObject({ code: 0, out: expect.stringContaining('npm run check -- FILE… [--json]') });
	});
});
