/** Line icons on a 20 × 20 grid, drawn with `currentColor`; each is the `d` of one path. */
export const icons = {
	new: 'M5 2.5h7l3.5 3.5v11.5H5zM12 2.5V6h3.5M10.2 9v5M7.7 11.5h5',
	open: 'M2.5 16V4.5h5l1.5 2h7V9M2.5 16l2.6-7h13l-2.6 7z',
	save: 'M10 2.5v9M6.2 8l3.8 3.8L13.8 8M3 13.5V17h14v-3.5',
	handOver: 'M5 7.5V2.5h10v5M5 14H2.5V7.5h15V14H15M5 11.5h10v6H5z',
	examples: 'M3 3h6v6H3zM11 3h6v6h-6zM3 11h6v6H3zM11 14h6M14 11v6',
	diagrams: 'M2.5 5.5h15v11h-15zM2.5 9h15M5 5.5 6 3h8l1 2.5M8 12h4',
	undo: 'M7 4 3 8l4 4M3.4 8H12a4.2 4.2 0 0 1 0 8.4H8',
	redo: 'M13 4l4 4-4 4M16.6 8H8a4.2 4.2 0 0 0 0 8.4h4',
	select: 'M4 2.8 15.5 10l-5 1.2 2.8 5-2.2 1.2-2.8-5L4.8 16z',
	connect: 'M4 14.5h4.5v-9H13M2.2 14.5a1.8 1.8 0 1 0 3.6 0 1.8 1.8 0 1 0-3.6 0M13 5.5a2 2 0 1 0 4 0 2 2 0 1 0-4 0',
	pan: 'M10 2v16M2 10h16M10 2 7.8 4.2M10 2l2.2 2.2M10 18l-2.2-2.2M10 18l2.2-2.2M2 10l2.2-2.2M2 10l2.2 2.2M18 10l-2.2-2.2M18 10l-2.2 2.2',
	fit: 'M2.5 7V2.5H7M13 2.5h4.5V7M17.5 13v4.5H13M7 17.5H2.5V13M6.5 6.5h7v7h-7z',
	plus: 'M10 4v12M4 10h12',
	minus: 'M4 10h12',
	close: 'M5 5l10 10M15 5 5 15',
	help: 'M7.2 7.4a2.9 2.9 0 1 1 4.3 2.5c-1 .6-1.5 1.1-1.5 2.4M10 15.2v.3M2.2 10a7.8 7.8 0 1 0 15.6 0 7.8 7.8 0 1 0-15.6 0',
	light:
		'M6.5 10a3.5 3.5 0 1 0 7 0 3.5 3.5 0 1 0-7 0M10 1.8v2M10 16.2v2M1.8 10h2M16.2 10h2M4.2 4.2l1.4 1.4M14.4 14.4l1.4 1.4M15.8 4.2l-1.4 1.4M5.6 14.4l-1.4 1.4',
	dark: 'M16.5 12.2A7 7 0 1 1 8 3.4a5.6 5.6 0 0 0 8.5 8.8z',
	system: 'M2.5 4h15v9.5h-15zM7 17h6M10 13.5V17',
	up: 'M10 16V4.5M5.5 9 10 4.5 14.5 9',
	down: 'M10 4v11.5M5.5 11l4.5 4.5 4.5-4.5',
	chevron: 'M7 4.5 12.5 10 7 15.5',
	shelf: 'M3 3v14M3 8h14M3 16h14M6 3.5h4V8H6zM12 11h4v5h-4zM6.5 12.5h3V16h-3z',
	outline: 'M3 4h6M6 4v12h4M6 10h4M12 10h5M12 16h5',
	inspector: 'M3 5.5h8M15 5.5h2M3 10h2M9 10h8M3 14.5h8M15 14.5h2M11 3.7v3.6M15 3.7v3.6M5 8.2v3.6M9 8.2v3.6M11 12.7v3.6M15 12.7v3.6',
	findings: 'M10 2.8 18 17H2zM10 8v4.2M10 14.4v.3',
	rotate: 'M15.8 8.2A6.2 6.2 0 1 0 16 12M16.5 3.5v5h-5',
	delete: 'M3.5 5.5h13M8 5.5V3h4v2.5M5 5.5 6 17h8l1-11.5M8.3 8.5l.3 5.5M11.7 8.5l-.3 5.5',
	duplicate: 'M7 7h10v10H7zM13 7V3H3v10h4',
	dockRight: 'M2.5 3.5h15v13h-15zM12 3.5v13',
	dockBottom: 'M2.5 3.5h15v13h-15zM2.5 11.5h15',
	caution: 'M10 2.8 18 17H2zM10 8v4.2M10 14.4v.3'
} as const;

export type IconName = keyof typeof icons;
