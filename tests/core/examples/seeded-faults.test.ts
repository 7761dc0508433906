/** Each fault put into an example on purpose, and the finding that tells of it. */
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { example } from '../../support/examples/figures.ts';

interface Seeded {
	readonly fault: string;
	readonly rule: string;
	readonly severity: 'fatal' | 'error' | 'warning' | 'note';
	/** Among the finding's subjects. */
	readonly at: string;
}

interface System {
	readonly found: readonly Seeded[];
	/** Rules that tell of these faults, or of others in the drawing, from another side. */
	readonly alsoTold: readonly string[];
	/** Seeded, and told by no rule so far. */
	readonly notYet: readonly string[];
}

const SYSTEMS: Record<string, System> = {
	'ridge-post': {
		found: [
			{ fault: '270 A from one battery when the other is lost', rule: 'battery-discharge-limit', severity: 'error', at: 'B1' },
			{ fault: 'one battery lead of 2 m', rule: 'string-paths-unequal', severity: 'note', at: 'B1' },
			{ fault: 'no fuse at the battery end of the DC-DC lead', rule: 'two-source-conductor', severity: 'error', at: 'C4p' },
			{ fault: 'radio on 8 AWG', rule: 'voltage-drop', severity: 'error', at: 'RAD' },
			{ fault: 'charger negative on a battery post', rule: 'shunt-bypassed', severity: 'error', at: 'MCH' },
			{ fault: 'panel feeder under the main lug', rule: 'stack-order', severity: 'warning', at: 'D.L' },
			{ fault: 'panel feeder fused 2.5 m away', rule: 'protection-too-far', severity: 'error', at: 'C2p' },
			{ fault: 'solar lead of 12 AWG behind 70 A', rule: 'oversized-protection', severity: 'error', at: 'C5p' },
			{ fault: 'one label on two conductors', rule: 'duplicate-label', severity: 'error', at: 'C5p' },
			{ fault: 'negative bus of 150 A', rule: 'bus-overloaded', severity: 'error', at: 'NB' },
			{ fault: 'main lug and bond on an M6 stud', rule: 'stud-too-short', severity: 'error', at: 'NB.1' },
			{ fault: 'charger and inverter at opposite ends of the bus', rule: 'bus-order', severity: 'note', at: 'D' },
			{ fault: 'string fuses of 300 A each', rule: 'oversized-protection', severity: 'error', at: 'W3' }
		],
		alsoTold: [],
		notYet: []
	},
	pagemoor: {
		found: [
			{ fault: 'lamp tails of 18 AWG', rule: 'conductor-below-minimum', severity: 'error', at: 'L1p' },
			{ fault: 'one string hung on the other, by its share', rule: 'string-paths-unequal', severity: 'note', at: 'B2' },
			{ fault: 'main switch in the negative', rule: 'switch-in-negative', severity: 'error', at: 'SW' },
			{ fault: 'its bond of 8 AWG', rule: 'chassis-bond', severity: 'warning', at: 'G1' },
			{ fault: 'lift returning through the chassis', rule: 'chassis-used-as-return', severity: 'warning', at: 'LIFT' },
			{ fault: 'the radio, on the middle of a string', rule: 'mid-point-tap', severity: 'error', at: 'COM' },
			{ fault: 'a string without a fuse of its own', rule: 'string-without-fuse', severity: 'warning', at: 'B3' },
			{ fault: '12 V radio across half a string', rule: 'unprotected-conductor', severity: 'fatal', at: 'C9p' },
			{ fault: 'its return before the shunt', rule: 'shunt-bypassed', severity: 'error', at: 'COM' },
			{ fault: 'one string hung on the other', rule: 'fuse-below-load', severity: 'error', at: 'FS1' },
			{ fault: 'lift returning by 8 AWG through the chassis', rule: 'undersized-return', severity: 'error', at: 'C2n' },
			{ fault: 'lamp tails behind 40 A', rule: 'oversized-protection', severity: 'error', at: 'L1p' },
			{ fault: 'live end in a cupboard', rule: 'dead-ended-live-conductor', severity: 'warning', at: 'C8p' },
			{ fault: 'no labels', rule: 'missing-label', severity: 'warning', at: 'C5p' }
		],
		alsoTold: ['interrupt-capacity'],
		notYet: []
	},
	'otters-reach': {
		found: [
			{ fault: 'navigation lights on the deck light’s fuse', rule: 'critical-circuit-shares-fuse', severity: 'warning', at: 'NAV' },
			{ fault: 'deck light returning through the hull', rule: 'chassis-used-as-return', severity: 'error', at: 'DECK' },
			{ fault: 'bilge pump on 14 AWG', rule: 'voltage-drop', severity: 'error', at: 'BP' },
			{ fault: 'navigation lights on 16 AWG', rule: 'voltage-drop', severity: 'error', at: 'NAV' },
			{ fault: 'navigation lights on the deck way', rule: 'stud-crowded', severity: 'warning', at: 'PAN.11' },
			{ fault: 'alternator lead of 75 °C in the engine space', rule: 'undersized-conductor', severity: 'error', at: 'K2p' },
			{ fault: 'its fuse, for the same reason', rule: 'oversized-protection', severity: 'error', at: 'K2p' },
			{ fault: 'horn off the starter stud', rule: 'unprotected-conductor', severity: 'error', at: 'K5p' },
			{ fault: 'five terminals on a post', rule: 'stud-crowded', severity: 'error', at: 'H1.neg' },
			{ fault: 'a post too short for five', rule: 'stud-too-short', severity: 'error', at: 'H1.neg' },
			{ fault: 'large lugs over small rings', rule: 'stack-order', severity: 'warning', at: 'H1.neg' },
			{ fault: 'returns on the battery side', rule: 'shunt-bypassed', severity: 'error', at: 'SH' },
			{ fault: 'a fuse that does not open when the pump stalls', rule: 'stalled-motor', severity: 'error', at: 'F6' },
			{ fault: 'switch not ignition protected', rule: 'ignition-source', severity: 'error', at: 'HSW' },
			{ fault: 'fuses not ignition protected', rule: 'ignition-source', severity: 'error', at: 'D' },
			{ fault: 'a positive conductor in yellow', rule: 'colour-fault', severity: 'error', at: 'C6p' }
		],
		alsoTold: ['interrupt-capacity', 'no-fast-clearing'],
		notYet: []
	},
	'skarv-fell': {
		found: [
			{
				fault: '48 V negative without its bond, while the isolated 12 V output has one',
				rule: 'chassis-bond',
				severity: 'warning',
				at: 'B1'
			},
			{ fault: 'sense wire of 18 AWG', rule: 'conductor-below-minimum', severity: 'warning', at: 'S1p' },
			{ fault: 'one battery on thin, long leads', rule: 'string-paths-unequal', severity: 'warning', at: 'B2' },
			{ fault: 'sense wire without a fuse', rule: 'unprotected-conductor', severity: 'fatal', at: 'S1p' },
			{ fault: 'thin leads on one battery', rule: 'two-source-conductor', severity: 'error', at: 'W1p' },
			{ fault: 'array voltage in the cold', rule: 'array-voltage-cold', severity: 'error', at: 'SOL' },
			{ fault: 'no low-temperature cut-off', rule: 'cold-charging', severity: 'warning', at: 'B2' },
			{ fault: 'array disconnect of one pole', rule: 'array-switch', severity: 'error', at: 'SOL' },
			{ fault: 'radio link on 14 AWG', rule: 'voltage-drop', severity: 'error', at: 'RL' }
		],
		alsoTold: ['fuse-voltage-rating', 'interrupt-capacity', 'breaker-polarity'],
		notYet: []
	}
};

describe.each(Object.entries(SYSTEMS))('%s, as found', (name, { found, alsoTold }) => {
	const { findings } = checkDiagram(example(`${name}-before`));

	test.each(found.map((seeded) => [seeded.fault, seeded] as const))('%s', (_, { rule, severity, at }) => {
		const match = findings.find((finding) => finding.rule === rule && finding.subjects.some(({ id }) => id === at));
		expect(match?.severity ?? `not found among: ${findings.map(({ key }) => key).join(', ')}`).toBe(severity);
	});

	test('no more errors than the faults account for', () => {
		const kinds = new Set([...found.map(({ rule }) => rule), ...alsoTold]);
		const others = findings.filter(({ rule, severity }) => (severity === 'error' || severity === 'fatal') && !kinds.has(rule));
		expect(others.map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
	});
});

test('the charging link fused at one end: 300 A on 210 A is a fault by common practice, not by US law, which allows 315 A', () => {
	const boat = example('otters-reach-before');
	const about = (profile: string) =>
		checkDiagram({ ...boat, profile }).findings.filter(
			({ rule, subjects }) => rule !== 'voltage-drop' && subjects.some(({ id }) => id === 'K3b')
		);
	expect(about('us-small-craft')).toEqual([]);
	expect(about('common-practice').map(({ severity }) => severity)).toContain('error');
});
