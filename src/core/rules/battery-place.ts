import { defineRule } from './define.ts';
import { isIn, isSet } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const batteryPlace = defineRule({
	meta: {
		id: 'battery-place',
		title: 'Batteries stand apart from fuel and from sleepers',
		severity: 'note',
		group: 'batteries',
		why: 'A battery gives off gas when something goes wrong with it, and sparks when its posts are worked on.',
		source: { default: '33 CFR 183.420 (fuel); AS/NZS 3001.2 (rooms to live in), from memory' }
	},

	messages: {
		sleeping: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'stands' : 'stand'} where people sleep, without an enclosure vented to the outside.`,
			remedy: 'Move the batteries, or put them in an enclosure that is closed to the room and open to the outside.'
		}),
		fuel: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'stands' : 'stand'} where petrol or gas may gather.`,
			remedy: 'Move the batteries out of that space: a spark at a post lights what leaks.'
		})
	},

	*check(study) {
		const batteries = [...new Set(study.form.batteries.map(({ part }) => part))];
		const inSpace = (space: 'fuel' | 'sleeping') => batteries.filter((id) => isIn(study, id, space));
		const words = (ids: readonly string[]) => ({ names: listed(ids.map((id) => partName(study.part(id)))), one: ids.length === 1 });
		const fuel = inSpace('fuel');
		if (fuel.length > 0) {
			yield { message: 'fuel', severity: 'warning', data: words(fuel), at: subjects(fuel.map(partSubject)), source: '33 CFR 183.420' };
		}
		const sleeping = inSpace('sleeping').filter((id) => !isSet(study.part(id), 'enclosed'));
		if (sleeping.length > 0) {
			const source = 'AS/NZS 3001.2, from memory';
			yield { message: 'sleeping', data: words(sleeping), at: subjects(sleeping.map(partSubject)), source, unverified: true };
		}
	}
});
