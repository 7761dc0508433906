/**
 * Checks diagram files without the editor: `npm run check -- FILE… [--json]`.
 * Ends with 0 when nothing is found at error level, 1 when something is, 2 when a file cannot be read.
 */
import { readFileSync } from 'node:fs';
import { checkDiagram } from '#core/check';
import { parseDiagram } from '#core/diagram';
import { exitCode, reportData, reportText, type FileReport } from './report.ts';

const USAGE = `Checks wiring diagrams and prints what the editor would.

  npm run check -- FILE… [--json]

Ends with 0 when nothing is found at error level, 1 when something is, 2 when a file cannot be read.
Findings accepted in the file are listed and do not count.
`;

function main(args: readonly string[]): number {
	const unknown = args.find((arg) => arg.startsWith('-') && arg !== '--json' && arg !== '--help');
	const files = args.filter((arg) => !arg.startsWith('-'));
	if (args.includes('--help')) {
		process.stdout.write(USAGE);
		return 0;
	}
	if (unknown !== undefined || files.length === 0) {
		process.stderr.write(`${unknown === undefined ? 'No file is given.' : `"${unknown}" is not an option.`}\n\n${USAGE}`);
		return 2;
	}

	const reports = files.map(checkFile);
	if (args.includes('--json')) process.stdout.write(`${JSON.stringify({ files: reports.map(reportData) }, null, '\t')}\n`);
	else for (const report of reports) (report.readable ? process.stdout : process.stderr).write(`${reportText(report)}\n\n`);
	return exitCode(reports);
}

function checkFile(file: string): FileReport {
	let text: string;
	try {
		text = readFileSync(file, 'utf8');
	} catch (error) {
		const why = (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'There is no file of this name.' : `${(error as Error).message}.`;
		const problem = { path: '', what: `The file ${file} could not be opened.`, why, remedy: 'Check its name and that you may read it.' };
		return { file, readable: false, problems: [problem] };
	}
	const parsed = parseDiagram(text);
	if (!parsed.ok) return { file, readable: false, problems: parsed.problems };
	return { file, readable: true, diagram: parsed.diagram, notes: parsed.notes, result: checkDiagram(parsed.diagram) };
}

// A reader such as `head` may close the pipe early; that is no error of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
	if (error.code !== 'EPIPE') throw error;
});
// Not process.exit(): it would cut off output that is still being written to a pipe.
process.exitCode = main(process.argv.slice(2));
