import type { Content, Part, PartId } from '#core/diagram';
import { describe, fieldMeta, type FieldMeta } from '#core/parts';
import { compactNumber } from '#core/units';
import { ids, same, type DrawingChange, type Pair } from './change.ts';
import { partText, terminalText } from './names.ts';

export function partChanges({ before, after }: Pair): readonly DrawingChange[] {
	return ids(before.parts, after.parts).flatMap((id): readonly DrawingChange[] => {
		const [old, now] = [before.parts[id], after.parts[id]];
		const subject = { kind: 'part', id } as const;
		if (!old) return [{ sort: 'electrical', how: 'added', subject, name: partText(after, id), text: `added: ${whole(now!)}` }];
		if (!now) return [{ sort: 'electrical', how: 'removed', subject, name: partText(before, id), text: `removed: ${whole(old)}` }];
		return [...differences(before, id, old, now), ...mountChange({ before, after }, id)];
	});
}

function whole(part: Part): string {
	const { definition, name, summary } = describe(part);
	return [definition ? name.toLowerCase() : part.kind, summary].filter((text) => text !== '').join(', ');
}

function differences(before: Content, id: PartId, old: Part, now: Part): DrawingChange[] {
	const subject = { kind: 'part', id } as const;
	const name = partText(before, id);
	const changed = (sort: DrawingChange['sort'], text: string): DrawingChange => ({ sort, how: 'changed', subject, name, text });
	const changes: DrawingChange[] = [];
	if (old.label !== now.label) changes.push(changed('words', `is called ${now.label.trim() || 'nothing'} now`));
	if (old.kind !== now.kind) return [...changes, changed('electrical', `${whole(old)} to ${whole(now)}`)];
	changes.push(...paramTexts(old, now).map((text) => changed('electrical', text)));
	if (old.note !== now.note) changes.push(changed('words', now.note.trim() === '' ? 'its note was taken out' : `note: ${now.note.trim()}`));
	if (old.rotation !== now.rotation) changes.push(changed('moved', 'turned on the drawing'));
	if (!same(old.at, now.at)) changes.push(changed('moved', 'moved on the drawing'));
	return changes;
}

function mountChange({ before, after }: Pair, id: PartId): DrawingChange[] {
	const [old, now] = [before.mounts[id], after.mounts[id]];
	if (same(old, now)) return [];
	const text = (content: Content, mount: typeof old): string => (mount ? `on ${terminalText(content, mount)}` : 'by itself');
	const subject = { kind: 'part', id } as const;
	return [
		{
			sort: 'electrical',
			how: 'changed',
			subject,
			name: partText(before, id),
			text: `sat ${text(before, old)}, sits ${text(after, now)} now`
		}
	];
}

/** "100 A to 80 A" for a fuse’s rating, which needs no title; "positions 6 to 8"; "position 3: 40 A to 50 A". */
function paramTexts(old: Part, now: Part): string[] {
	const [was, is] = [describe(old), describe(now)];
	const shape = was.definition?.params.shape as Record<string, Parameters<typeof fieldMeta>[0]> | undefined;
	return ids(was.params, is.params).flatMap((key) => {
		const [a, b] = [was.params[key], is.params[key]];
		if (same(a, b)) return [];
		const schema = shape?.[key];
		if (!schema) return [`${key} ${String(a)} to ${String(b)}`];
		const meta = fieldMeta(schema);
		const unit = unitOf(meta, is.params);
		if (!Array.isArray(a) || !Array.isArray(b)) return [`${lead(meta, unit)}${valueText(a, meta, unit)} to ${valueText(b, meta, unit)}`];
		return Array.from({ length: Math.max(a.length, b.length) }, (_, i) => i)
			.filter((i) => !same(a[i] ?? null, b[i] ?? null))
			.map((i) => `position ${i + 1}: ${valueText(a[i] ?? null, meta, unit)} to ${valueText(b[i] ?? null, meta, unit)}`);
	});
}

const unitOf = ({ unit, unitBy }: FieldMeta, params: Readonly<Record<string, unknown>>): string =>
	(unitBy ? unitBy.units[String(params[unitBy.param])] : undefined) ?? unit ?? '';

/** A fuse's amps need no title: nobody says "rating 100 A". */
const lead = ({ title }: FieldMeta, unit: string): string =>
	unit === 'A' && /rating|^fuse/i.test(title) ? '' : `${title.charAt(0).toLowerCase()}${title.slice(1)} `;

function valueText(value: unknown, { options, whenEmpty }: FieldMeta, unit: string): string {
	if (value === null || value === undefined) return whenEmpty ?? 'not given';
	const option = options?.find((candidate) => candidate.value === value);
	if (option) return option.label;
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	if (typeof value === 'number') return `${compactNumber(value, 4)}${unit === '' ? '' : ` ${unit}`}`;
	return value === '' ? 'nothing' : String(value);
}
