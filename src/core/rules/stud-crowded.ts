import { TERMINALS_PER_STUD } from '#core/tables';
import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { stackCurrents } from './stack-currents.ts';
import { studSubject } from './subjects.ts';
import { capital } from './words.ts';

/** Amps above which a full stud deserves a second look: common practice, no source. */
const MUCH_A = 100;

export const studCrowded = defineRuleForEach('stacks', {
	meta: {
		id: 'stud-crowded',
		title: 'No more than four terminals sit on one stud, or fewer where its maker says so',
		severity: 'error',
		group: 'studs',
		why: 'Every further terminal adds a joint in series, height and a way to work loose; one loose terminal loosens all of them.',
		source: { default: TERMINALS_PER_STUD.source }
	},

	messages: {
		stud: ({ name, count, limit }: { name: string; count: number; limit: number }) => ({
			message: `${capital(name)} holds ${count} terminals; no more than ${limit} may be stacked on it.`,
			remedy: 'Move terminals to a free stud, or join a second stud or bus by a link.'
		}),
		clamp: ({ name, count, limit }: { name: string; count: number; limit: number }) => ({
			message: `${capital(name)} holds ${count} conductors; it is made for ${limit}.`,
			remedy: 'Join the conductors on a bus and lead one of them to this terminal.'
		}),
		full: ({ name, count, currentA }: { name: string; count: number; currentA: number }) => ({
			message: `${capital(name)} holds ${count} terminals and carries ${ampsText(currentA)}.`,
			remedy: 'Give the largest circuit a stud of its own.'
		})
	},

	*checkOne(stack, study) {
		const { key, terminal, terminalCount: count } = stack;
		const limit = terminal.maxTerminals;
		const at = [studSubject(key)] as const;
		if (count > limit) {
			const name = study.studName(key);
			const source = limit === TERMINALS_PER_STUD.value ? undefined : 'the limit given for this terminal';
			if (terminal.kind === 'clamp') yield { message: 'clamp', data: { name, count, limit }, at, severity: 'warning', source };
			else yield { message: 'stud', data: { name, count, limit }, at, source };
		} else if (terminal.kind === 'stud' && count >= TERMINALS_PER_STUD.value) {
			const { currentA, caseId } = stackCurrents(study, stack).largest;
			if (!exceeds(currentA, MUCH_A)) return;
			yield {
				message: 'full',
				data: { name: study.studName(key), count, currentA },
				at,
				severity: 'warning',
				source: 'common practice, no source',
				caseId
			};
		}
	}
});
