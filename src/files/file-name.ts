const LONGEST = 80;

/**
 * A file name that every system accepts, from the diagram's title: "Ridge Post 3: trailer" → "Ridge Post 3 trailer.json".
 * Without a title it is "diagram.json".
 */
export function fileName(title: string, ending = 'json'): string {
	const stem = title
		.normalize('NFC')
		.replace(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
		.replace(/\s+/g, ' ')
		.slice(0, LONGEST)
		.replace(/^[. ]+|[. ]+$/g, '');
	// Names that one widespread system keeps for devices.
	const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(stem);
	return `${stem === '' || reserved ? 'diagram' : stem}.${ending}`;
}
