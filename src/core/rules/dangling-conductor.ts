import { studKey, type TerminalRef } from '#core/diagram';
import type { Unresolved } from '#core/network';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { conductorSubject, partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const danglingConductor = defineRule({
	meta: {
		id: 'dangling-conductor',
		title: 'Both ends of a conductor are on terminals that exist',
		severity: 'error',
		group: 'topology',
		why: 'A conductor with an end in the air is left out of every check, and in the vehicle it would be a bare end.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		conductor: ({ name, place, why }: { name: string; place: string; why: string }) => ({
			message: `${capital(name)} ends on ${place}, but ${why}.`,
			remedy: 'Move that end to a terminal that exists, or remove the conductor.'
		}),
		mount: ({ name, place, why }: { name: string; place: string; why: string }) => ({
			message: `${capital(name)} is mounted on ${place}, but ${why}.`,
			remedy: 'Mount it on a stud that exists.'
		})
	},

	/** What ends on a part of unknown kind is said once, about the part. */
	*check(study) {
		const { form, diagram } = study;
		for (const { kind, id, ref, reason } of form.unresolved) {
			if (reason === 'unknown-kind') continue;
			if (kind === 'conductor') {
				yield {
					message: 'conductor',
					data: { name: study.conductorName(id), place: placeName(study, ref), why: WHY[reason] },
					at: [conductorSubject(id)]
				};
			} else if (Object.hasOwn(diagram.parts, id)) {
				yield {
					message: 'mount',
					data: { name: partName(study.part(id)), place: placeName(study, diagram.mounts[id]!), why: WHY[reason] },
					at: [partSubject(id)]
				};
			}
		}
	}
});

const placeName = (study: Study, ref: TerminalRef): string =>
	Object.hasOwn(study.diagram.parts, ref.part) ? study.studName(studKey(ref)) : `“${ref.part}”`;

const WHY: Record<Exclude<Unresolved['reason'], 'unknown-kind'>, string> = {
	'no-such-part': 'there is no such part',
	'no-such-terminal': 'this part has no such terminal',
	'no-plate': 'it is not made to be mounted on a stud'
};
