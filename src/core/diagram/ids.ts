/** "F1", "F2" …: the first free id with this prefix. The same record always gives the same answer. */
export function freshId(record: Readonly<Record<string, unknown>>, prefix: string): string {
	let number = 1;
	while (Object.hasOwn(record, `${prefix}${number}`)) number += 1;
	return `${prefix}${number}`;
}

/** Whether a record has this id of its own; `id in record` would also find what every object inherits. */
export const has = (record: Readonly<Record<string, unknown>>, id: string): boolean => Object.hasOwn(record, id);
