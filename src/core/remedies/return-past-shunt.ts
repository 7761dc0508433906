import { reconnectConductor, studKey, type Command, type StudKey } from '#core/diagram';
import { listed } from '#core/rules';
import { landings } from '#core/studs';
import { conductorsIn, namesOf } from './thicker-conductor.ts';
import { applied, findingsOf, findingsOfRule, mend } from './findings.ts';
import type { RemedyKind } from './types.ts';

const MOST_TRIED = 8;

/** Returns that by-pass the shunt, moved to the emptiest stud on its system side. */
export const returnPastShunt: RemedyKind = {
	rules: ['shunt-bypassed'],

	*propose(study, finding) {
		const { diagram, parts } = study;
		const users = new Set(finding.subjects.flatMap(({ kind, id }) => (kind === 'part' ? [id] : [])));
		const shunt = finding.subjects.at(-1)!.id;
		const landed = landings(diagram);
		const count = (key: StudKey) => landed.get(key)?.length ?? 0;
		const troubled = new Set(
			findingsOf(diagram).flatMap(({ subjects }) => subjects.flatMap(({ kind, id }) => (kind === 'stud' ? [id] : [])))
		);
		const studs = parts
			.filter(({ id, links }) => id === shunt || links.every(({ kind }) => kind === 'segment'))
			.flatMap(({ id, terminals }) =>
				terminals
					.filter(({ role, kind }) => role === 'negative' && kind === 'stud')
					.map((terminal) => ({ part: id, terminal: terminal.id }))
			)
			// A bus before the shunt's own bolt, a stud without findings before others, an empty one before full ones.
			.sort(
				(a, b) =>
					Number(a.part === shunt) - Number(b.part === shunt) ||
					Number(troubled.has(studKey(a))) - Number(troubled.has(studKey(b))) ||
					count(studKey(a)) - count(studKey(b))
			);
		const returns = conductorsIn(finding);
		const before = findingsOfRule(diagram, finding.rule);
		for (const [first] of studs.slice(0, MOST_TRIED).entries()) {
			const places = returns.map((_, index) => studs[(first + index) % studs.length]!);
			const commands: Command[] = returns.map((conductor, index) =>
				reconnectConductor({ conductor, end: users.has(diagram.conductors[conductor]!.from.part) ? 'to' : 'from', on: places[index]! })
			);
			const after = commands.length > 0 && applied(diagram, commands);
			if (!after || mend(before, findingsOfRule(after, finding.rule), finding) !== 'whole') continue;
			const to = [...new Set(places.map((on) => study.studName(studKey(on))))];
			yield { title: `Move ${namesOf(study, returns)} to ${listed(to)}`, commands, group: 'return' };
		}
	}
};
