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
const ABYC: Record<Use, Insulation> = { ...GREY, positive: 'red', negative: 'black', bond: 'green' };
// Grey means L− here.
const IEC_60446: Record<Use, Insulation> = { ...GREY, positive: 'brown', negative: 'grey', bond: 'green-yellow', floating: 'tan' };
const IEC_60446_EARTHED: Record<Use, Insulation> = { ...IEC_60446, negative: 'blue' };
const IEC_60445: Record<Use, Insulation> = { ...GREY, positive: 'red', negative: 'white', bond: 'green-yellow' };

function schemeColours({ colourScheme, system }: Pick<Diagram, 'colourScheme' | 'system'>): Record<Use, Insulation> {
	switch (colourScheme) {
		case 'abyc':
			return ABYC;
		case 'iec-60446':
			return system.negative === 'bonded' ? IEC_60446_EARTHED : IEC_60446;
		case 'iec-60445':
			return IEC_60445;
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
