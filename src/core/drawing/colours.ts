/** What colour a conductor's insulation is drawn in. */
import type { Colour, Conductor, Diagram } from '#core/diagram';
import type { Pole } from '#core/network';

export type Insulation = Exclude<Colour, 'auto'>;

/** What a conductor is for, as far as its colour goes. */
export type Use = Pole | 'bond';

const GREY: Pick<Record<Use, Insulation>, 'shorted' | 'floating'> = { shorted: 'violet', floating: 'grey' };

/**
 * ABYC E-11: DC positive red, negative black or yellow, bonding green. IEC 60446: L+ brown, L− grey, blue where
 * the negative is earthed, protective green-yellow. IEC 60445 from 2017 on (from memory): L+ red, L− white.
 */
function schemeColours({ colourScheme, system }: Pick<Diagram, 'colourScheme' | 'system'>): Record<Use, Insulation> {
	switch (colourScheme) {
		case 'abyc':
			return { ...GREY, positive: 'red', negative: 'black', bond: 'green' };
		case 'iec-60446':
			return {
				...GREY,
				positive: 'brown',
				negative: system.negative === 'bonded' ? 'blue' : 'grey',
				bond: 'green-yellow',
				// Grey means L− here.
				floating: 'tan'
			};
		case 'iec-60445':
			return { ...GREY, positive: 'red', negative: 'white', bond: 'green-yellow' };
	}
}

export const insulationColour = (
	conductor: Pick<Conductor, 'colour'>,
	use: Use,
	diagram: Pick<Diagram, 'colourScheme' | 'system'>
): Insulation => (conductor.colour === 'auto' ? schemeColours(diagram)[use] : conductor.colour);

const LIGHT: ReadonlySet<Insulation> = new Set(['yellow', 'white', 'pink', 'tan', 'grey', 'orange', 'green-yellow']);

/** A colour for marks on the insulation that stands out in any theme. */
export const markColour = (colour: Insulation): `conductor:${Insulation}` => (LIGHT.has(colour) ? 'conductor:black' : 'conductor:white');
