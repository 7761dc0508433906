import { BRIGHT_SUN_FACTOR } from '#core/tables';
import { ampsText } from '#core/units';
import { arraysOf } from './arrays.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly strings: number;
	readonly backA: number;
	readonly limitA: number;
	readonly fuseA: number;
	readonly leastA: number;
}

export const arrayStringFuses = defineRule({
	meta: {
		id: 'array-string-fuses',
		title: 'Strings of an array in parallel cannot burn one another',
		severity: 'error',
		group: 'protection',
		why: 'A shaded or shorted string is fed backwards by all the others; its modules bear only the fuse printed on their label.',
		source: { default: 'NFPA 70 690.9, from memory; IEC 62548; the largest fuse given for the module' }
	},

	messages: {
		missing: ({ name, strings, backA, limitA }: Data) => ({
			message: `The array of ${name} has ${strings} strings and no fuse in each: into one of them the others can send ${ampsText(backA)}, and its modules bear ${ampsText(limitA)}.`,
			remedy: `Put a fuse of at most ${ampsText(limitA)} in each string, made for the array’s voltage.`
		}),
		large: ({ name, limitA, fuseA }: Data) => ({
			message: `The strings of ${name} have fuses of ${ampsText(fuseA)}; the modules bear ${ampsText(limitA)}.`,
			remedy: `Fit fuses of at most ${ampsText(limitA)}.`
		}),
		small: ({ name, fuseA, leastA }: Data) => ({
			message: `The strings of ${name} have fuses of ${ampsText(fuseA)}, which open in bright sun; at least ${ampsText(leastA)} is asked for.`,
			remedy: 'Fit larger fuses, as far as the modules bear them.'
		})
	},

	*check(study) {
		for (const { view, inParallel, iscA } of arraysOf(study)) {
			const limitA = numberOf(view, 'moduleFuseA');
			if (iscA === null || limitA === null) continue;
			const fuseA = numberOf(view, 'stringFuseA');
			const backA = (inParallel - 1) * BRIGHT_SUN_FACTOR.value * iscA;
			const leastA = BRIGHT_SUN_FACTOR.value ** 2 * iscA;
			const message =
				fuseA === null
					? exceeds(backA, limitA)
						? 'missing'
						: null
					: exceeds(fuseA, limitA)
						? 'large'
						: exceeds(leastA, fuseA)
							? 'small'
							: null;
			if (message === null) continue;
			const data = { name: partName(view), strings: inParallel, backA, limitA, fuseA: fuseA ?? 0, leastA };
			yield { message, severity: message === 'small' ? 'warning' : 'error', data, at: [partSubject(view.id)], unverified: true };
		}
	}
});
