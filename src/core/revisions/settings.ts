import type { Content, OperatingCase, TitleBlock } from '#core/diagram';
import { profileOf } from '#core/profiles';
import { asDiagram } from './as-diagram.ts';
import { ids, same, type ChangeSort, type DrawingChange, type Pair } from './change.ts';
import { partText } from './names.ts';
import { celsiusText } from '#core/units';

const SUBJECT = { kind: 'diagram', id: '' } as const;
const change = (sort: ChangeSort, name: string, text: string, how: DrawingChange['how'] = 'changed'): DrawingChange => ({
	sort,
	how,
	subject: SUBJECT,
	name,
	text
});

const TITLES: Readonly<Record<keyof TitleBlock, string>> = {
	title: 'title',
	supplementaryTitle: 'supplementary title',
	legalOwner: 'legal owner',
	identificationNumber: 'identification number',
	craft: 'craft',
	revisionIndex: 'revision',
	dateOfIssue: 'date of issue',
	documentType: 'type of document',
	creator: 'creator',
	approvalPerson: 'approval'
};

export function settingChanges({ before, after }: Pair): readonly DrawingChange[] {
	const settings: readonly (readonly [name: string, text: (content: Content) => string])[] = [
		['System', ({ system }) => `${system.nominalV} V`],
		['System', ({ system }) => system.craft],
		['System', ({ system }) => (system.negative === 'bonded' ? 'negative bonded' : 'negative insulated')],
		['Profile', (content) => profileOf(asDiagram(content)).name],
		['Around', ({ ambient }) => `${celsiusText(ambient.outsideC)} outside`],
		['Engine space', ({ ambient }) => celsiusText(ambient.engineSpaceC)],
		['Colours', ({ colourScheme }) => colourScheme.toUpperCase()]
	];
	const own = settings
		.filter(([, text]) => text(before) !== text(after))
		.map(([name, text]) => change('electrical', name, `${text(before)} to ${text(after)}`));
	return [
		...own,
		...profileNumbers({ before, after }),
		...caseChanges({ before, after }),
		...waiverChanges({ before, after }),
		...titleChanges({ before, after })
	];
}

/** Numbers that a custom profile puts in another's place. */
function profileNumbers({ before, after }: Pair): DrawingChange[] {
	const [old, now] = [before.customProfile?.numbers ?? {}, after.customProfile?.numbers ?? {}];
	return ids(old, now)
		.filter((key) => old[key] !== now[key])
		.map((key) => change('electrical', 'Profile', `${key} ${old[key] ?? 'as published'} to ${now[key] ?? 'as published'}`));
}

function titleChanges({ before, after }: Pair): DrawingChange[] {
	// That a revision bears another letter and date is what makes it one.
	const fields = (Object.keys(TITLES) as (keyof TitleBlock)[]).filter((field) => field !== 'revisionIndex' && field !== 'dateOfIssue');
	return fields
		.filter((field) => before.titleBlock[field] !== after.titleBlock[field])
		.map((field) =>
			change('words', 'Title block', `${TITLES[field]} ${before.titleBlock[field] || 'empty'} to ${after.titleBlock[field] || 'empty'}`)
		);
}

function caseChanges({ before, after }: Pair): DrawingChange[] {
	return ids(before.cases, after.cases).flatMap((id): readonly DrawingChange[] => {
		const [old, now] = [before.cases[id], after.cases[id]];
		const name = `Case “${(now ?? old)!.label}”`;
		if (!old) return [change('electrical', name, 'added', 'added')];
		if (!now) return [change('electrical', name, 'removed', 'removed')];
		return caseTexts({ before, after }, old, now).map((text) => change('electrical', name, text));
	});
}

function caseTexts({ before, after }: Pair, old: OperatingCase, now: OperatingCase): string[] {
	const texts: string[] = [];
	const put = (title: string, a: unknown, b: unknown): void => {
		if (!same(a, b)) texts.push(`${title} ${String(a)} to ${String(b)}`);
	};
	put('was called', old.label, now.label);
	put('lasts', old.duration, now.duration);
	put('loads at', old.loads, now.loads);
	put('sources at', old.sources, now.sources);
	put('batteries', old.battery ?? 'rest', now.battery ?? 'rest');
	for (const id of ids(old.levels, now.levels)) {
		const name = partText(Object.hasOwn(after.parts, id) ? after : before, id);
		put(name, old.levels[id] ?? 'as the others', now.levels[id] ?? 'as the others');
	}
	const starting = (value: OperatingCase): string =>
		Object.keys(value.starting ?? {})
			.sort()
			.join(', ') || 'all together';
	put('starting', starting(old), starting(now));
	return texts;
}

function waiverChanges({ before, after }: Pair): DrawingChange[] {
	return ids(before.waivers, after.waivers).flatMap((key): readonly DrawingChange[] => {
		const [old, now] = [before.waivers[key], after.waivers[key]];
		const rule = `Finding ${key.slice(0, key.indexOf(':'))}`;
		if (same(old, now)) return [];
		if (!now) return [change('words', rule, 'is not accepted any more', 'removed')];
		return [change('words', rule, `accepted by ${now.by}: ${now.reason}`, old ? 'changed' : 'added')];
	});
}
