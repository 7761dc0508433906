import { terminalRef, studKey, type Colour, type ColourScheme } from '#core/diagram';
import { defineRuleForEach } from './define.ts';
import { conductorSubject } from './subjects.ts';
import type { ConductorView, Study } from './study.ts';
import { capital } from './words.ts';

type Meaning = 'positive' | 'negative' | 'bonding';

interface Scheme {
	readonly name: string;
	readonly meaning: Partial<Record<Colour, Meaning>>;
	readonly unverified: boolean;
}

/** Colours a scheme keeps for one purpose. A colour it does not name may be used for any circuit. */
const SCHEMES: Record<ColourScheme, Scheme> = {
	abyc: {
		name: 'ABYC E-11 colour table',
		meaning: { red: 'positive', black: 'negative', yellow: 'negative', green: 'bonding', 'green-yellow': 'bonding' },
		unverified: false
	},
	'iec-60446': {
		name: 'IEC 60446 (now in IEC 60445), two-wire DC',
		meaning: { brown: 'positive', grey: 'negative', blue: 'negative', 'green-yellow': 'bonding' },
		unverified: false
	},
	'iec-60445': {
		name: 'IEC 60445:2017, DC',
		meaning: { red: 'positive', white: 'negative', 'green-yellow': 'bonding' },
		// The text of this edition was not seen.
		unverified: true
	}
};

const COLOUR_WORDS: Partial<Record<Colour, string>> = { 'green-yellow': 'green and yellow' };

export const colourFault = defineRuleForEach('conductors', {
	meta: {
		id: 'colour-fault',
		title: 'No conductor wears the colour of another pole',
		severity: 'error',
		group: 'documents',
		why: 'Whoever works on the system reads the pole from the colour: a positive conductor in a negative colour is taken for dead.',
		source: { default: 'the colour scheme chosen for the diagram' }
	},

	messages: {
		wrong: ({ name, pole, colour, meaning, scheme }: { name: string; pole: string; colour: string; meaning: string; scheme: string }) => ({
			message: `${capital(name)} is on the ${pole} pole and is ${colour}, which ${scheme} keeps for ${meaning} conductors.`,
			remedy: `Use a ${pole} colour, or put sleeves of a ${pole} colour on both ends.`
		})
	},

	*checkOne(view, study) {
		const { name: scheme, meaning: meanings, unverified } = SCHEMES[study.diagram.colourScheme];
		const { pole, conductor, id, name } = view;
		const meaning = meanings[conductor.colour];
		if ((pole !== 'positive' && pole !== 'negative') || meaning === undefined || meaning === pole) return;
		if (pole === 'negative' && meaning === 'bonding' && isBond(view, study)) return;
		const colour = COLOUR_WORDS[conductor.colour] ?? conductor.colour;
		yield { message: 'wrong', data: { name, pole, colour, meaning, scheme }, at: [conductorSubject(id)], source: scheme, unverified };
	}
});

/** A conductor to chassis or hull is a bonding conductor, on the negative pole as it is. */
function isBond({ conductor }: ConductorView, study: Study): boolean {
	return [conductor.from, conductor.to].some((ref) => {
		const { part, terminal } = terminalRef(studKey(ref));
		return study.part(part).terminal(terminal)?.role === 'chassis';
	});
}
