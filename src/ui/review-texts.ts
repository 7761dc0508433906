/** Sentences of links, remarks and revisions. */
const many = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;

export const shareTexts = {
	title: 'Link',
	about:
		'The whole diagram in an address: whoever opens it looks at it read only, without an account or a server. Issued revisions stay here.',
	making: 'Making the link…',
	field: (characters: number) => `Address, ${characters.toLocaleString('en')} characters`,
	copy: 'Copy a link',
	copied: (characters: number) => `Copied, ${characters.toLocaleString('en')} characters.`,
	notCopied: 'The browser did not allow copying: select the address above and copy it by hand.',
	embed: 'Show it within another page',
	embedAbout: 'A small page with the drawing, lenses and the count of findings. Put this where the page is written:',
	embedField: 'For the page',
	frameTitle: 'Wiring diagram',

	refused: 'This diagram came with a link and is read only. Make a copy to edit it.',
	banner: 'Read only: from a link.',
	copyToEdit: 'Make a copy to edit',
	opened: (title: string) => `Opened ${title} from a link, read only.`,
	copyMade: 'This is your copy now: it is kept in this browser.',
	copyNotKept: 'This is your copy now, but the browser cannot keep it: save it as a file.',
	brokenTitle: 'The link cannot be opened',
	leaveTitle: 'Your remarks are not saved',
	leave: 'Remarks you made here are in no file yet, and are lost when another diagram is opened.',
	leaveYes: 'Give them up',
	leaveNo: 'Stay here',

	whole: 'Open it whole',
	bar: 'Diagram',
	waiting: 'Checking…',
	noFindings: 'Nothing found',
	notChecked: 'The check failed',
	noLink: 'There is no diagram in this address.',
	noLinkHint: 'Copy the lines again from “Show it within another page”.',
	counted: (count: number) => many(count, 'finding')
};
