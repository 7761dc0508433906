import { defineRule } from './define.ts';
import { partSubject } from './subjects.ts';
import { wiredStuds } from './wiring.ts';
import { capital, listed, partName } from './words.ts';

export const circuitNotIdentified = defineRule({
	meta: {
		id: 'circuit-not-identified',
		title: 'Every fused position says what it feeds',
		severity: 'warning',
		group: 'documents',
		why: 'Whoever stands before the panel in the dark must find the right fuse at once.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		unnamed: ({ name, positions, one }: { name: string; positions: string; one: boolean }) => ({
			message: `${capital(name)} ${positions} ${one ? 'feeds a circuit and has' : 'feed circuits and have'} no name.`,
			remedy: 'Say in its properties what each position feeds.'
		})
	},

	/** One report for each panel or bus with names: its positions with a conductor and without a name. */
	*check(study) {
		const landed = wiredStuds(study);
		for (const part of study.parts) {
			const { names } = part.params;
			if (!Array.isArray(names)) continue;
			const unnamed = part.terminals.filter(({ id }) => {
				const position = Number(id);
				return Number.isInteger(position) && landed.has(`${part.id}.${id}`) && !String(names[position - 1] ?? '').trim();
			});
			if (unnamed.length === 0) continue;
			yield {
				message: 'unnamed',
				data: { name: partName(part), positions: listed(unnamed.map(({ label }) => label)), one: unnamed.length === 1 },
				at: [partSubject(part.id)]
			};
		}
	}
});
