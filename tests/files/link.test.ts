import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { change, emptyDiagram, issueRevision } from '#core/diagram';
import { diagramFromLink, isLink, LINK_LIMIT, linkOf } from '#files';
import { BUILDERS } from '../support/examples/all.ts';
import { largeDiagram } from '../support/large-diagram.ts';

const fragmentOf = async (diagram: Parameters<typeof linkOf>[0]): Promise<string> => {
	const made = await linkOf(diagram);
	if (made.status !== 'done') throw new Error('no link');
	return made.value;
};
/** A fragment packed by Node's zlib (RFC 1951) instead of the product. */
const packed = (text: string): string => `#1.${deflateRawSync(text).toString('base64url')}`;

describe('a diagram in a link', () => {
	test.each(Object.keys(BUILDERS))('%s comes back as it was', async (name) => {
		const diagram = BUILDERS[name]!();
		const fragment = await fragmentOf(diagram);
		expect(isLink(fragment)).toBe(true);
		expect(fragment).toMatch(/^#1\.[A-Za-z0-9_-]+$/);
		expect(await diagramFromLink(fragment)).toEqual({ status: 'done', value: { diagram, notes: [] } });
	});

	test('as another program packs it (RFC 1951, RFC 4648 section 5)', async () => {
		const diagram = emptyDiagram();
		expect(await diagramFromLink(packed(JSON.stringify(diagram)))).toEqual({ status: 'done', value: { diagram, notes: [] } });
	});

	test('leaves issued revisions at home', async () => {
		const issued = change(emptyDiagram(), issueRevision({ id: 'r', letter: 'A', date: '2024-05-01', by: 'A', why: 'B' })).diagram;
		const read = await diagramFromLink(await fragmentOf(issued));
		expect(read.status === 'done' && read.value.diagram.revisions).toEqual({});
		expect(read.status === 'done' && read.value.diagram.titleBlock.revisionIndex).toBe('A');
	});

	test('says so when it would be too long, and offers a file', async () => {
		const made = await linkOf(largeDiagram(3000));
		expect(made.status).toBe('failed');
		if (made.status === 'failed') expect(made.problems[0].remedy).toContain('file');
	});
});

describe('what comes from outside', () => {
	test('bombs are stopped: 40 MB of spaces in a short link', async () => {
		const fragment = packed(`${' '.repeat(40_000_000)}`);
		expect(fragment.length).toBeLessThan(LINK_LIMIT);
		const read = await diagramFromLink(fragment);
		expect(read.status === 'failed' && read.problems[0].what).toBe('This link unpacks to far more than a diagram.');
	});

	test.each([
		'',
		'#',
		'#1.',
		'#1.!!!',
		'#2.abcd',
		'#1.AAAA',
		`#1.${'A'.repeat(LINK_LIMIT + 1)}`,
		packed('not json'),
		packed('{"format":"x"}')
	])('%.30s is refused with reasons', async (fragment) => {
		const read = await diagramFromLink(fragment);
		expect(read.status).toBe('failed');
		if (read.status === 'failed')
			expect(read.problems[0]).toMatchObject({ what: expect.stringMatching(/./), remedy: expect.stringMatching(/./) });
	});

	test('a link changed anywhere never throws', async () => {
		const fragment = await fragmentOf(BUILDERS[Object.keys(BUILDERS)[0]!]!());
		await fc.assert(
			fc.asyncProperty(fc.nat({ max: fragment.length - 4 }), fc.string({ maxLength: 5 }), async (at, put) => {
				const changed = `${fragment.slice(0, at + 3)}${put}${fragment.slice(at + 3 + put.length)}`;
				const read = await diagramFromLink(changed);
				expect(['done', 'failed']).toContain(read.status);
			}),
			{ numRuns: 100 }
		);
	});
});
