import { gaugeText } from '#core/conductors';
import type { Conductor, ConductorId, Content, TerminalRef } from '#core/diagram';
import { celsiusText, metresText } from '#core/units';
import { ids, same, type DrawingChange, type Pair } from './change.ts';
import { conductorText, terminalText } from './names.ts';

type Words = (value: never, content: Content) => string;

const plain = (value: unknown): string => String(value).replaceAll('-', ' ');
const landing = (ref: TerminalRef, content: Content): string => terminalText(content, ref);
const optional = (value: unknown): string => (value === null || value === undefined ? 'not given' : String(value));

/** Every field of a conductor but its label, its bends and whether it is locked, with the words for a value of it. */
const FIELDS: Readonly<Record<Exclude<keyof Conductor, 'label' | 'bends' | 'locked'>, { readonly title: string; readonly text: Words }>> = {
	gauge: { title: '', text: gaugeText },
	lengthM: { title: 'length ', text: (length: number | null) => (length === null ? 'not measured' : metresText(length)) },
	from: { title: 'its start from ', text: landing },
	to: { title: 'its end from ', text: landing },
	insulationC: { title: 'insulation ', text: celsiusText },
	colour: { title: 'colour ', text: plain },
	environment: {
		title: 'runs ',
		text: (where: Conductor['environment']) => (where === 'outside' ? 'outside the engine space' : 'in the engine space')
	},
	bundleCount: { title: 'bundled with ', text: (count: number) => `${count - 1} others` },
	sheathed: { title: '', text: (is: boolean) => (is ? 'sheathed' : 'not sheathed') },
	use: { title: 'use ', text: plain },
	fromHole: { title: 'lug hole at its start ', text: optional },
	toHole: { title: 'lug hole at its end ', text: optional },
	fromTorqueNm: { title: 'torque at its start, N·m, ', text: optional },
	toTorqueNm: { title: 'torque at its end, N·m, ', text: optional },
	solid: { title: '', text: (is: boolean | undefined) => (is ? 'solid' : 'stranded') },
	placedByHand: { title: 'its place ', text: (is: boolean | undefined) => (is ? 'set by hand' : 'as the areas say') },
	pinned: { title: '', text: (is: boolean | undefined) => (is ? 'size pinned' : 'size not pinned') }
};

export function conductorChanges({ before, after }: Pair): readonly DrawingChange[] {
	return ids(before.conductors, after.conductors).flatMap((id): readonly DrawingChange[] => {
		const [old, now] = [before.conductors[id], after.conductors[id]];
		const subject = { kind: 'conductor', id } as const;
		const whole = (content: Content, conductor: Conductor): string =>
			`${gaugeText(conductor.gauge)}, ${conductor.lengthM === null ? 'length not measured' : metresText(conductor.lengthM)}, ${terminalText(content, conductor.from)} to ${terminalText(content, conductor.to)}`;
		if (!old) return [{ sort: 'electrical', how: 'added', subject, name: conductorText(after, id), text: `added: ${whole(after, now!)}` }];
		if (!now)
			return [{ sort: 'electrical', how: 'removed', subject, name: conductorText(before, id), text: `removed: ${whole(before, old)}` }];
		return differences({ before, after }, id, old, now);
	});
}

function differences({ before, after }: Pair, id: ConductorId, old: Conductor, now: Conductor): DrawingChange[] {
	const subject = { kind: 'conductor', id } as const;
	const name = conductorText(before, id);
	const changes: DrawingChange[] = [];
	if (old.label !== now.label)
		changes.push({ sort: 'words', how: 'changed', subject, name, text: `is called ${now.label.trim() || 'nothing'} now` });
	for (const [field, { title, text }] of Object.entries(FIELDS) as [keyof typeof FIELDS, (typeof FIELDS)[keyof typeof FIELDS]][]) {
		if (same(old[field] ?? null, now[field] ?? null)) continue;
		const words = text as (value: unknown, content: Content) => string;
		changes.push({
			sort: 'electrical',
			how: 'changed',
			subject,
			name,
			text: `${title}${words(old[field], before)} to ${words(now[field], after)}`
		});
	}
	if (!same(old.bends, now.bends)) changes.push({ sort: 'moved', how: 'changed', subject, name, text: 'drawn another way' });
	return changes;
}
