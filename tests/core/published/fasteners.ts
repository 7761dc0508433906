/** Studs, nuts, washers and holes, millimetres. */
import { thread, type Thread, type ThreadId } from '#core/tables';
import { cells, type PublishedTable } from '../../support/published.ts';

const of = (field: keyof Thread) => (id: string) => thread(id as ThreadId)[field] as number;
const column = (
	source: string,
	clause: string,
	seen: PublishedTable['seen'],
	field: keyof Thread,
	text: string,
	within = 0
): PublishedTable => ({
	source,
	clause,
	seen,
	way: 'looked up',
	values: cells(text, ['mm'], of(field), { what: (id) => id, within: () => within })
});

export const FASTENERS: readonly PublishedTable[] = [
	column('ISO 4032', 'nut, width across flats', 'two-sources', 'nutAcrossFlatsMm', 'M4 7\nM5 8\nM6 10\nM8 13\nM10 16\nM12 18'),
	column('ISO 4032', 'nut, greatest height', 'two-sources', 'nutHeightMm', 'M4 3.2\nM5 4.7\nM6 5.2\nM8 6.8\nM10 8.4\nM12 10.8'),
	column('ISO 7089', 'washer, outside diameter', 'two-sources', 'washerDiameterMm', 'M5 10\nM6 12\nM8 16\nM10 20\nM12 24'),
	column('ISO 7089', 'washer, thickness', 'two-sources', 'washerThicknessMm', 'M5 1.0\nM6 1.6\nM8 1.6\nM10 2.0\nM12 2.5'),
	column('ISO 273 fine (ISO 7089 d1)', 'hole of a ring', 'two-sources', 'holeMm', 'M5 5.3\nM6 6.4\nM8 8.4\nM10 10.5\nM12 13.0'),
	column('DIN 127:1987', 'spring washer, thickness', 'verified', 'lockWasherThicknessMm', 'M5 1.2\nM6 1.6\nM8 2.0\nM10 2.2\nM12 2.5'),
	column('DIN 127:1987', 'spring washer, diameter', 'verified', 'lockWasherDiameterMm', 'M5 9.2\nM6 11.8\nM8 14.8\nM10 18.1\nM12 21.1'),
	column(
		'ASME B18.2.2',
		'nut, greatest height',
		'verified',
		'nutHeightMm',
		'#8 3.137\n#10 3.137\n1/4 5.563\n5/16 6.744\n3/8 8.344\n1/2 11.113'
	),
	{
		...column(
			'ASME B18.2.2',
			'nut, least width across flats',
			'verified',
			'nutAcrossFlatsMm',
			'#8 8.585\n#10 9.36\n1/4 10.998\n5/16 12.56\n3/8 14.148\n1/2 18.872'
		),
		because: 'ours are the nominal widths 11/32 to 3/4 in, of which the standard allows 1 to 1.8 % less',
		values: cells(
			'#8 8.585\n#10 9.36\n1/4 10.998\n5/16 12.56\n3/8 14.148\n1/2 18.872',
			['mm'],
			(id) => thread(id as ThreadId).nutAcrossFlatsMm * 0.9885,
			{ what: (id) => id, within: (printed) => printed * 0.007 }
		)
	},
	column(
		'ASME B18.21.1 type A narrow',
		'washer, outside diameter',
		'verified',
		'washerDiameterMm',
		'#8 9.525\n#10 10.312\n1/4 12.7\n5/16 15.875\n3/8 18.644\n1/2 25.4'
	),
	column(
		'ASME B18.21.1 type A narrow',
		'washer, greatest thickness',
		'verified',
		'washerThicknessMm',
		'#8 1.016\n#10 1.016\n1/4 1.6\n5/16 1.6\n3/8 1.6'
	)
];
