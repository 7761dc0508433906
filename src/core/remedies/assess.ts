/** Tries a proposal on a copy: only what mends its finding and breaks nothing unsaid is offered. */
import { compose, type Diagram } from '#core/diagram';
import { isOpen, listed, type Finding } from '#core/rules';
import { arrangeStud } from './arrange-stud.ts';
import { applied, difference, findingsOf, mend, studyOf } from './findings.ts';
import { thickenCommands, thickenText, thickerConductor } from './thicker-conductor.ts';
import type { Proposal, Remedy } from './types.ts';

/** What a change may drag along: a larger fuse wants a thicker conductor, a new plate its place in the stack. */
const FOLLOW_UPS = [thickerConductor, arrangeStud];
const MOST_FOLLOW_UPS = 3;

/** Null where it is refused, mends nothing, or makes more errors than it mends. */
export function assess(diagram: Diagram, finding: Finding, proposal: Proposal): Remedy | null {
	const before = findingsOf(diagram);
	let best = tried(diagram, before, finding, proposal);
	for (let round = 0; best && !best.remedy.safe && round < MOST_FOLLOW_UPS; round++) {
		const next = followUp(best);
		const better = next && tried(diagram, before, finding, next);
		if (!better) break;
		best = better;
	}
	if (!best) return null;
	const { errorsBefore, errorsAfter } = best.remedy.preview();
	// A fatal finding hides others: what then comes to light is said in the caution.
	return errorsAfter > errorsBefore && finding.severity !== 'fatal' ? null : best.remedy;
}

interface Tried {
	readonly proposal: Proposal;
	readonly remedy: Remedy;
}

function tried(diagram: Diagram, before: readonly Finding[], finding: Finding, proposal: Proposal): Tried | null {
	const commands = [...proposal.commands, ...thickenCommands(proposal.thicken)];
	const after = applied(diagram, commands);
	if (!after || after === diagram) return null;
	const findings = findingsOf(after);
	const mended = mend(before, findings, finding);
	if (mended === null) return null;
	const change = difference(before, findings);
	const serious = change.added.filter((added) => added.severity !== 'note' && isOpen(added));
	const caution = [
		...(mended === 'part' ? ['Leaves a less severe finding about the same.'] : []),
		...(serious.length === 0 ? [] : [`Brings ${listed(serious.map(({ severity, title }) => `${article(severity)} ("${title}")`))}.`])
	].join(' ');
	const title = titleOf(diagram, proposal);
	return {
		proposal,
		remedy: {
			title,
			safe: serious.length === 0,
			caution: caution || null,
			commands,
			command: compose(title, commands),
			preview: () => ({ ...change, diagram: after })
		}
	};
}

function titleOf(diagram: Diagram, { title, thicken }: Proposal): string {
	if (!thicken || thicken.size === 0) return title;
	const text = thickenText(studyOf(diagram), thicken);
	return title === '' ? `Use ${text}` : `${title}, and use ${text}`;
}

const article = (severity: Finding['severity']): string =>
	severity === 'error' ? 'an error' : severity === 'fatal' ? 'a fatal finding' : 'a warning';

/** The proposal with what mends one of the findings it adds. */
function followUp({ proposal, remedy }: Tried): Proposal | null {
	const { diagram, added } = remedy.preview();
	for (const finding of added) {
		if (finding.severity === 'note') continue;
		for (const kind of FOLLOW_UPS.filter(({ rules }) => rules.includes(finding.rule))) {
			for (const more of kind.propose(studyOf(diagram), finding)) {
				const title = more.title === '' ? proposal.title : `${proposal.title}, and ${more.title[0]!.toLowerCase()}${more.title.slice(1)}`;
				const thicken = new Map([...(proposal.thicken ?? []), ...(more.thicken ?? [])]);
				return { ...proposal, title, commands: [...proposal.commands, ...more.commands], thicken };
			}
		}
	}
	return null;
}
