/**
 * A catalogue: the sentences of one feature. Written in English where they are used; what is read from it is in the
 * language of the window, also after that was changed.
 */
import { language, type CatalogueId } from './language.svelte.ts';

/**
 * @param english texts, functions of what is put into them, lists, and groups of these. The other languages' files are
 *   of the same type (src/ui/de), so that none can lack a text or take other data.
 */
export const catalogue = <Texts extends object>(id: CatalogueId, english: Texts): Texts =>
	inLanguage(english, () => (language.catalogue(id) as Texts | undefined) ?? english);

function inLanguage<Group extends object>(english: Group, now: () => Group): Group {
	const groups = new Map<PropertyKey, object>();
	return new Proxy(english, {
		get(target, key) {
			const own: unknown = Reflect.get(target, key);
			if (!isGroup(own)) return Reflect.get(now(), key);
			let group = groups.get(key);
			if (!group) groups.set(key, (group = inLanguage(own, () => Reflect.get(now(), key) as object)));
			return group;
		}
	});
}

const isGroup = (value: unknown): value is object => typeof value === 'object' && value !== null && !Array.isArray(value);
