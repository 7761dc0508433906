/** Sentences of what looks behind the findings and figures: mends, acceptance, volts lost, explanations, lenses. */
import type { RungKind } from '#core/explain';
import type { Origin } from '#core/explain';
import { catalogue } from './language/catalogue.ts';

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const insightTexts = catalogue('insight', {
	mend: {
		group: 'Ways to mend it',
		mend: 'Mend',
		mendAnyway: 'Mend all the same',
		looking: 'Looking for what would mend it…',
		failed: (reason: string) => `What would mend it could not be worked out (${reason}).`,
		counts: ({
			errorsBefore,
			errorsAfter,
			warningsBefore,
			warningsAfter
		}: Record<`${'errors' | 'warnings'}${'Before' | 'After'}`, number>) =>
			`Errors ${errorsBefore} → ${errorsAfter}, warnings ${warningsBefore} → ${warningsAfter}`,
		changes: 'What would change',
		cleared: 'Gone or milder',
		added: 'New or worse',
		changed: 'Same, with other figures'
	},

	accept: {
		open: 'Accept…',
		again: 'Accept again…',
		hint: 'It stays in the list of accepted findings with your reason, and opens again when its figures move by more than 5 %.',
		reason: 'Reason',
		by: 'Your name',
		date: 'Date',
		accept: 'Accept',
		cancel: 'Do not accept',
		noDate: 'Give the date.',
		takeBack: 'Take back',
		group: 'Accepted',
		onlyAccepted: 'Nothing is open: what was found has been accepted, by whom and why stands below.',
		who: (by: string, date: string) => `${by}, ${date}`,
		lapsed: 'accepted before, but the figures moved'
	},

	ladder: {
		title: 'Where the volts go',
		case: 'Operating case',
		waiting: 'Following the current…',
		failed: (reason: string) => `The volts lost could not be worked out (${reason}).`,
		lost: (volts: string) => `${volts} lost there and back`,
		share: (percent: string, nominalV: number) => `${percent} of ${nominalV} V`,
		side: (millivolts: string) => `together ${millivolts}`,
		ends: (fromV: string, from: string, loadV: string, load: string) => `${fromV} at ${from}, ${loadV} at ${load}`,
		list: 'Every element from the supply to the load and back',
		there: (from: string) => `From ${from}`,
		back: (to: string) => `Back to ${to}`,
		kinds: {
			conductor: 'conductor',
			joint: 'joint',
			fuse: 'fuse',
			breaker: 'breaker',
			switch: 'switch',
			shunt: 'shunt',
			bar: 'bar'
		} satisfies Record<RungKind, string>,
		beside: (name: string, amps: string, at: string) => `${name} joins at ${at} with ${amps}`
	},

	explain: {
		waiting: 'Looking it up…',
		none: 'There is no such figure for this one.',
		failed: (reason: string) => `It could not be explained (${reason}).`,
		inputs: 'Made of',
		inCase: (name: string) => `in “${name}”`,
		row: (table: string, row: string) => `${table}, row ${row}`,
		related: 'See also',
		sums: 'Where its figures come from',
		unverified: 'not yet verified',
		origins: {
			diagram: 'drawn',
			assumed: 'assumed',
			table: 'from a table',
			computed: 'worked out'
		} satisfies Record<Origin, string>
	},

	lens: {
		label: 'Lens',
		none: 'None',
		names: {
			polarity: 'Polarity',
			loading: 'Loading',
			'volts-lost': 'Volts lost',
			protection: 'Protection',
			'fault-current': 'Fault current',
			'temperature-rise': 'Temperature'
		},
		legend: (title: string) => `Lens: ${title}`,
		off: 'Switch the lens off',
		waiting: 'Colours appear when the check has run.',
		about: 'What is shown',
		opens: 'Each band opens to where it begins, why there, and what is in it.',
		silent: 'A thin grey line: the lens says nothing of it.',
		folded: 'Close the panel to see what the bands mean.',
		counted: (n: number) => count(n, 'conductor')
	},

	finding: {
		worstIn: (name: string) => `Worst in “${name}”`
	},

	figures: {
		title: 'Figures',
		waiting: 'Figures appear when they are worked out.',
		failed: (reason: string) => `The figures could not be worked out (${reason}).`,
		none: 'Nothing is worked out for it yet: connect it and give it an operating case.'
	},

	conductor: {
		ofAmperage: (percent: string) => `${percent} of its amperage`,
		hot: (volts: string, temperature: string) => `${volts} when warm (${temperature})`,
		ofNominal: (percent: string, nominalV: number) => `${percent} of ${nominalV} V`,
		greatestDevice: 'Largest device allowed',
		surge: 'Worst current, starts counted',
		byEnd: 'At each end',
		at: (stud: string) => `at ${stud}`,
		device: (name: string, amps: string) => `${name}, ${amps}`,
		limitsItself: (name: string, amps: string) => `${name}, which limits itself to ${amps}`,
		notFed: 'nothing feeds it'
	},

	protection: {
		protects: 'Protects',
		nothing: 'No conductor yet.',
		position: (name: string, count: number) =>
			`${name}: ${count === 0 ? 'no conductor' : count === 1 ? '1 conductor' : `${count} conductors`}`,
		halo: 'Ringed on the drawing. A conductor is listed where this device is what limits a fault in it.'
	}
});
