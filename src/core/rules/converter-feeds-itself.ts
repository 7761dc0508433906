import type { SourceBranch } from '#core/network';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const converterFeedsItself = defineRule({
	meta: {
		id: 'converter-feeds-itself',
		title: 'What feeds a converter is more than converters',
		severity: 'error',
		group: 'topology',
		why: 'A converter gives out what it takes in, less its losses. Fed from its own output, or in a ring of converters, it gives nothing.',
		source: { default: 'conservation of energy' }
	},

	messages: {
		ring: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} fed by nothing but ${one ? 'its own output' : 'one another'}.`,
			remedy: `Feed ${one ? 'its input' : 'the input of one of them'} from a battery.`
		})
	},

	/** An input that nothing at all feeds is another rule’s. */
	*check(study) {
		const { form, nets } = study;
		const fed = new Set(
			[...form.batteries, ...form.sources.filter(({ fedBy }) => fedBy === null)].map(({ positive }) => nets.of(positive))
		);
		const waiting = new Set(form.sources.filter(({ fedBy }) => fedBy !== null));
		for (let before = -1; before !== waiting.size;) {
			before = waiting.size;
			for (const source of waiting) {
				const input = inputOf(study, source);
				if (input !== null && !fed.has(input)) continue;
				fed.add(nets.of(source.positive));
				waiting.delete(source);
			}
		}
		const outputs = new Set([...waiting].map(({ positive }) => nets.of(positive)));
		const ring = [...waiting].filter((source) => outputs.has(inputOf(study, source)!));
		if (ring.length === 0) return;
		const parts = [...new Set(ring.map(({ part }) => part))];
		yield {
			message: 'ring',
			data: { names: listed(parts.map((id) => partName(study.part(id)))), one: parts.length === 1 },
			at: subjects(parts.map(partSubject))
		};
	}
});

/** Net of the positive that a converter takes its power from. */
function inputOf({ form, nets }: Study, { fedBy }: SourceBranch): number | null {
	const input = fedBy === null ? undefined : form.loads[fedBy];
	return input === undefined ? null : nets.of(input.positive);
}
