/**
 * A copy has lost the identity of what did not change, and with it all that the check remembers of it. This gives
 * it back: members of `after` equal to those of `before` are replaced by them, in place, and the whole if all are.
 * Keys in another order count as a change, because records are shown in their order.
 *
 * @param after a copy that nobody else holds, of plain objects, arrays and primitive values
 */
export const shareUnchanged = <Value>(before: unknown, after: Value): Value => share(before, after) as Value;

function share(before: unknown, after: unknown): unknown {
	if (!isObject(before) || !isObject(after) || Array.isArray(before) !== Array.isArray(after)) return after;
	const [keys, keysBefore] = [Object.keys(after), Object.keys(before)];
	let isSame = keys.length === keysBefore.length;
	keys.forEach((key, i) => {
		isSame &&= key === keysBefore[i];
		if (!Object.hasOwn(before, key)) return;
		after[key] = share(before[key], after[key]);
		isSame &&= Object.is(after[key], before[key]);
	});
	return isSame ? before : after;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
