/** Sentences of keeping: the diagrams on this device, their versions, two tabs, and what may go wrong with them. */
import type { Fault, FaultKind, News, VersionReason } from '#keeping';
import { fixedText } from '#core/units';
import { language } from './language/language.svelte.ts';
import { catalogue } from './language/catalogue.ts';

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** What happened, and what to do. */
const FAULTS: Record<FaultKind, { readonly what: string; readonly remedy: string }> = {
	full: {
		what: 'There is no room left on this device for the latest changes',
		remedy:
			'Save the diagram as a file now. Then make room: empty the bin under Diagrams, or free some of the disk. It is tried again by itself.'
	},
	newer: {
		what: 'The diagrams on this device were kept by a newer version of this program',
		remedy: 'Close all its tabs and open it again to get that version. They are untouched; until then, save your work as a file.'
	},
	unavailable: {
		what: 'This browser keeps nothing for this page',
		remedy: 'In a private window, or where site data is forbidden, work is lost with the tab. Save it as a file.'
	},
	closed: {
		what: 'The browser closed the store of diagrams',
		remedy: 'It is tried again by itself. If this stays, save the diagram as a file and load the page again.'
	},
	elsewhere: {
		what: 'Another tab edits this diagram',
		remedy: 'Ask for it with “Edit here”, or close the other tab.'
	},
	gone: { what: 'The diagram is not on this device any more', remedy: 'It may have been thrown away in another tab.' },
	failed: {
		what: 'The latest changes could not be kept on this device',
		remedy: 'It is tried again by itself. To be safe, save the diagram as a file.'
	}
};

const NEWS: Record<News['kind'], string> = {
	'your-turn': 'This tab edits the diagram now.',
	'handed-over': 'Another tab asked for this diagram and edits it now. All your changes were kept.',
	'taken-away': 'Another tab took this diagram over. All your changes had been kept.',
	'no-answer': 'The other tab does not answer.',
	stays: 'The other tab holds changes that it could not keep yet, so it goes on. Look there first.',
	'put-back': 'The diagram had gone from this device; it was put back from what is open here.'
};

export const keepingTexts = catalogue('keeping', {
	state: {
		kept: 'Kept',
		keptHint: 'Every change is kept in this browser at once. Save writes a file.',
		keeping: 'Keeping…',
		notKept: 'Not kept',
		reading: 'Read only'
	},

	fault: ({ kind, reason }: Fault): string => {
		const { what, remedy } = FAULTS[kind];
		const said = kind === 'failed' && reason !== '' ? ` (${reason.replace(/\.$/, '')})` : '';
		return `${what}${said}. ${remedy}`;
	},
	news: ({ kind }: News): string => NEWS[kind],
	copied: 'Another tab took this diagram over before your last changes were kept. They go on here as a second diagram of the same name.',

	reading: {
		banner: 'This diagram is being edited in another tab. You see it here as it changes.',
		refused: 'Another tab edits this diagram, so nothing can be changed here. Press “Edit here” to go on in this tab.',
		editHere: 'Edit here',
		asked: 'Asked…',
		forceTitle: 'The other tab does not answer',
		force:
			'It may be asleep or stuck. You can edit here all the same; changes that it has not kept yet then go into a diagram of their own.',
		forceYes: 'Edit here all the same',
		forceNo: 'Keep reading'
	},

	opening: 'What was open last is still being fetched.',
	resumed: (name: string) => `Opened ${name}, as it was when it was last changed.`,
	lost: (n: number) =>
		`The last ${count(n, 'step')} could not be read and ${n === 1 ? 'is' : 'are'} missing: that part of the store was damaged. Everything before is here.`,
	unreadable: 'It could not be read: what is kept of it is damaged. It stays under Diagrams; an earlier version may still open.',

	disk: {
		changedTitle: (name: string) => `${name} was changed by another program`,
		onSave: 'Since you opened or saved it here, something else has written this file. Saving would write over that.',
		overwrite: 'Write over it',
		elsewhere: 'Save as another file',
		cancel: 'Do not save',
		onFocus: 'You can look at what is in the file now; that is one step, and undo brings back what is open here.',
		load: 'Show what is in the file',
		stay: 'Keep what is open',
		loaded: (name: string) => `Showing what is in ${name} now.`,
		step: (name: string) => `take over ${name}`
	},

	diagrams: {
		button: 'Diagrams',
		buttonHint: 'All diagrams kept in this browser',
		title: 'Diagrams',
		search: 'Find a diagram',
		none: 'Nothing is kept yet. A diagram comes here with its first change.',
		noneFound: (query: string) => `No diagram is called “${query}”.`,
		list: 'Kept diagrams',
		open: 'open now',
		untitled: 'Untitled diagram',
		card: (parts: number, conductors: number) => `${count(parts, 'part')}, ${count(conductors, 'conductor')}`,
		changed: (date: string) => `changed ${date}`,
		binnedOn: (date: string) => `in the bin since ${date}`,
		duplicate: 'Duplicate',
		copyOf: (name: string) => `${name} (copy)`,
		rename: 'Rename',
		name: 'New name',
		store: 'Store the name',
		cancel: 'Cancel',
		versions: 'Versions',
		bin: 'To the bin',
		restore: 'Put back',
		showBin: (n: number) => `Bin (${n})`,
		leaveBin: 'Back to the diagrams',
		binEmpty: 'The bin is empty.',
		emptyBin: 'Empty the bin',
		emptyTitle: 'Empty the bin?',
		emptyText: (n: number) => `${count(n, 'diagram')} with all versions will be gone for good.`,
		emptyYes: 'Throw away for good',
		emptyNo: 'Keep them',
		emptied: (n: number) => `${count(n, 'diagram')} thrown away for good.`,
		binned: (name: string) => `${name} is in the bin. It can be put back.`,
		restored: (name: string) => `${name} is back.`,
		duplicated: (name: string) => `Made ${name}.`,
		renamed: (name: string) => `It is called ${name} now.`,
		exportAll: 'Save all as one file',
		importAll: 'Add from a file…',
		exported: (n: number, unreadable: readonly string[]) =>
			`Saved ${count(n, 'diagram')} in one file.${unreadable.length === 0 ? '' : ` Not readable, and left out: ${unreadable.join(', ')}.`}`,
		imported: (n: number, refused: readonly string[]) =>
			`Added ${count(n, 'diagram')}.${refused.length === 0 ? '' : ` Left out: ${refused.join(' ')}`}`,
		notImported: 'Nothing was added',
		close: 'Close',
		archiveName: (date: string) => `Wireworthy diagrams ${date}`
	},

	storage: {
		promised: 'The browser has promised not to clear them.',
		notPromised: 'The browser may clear them when the disk gets short; save as files what must last.',
		unknown: 'The browser does not say for how long it keeps them; save as files what must last.',
		where: 'Diagrams are kept in this browser, on this device, and nowhere else.',
		used: (used: string) => `${used} in use.`
	},

	versions: {
		title: (name: string) => `Versions of ${name}`,
		back: 'All diagrams',
		list: 'Versions, newest first',
		none: 'No version is kept yet. One is kept at each save, every ten minutes of work, and before going back to another.',
		restore: 'Go back to this',
		restoreHint: 'One step, which undo takes back',
		openFirst: 'Open the diagram to go back to a version.',
		unreadable: 'This version cannot be read.',
		drawing: (date: string) => `The drawing as of ${date}`,
		step: (date: string) => `go back to the version of ${date}`,
		why: {
			saved: 'saved as a file',
			worked: 'kept while working',
			'before-restoring': 'before going back',
			opened: 'as it was first opened',
			mended: 'after mending'
		} satisfies Record<VersionReason, string>
	}
});

export const dateText = (ms: number): string =>
	new Intl.DateTimeFormat(language.locale, { dateStyle: 'medium', timeStyle: 'short' }).format(ms);
/** For file names: "2026-11-25". */
export const dayText = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
export const bytesText = (bytes: number): string => (bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${fixedText(bytes / 1e6, 1)} MB`);
