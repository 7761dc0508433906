import { describe } from '#core/parts';
import { defineRule } from './define.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

export const unusableValue = defineRule({
	meta: {
		id: 'unusable-value',
		title: 'Every value of a part is one it can have',
		severity: 'warning',
		group: 'documents',
		why: 'The check goes on with the usual value in place of the one it cannot use, and so does not check what was meant.',
		source: { default: 'this program: the part’s definition' }
	},

	messages: {
		unusable: ({ name, problems }: { name: string; problems: string }) => ({
			message: `A value of ${name} cannot be used. ${problems}`,
			remedy: 'Select the part and enter the value again.'
		})
	},

	*check({ diagram, parts }) {
		for (const { id, label, definition } of parts) {
			const { problems } = describe(diagram.parts[id]!);
			if (definition === null || problems.length === 0) continue;
			yield { message: 'unusable', data: { name: partName({ label, definition }), problems: problems.join(' ') }, at: [partSubject(id)] };
		}
	}
});
