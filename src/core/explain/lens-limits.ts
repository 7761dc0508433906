/** Where the bands of a lens begin, and why there. */
import type { Diagram } from '#core/diagram';
import { breakingCapacityA, type Confidence } from '#core/tables';
import type { Input } from './explanation.ts';
import type { LensId } from './lens.ts';
import { input } from './write-out.ts';

export type MeasuredLens = Exclude<LensId, 'polarity'>;
/** Of bands 1 to 4; the first has none. */
export type LimitIndex = 0 | 1 | 2 | 3;

export interface BandLimit {
	readonly value: number;
	readonly expression: string;
	readonly inputs: readonly Input[];
	readonly source: string;
}

type Four = readonly [BandLimit, BandLimit, BandLimit, BandLimit];

/** Steps for the eye. */
const HABIT = 'chosen for the eye: no rule stands behind it';
const PRACTICE_80 = 'common practice, no source: 80 % for what runs for hours';

const step = (value: number, unit: string, source = HABIT, confidence: Confidence = 'common-practice'): BandLimit => ({
	value,
	expression: 's',
	inputs: [input('s', 'step of the scale', value, unit, { origin: 'table', source, confidence })],
	source
});

const percent = (value: number, source?: string, confidence?: Confidence): BandLimit => step(value, '%', source, confidence);

const ofNominal = (
	{ system: { nominalV } }: Diagram,
	share: number,
	source = HABIT,
	confidence: Confidence = 'common-practice'
): BandLimit => ({
	// One per cent of a volt is ten millivolts.
	value: 10 * share * nominalV,
	expression: '10 * p * Un',
	inputs: [
		input('p', 'share of the nominal voltage', share, '%', { origin: 'table', source, confidence }),
		input('Un', 'nominal voltage of the system', nominalV, 'V', {
			origin: 'diagram',
			source: 'settings of the drawing',
			confidence: 'given'
		})
	],
	source
});

/** Into a dead short at 32 V, the voltage both standards rate their fuses at. */
const BLADE = breakingCapacityA('blade-regular', 32);
const STRIP = breakingCapacityA('strip-sf51', 32);

const breaking = (what: string, { value, source, confidence }: typeof BLADE, times: number, because: string): BandLimit => ({
	value: times * value,
	expression: times === 1 ? 'Ib' : 't * Ib',
	inputs: [
		...(times === 1 ? [] : [input('t', 'times that', times, '', { origin: 'table', source: HABIT, confidence: 'common-practice' })]),
		input('Ib', `what a ${what} fuse breaks at 32 V`, value, 'A', { origin: 'table', source, confidence })
	],
	source: because
});

export const LIMITS: Readonly<Record<MeasuredLens, (diagram: Diagram) => Four>> = {
	loading: () => [percent(25), percent(50), percent(80, PRACTICE_80), percent(100, 'the amperage itself', 'derived')],
	'volts-lost': (diagram) => [
		ofNominal(diagram, 0.25),
		ofNominal(diagram, 1),
		ofNominal(diagram, 3, 'ABYC E-11: 3 % for critical circuits', 'two-sources'),
		ofNominal(diagram, 5, 'common practice, no source: half of the 10 % for ordinary circuits of ABYC E-11')
	],
	// A device at the limit itself is allowed: only what is over it stands in the next band.
	protection: () => [percent(50), percent(80), percent(100 + 1e-4, 'the greatest device the profile allows', 'derived'), percent(150)],
	'fault-current': () => [
		breaking('blade', BLADE, 0.5, 'half of what a blade fuse breaks'),
		breaking('blade', BLADE, 1, `${BLADE.source}: a blade fuse breaks 1 kA at 32 V`),
		breaking('strip', STRIP, 1, `${STRIP.source}: a strip fuse breaks 2 kA at 32 V`),
		breaking('strip', STRIP, 2.5, '2.5 times what a strip fuse breaks')
	],
	'temperature-rise': () => [step(5, 'K'), step(15, 'K'), step(30, 'K'), step(50, 'K')]
};
