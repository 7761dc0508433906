/** Where a part stands and what it is made to bear there. The same for every kind, folded in the inspector. */
import { choice, flag, optionalAmount } from './fields.ts';

const words = { section: 'site' } as const;

export const siteFields = () => ({
	space: choice(
		'Where it is',
		'ordinary',
		{
			ordinary: 'dry, with people about',
			sleeping: 'where people sleep',
			engine: 'engine space',
			fuel: 'where petrol or gas may gather',
			wet: 'spray or rain',
			flooded: 'where water may stand'
		},
		words
	),
	ignitionProtected: flag('Ignition protected', false, { ...words, hint: 'marked as such: a spark inside cannot light vapour outside' }),
	water: choice(
		'Kept from water',
		'not-known',
		{
			'not-known': 'not known',
			none: 'not at all (IP x0 to x3)',
			splashes: 'splashes (IP x4)',
			jets: 'jets (IP x5, x6)',
			immersion: 'immersion (IP x7, x8)'
		},
		words
	),
	liveStuds: choice(
		'Live studs',
		'not-known',
		{ 'not-known': 'not known', covered: 'under a cover or boots', bare: 'bare, within reach' },
		words
	),
	madeForC: optionalAmount('Made for up to', '°C', { ...words, max: 200, hint: 'of the air around it' }),
	terminalC: optionalAmount('Terminals made for up to', '°C', { ...words, max: 250, hint: 'as marked: 60, 75, 90' })
});

/** What rules ask of any part; a kind without these fields stands in an ordinary place and nothing is known of it. */
export type Space = 'ordinary' | 'sleeping' | 'engine' | 'fuel' | 'wet' | 'flooded';
