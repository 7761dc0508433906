/** Skarv Fell: off-grid weather station, 48 V, two lithium iron phosphate blocks in parallel. */
import type { Diagram } from '#core/diagram';
import { sheet } from './sheet.ts';

type State = 'before' | 'after';

/** Left of the link posts, clear of their names. */
const W1_MINUS: [number, number][] = [
	[400, 554],
	[400, 1110],
	[500, 1110]
];

const CLASS_T = { family: 'class-t' } as const;

/** Bank on the left, devices in three rows, negative bus on the right. */
function common(state: State) {
	const block = { nominalV: 48, capacityAh: 100, continuousA: 100, chargeA: 50, faultResistanceMilliohm: 10 } as const;
	const before = state === 'before';
	const cold = { coldestC: -35 } as const;
	/** Strings of 400 W modules: 148.8 V of four at 25 °C seem to fit 150 V. */
	const array = {
		inSeries: before ? 4 : 3,
		inParallel: 2,
		moduleVocV: 37.2,
		moduleVmpV: 31,
		moduleIscA: 13.6,
		vocPercentPerC: 0.28,
		arraySwitch: before ? 'one' : 'both',
		arraySwitchV: before ? null : 150,
		arrayW: before ? 3200 : 2400,
		...cold
	} as const;
	const loads = [
		['LOGGER', 3, 5, '14', 2],
		['CAMERA', 8, 10, '12', 3]
	] as const;
	const s = sheet({
		title: {
			title: 'Skarv Fell',
			supplementaryTitle: before ? 'Weather station, as found' : 'Weather station, as repaired',
			craft: 'Off-grid weather station',
			identificationNumber: 'SKF-E-01',
			revisionIndex: before ? 'A' : 'B'
		},
		nominalV: 48,
		craft: 'cabin',
		negative: 'bonded',
		profile: 'common-practice'
	})
		.part('B1', 'battery', [150, 320], { ...block, ...cold, coldCutOff: 'stops' }, { turn: 90 })
		.part('B2', 'battery', [150, 890], { ...block, ...cold, ...(!before && { coldCutOff: 'stops' }) }, { turn: 90 })
		.part('PB', 'link-post', [500, 656], { pole: 'positive' })
		.part('PN', 'link-post', [500, 1180], { pole: 'negative' })
		.part('SH', 'shunt', [700, 1180])
		.part('SOL', 'solar-controller', [1240, 170], { maxA: 60, setV: 57.6, maxPvV: 150, ...array }, { turn: 270 })
		.part('INV', 'inverter', [1580, 170], { watts: 1200, efficiency: 0.92, cutOffV: 42 }, { turn: 90 })
		.part('PAD', 'load', [1090, 480], { drawAs: 'power', draw: 100, reversible: true }, { turn: 90, label: 'HEAT PAD' })
		.part('C12', 'dcdc-converter', [1280, 470], { maxA: 15, setV: 12, efficiency: 0.92, isolated: before }, { turn: 270 })
		.part('P12', 'blade-panel', [1520, 470], {
			ways: 6,
			ratedA: 30,
			fuseA: [null, null, null, 7.5, 5, 10],
			names: ['', '', '', 'radio link', 'logger', 'camera']
		})
		.part('RL', 'load', [1660, 570], { draw: 4, critical: true }, { turn: 90, label: 'RADIO LINK', note: 'On the 18 m mast.' })
		.part(
			'HTR',
			'load',
			[1090, 800],
			{ drawAs: 'power', draw: 600, reversible: true, connection: 'studs' },
			{ turn: 90, label: 'SENSOR HEAT' }
		)
		.part('C24', 'dcdc-converter', [1330, 800], { maxA: 10, setV: 24, efficiency: 0.92 }, { turn: 270 })
		.part('MET', 'load', [1560, 780], { draw: 10 }, { turn: 90, label: 'INSTRUMENTS' })
		.part('NB', 'negative-bus', [2100, 620], { studs: 8, ratedA: 300 }, { turn: 270 })
		.part('CH', 'chassis-point', [2100, 1000], {}, { note: 'Station earth.' })
		.pair('E12', ['C12.out-pos', 'P12.feed'], ['P12.neg', 'C12.out-neg'], '6', 0.3)
		.pair('E24', ['C24.out-pos', 'MET.pos'], ['MET.neg', 'C24.out-neg'], '12', 2)
		.pair('P4', ['P12.4', 'RL.pos'], ['RL.neg', 'P12.n4'], before ? '14' : '6', 18);
	loads.forEach(([id, draw, , gauge, lengthM], index) => {
		s.part(id, 'load', [1800 + 140 * index, 570], { draw }, { turn: 90 });
		s.pair(`P${index + 5}`, [`P12.${index + 5}`, `${id}.pos`], [`${id}.neg`, `P12.n${index + 5}`], gauge, lengthM);
	});
	return s;
}

/** The controller's share is what its modules give at 52 V, 2400 W after the repair. */
const cases = (s: ReturnType<typeof common>, share = 46 / 60) =>
	s
		.case('peak', 'All loads, no sun')
		.case('charging', 'Sun, no loads', { loads: 0, sources: share })
		.case('sunny', 'Sun, all loads', { sources: share })
		.done();

export function skarvFellAfter(): Diagram {
	const s = common('after')
		.part('FB1', 'fuse-block', [300, 100], { fuseA: 100, ...CLASS_T })
		.part('FB2', 'fuse-block', [300, 660], { fuseA: 100, ...CLASS_T })
		.mount('FB1', 'B1.pos')
		.mount('FB2', 'B2.pos')
		.part('SW', 'battery-disconnect', [680, 656], { ratedA: 250 })
		.part('D', 'positive-bus', [860, 230], { pitchMm: 50, ratedA: 300, exit: 'north' }, { turn: 90 })
		.part('F1', 'inline-fuse', [1010, 110], { family: 'class-t', fuseA: 50 })
		.part('F2', 'inline-fuse', [1010, 205], { family: 'class-t', fuseA: 80 })
		.part(
			'FH',
			'fused-bus',
			[860, 640],
			{ family: 'cylindrical', fuseA: [20, 15, 15, 10], fuseRatedV: 250, ratedA: 250, names: ['heat', '24 V', '12 V', 'pad'] },
			{ turn: 270 }
		)
		.wire('W1p', 'FB1.post', 'PB.stud', '4', 0.6)
		.wire('W1n', 'B1.neg', 'PN.stud', '4', 0.6, { bends: W1_MINUS })
		.pair('W2', ['FB2.post', 'PB.stud'], ['B2.neg', 'PN.stud'], '4', 0.6)
		.wire('M1', 'PB.stud', 'SW.in', '2', 0.5)
		.wire('M2', 'SW.out', 'D.3', '2', 0.5)
		.wire('M3', 'D.4', 'FH.R', '1/0', 0.2)
		.wire('N1', 'PN.stud', 'SH.battery', '2', 0.3)
		.wire('N2', 'SH.system', 'NB.1', '2', 0.3)
		.wire('C1a', 'D.1', 'F1.in', '6', 0.1)
		.wire('C2a', 'D.2', 'F2.in', '6', 0.1)
		.pair('C1', ['F1.out', 'INV.pos'], ['INV.neg', 'NB.8'], '6', 1.5)
		.pair('C2', ['F2.out', 'SOL.pos'], ['SOL.neg', 'NB.7'], '6', 2)
		.pair('C3', ['FH.1', 'HTR.pos'], ['HTR.neg', 'NB.3'], '10', 15)
		.pair('C4', ['FH.2', 'C24.in-pos'], ['C24.in-neg', 'NB.4'], '10', 1.2)
		.pair('C5', ['FH.3', 'C12.in-pos'], ['C12.in-neg', 'NB.5'], '10', 1.2)
		.pair('C6', ['FH.4', 'PAD.pos'], ['PAD.neg', 'NB.6'], '12', 2)
		.wire('G1', 'NB.2', 'CH.stud', '4', 1, { colour: 'green-yellow' })
		.stack('PB.stud', 'M1', 'W1p', 'W2p')
		.stack('PN.stud', 'N1', 'W1n', 'W2n');
	return cases(s);
}

export function skarvFellBefore(): Diagram {
	const s = common('before')
		.part('FB1', 'fuse-block', [300, 100], { fuseA: 100 })
		.part('FB2', 'fuse-block', [300, 660], { fuseA: 100 })
		.mount('FB1', 'B1.pos')
		.mount('FB2', 'B2.pos')
		.part('Q1', 'circuit-breaker', [680, 656], { ratingA: 200, ratedV: 80, breakingA: 10_000, polarised: true, thread: 'M8' })
		.part(
			'D',
			'fused-bus',
			[860, 230],
			{ positions: 6, fuseA: [20, 15, 15, 10, 80, 50], names: ['heat', '24 V', '12 V', 'pad', 'solar', 'inverter'] },
			{ turn: 270 }
		)
		.part('MON', 'load', [560, 180], { draw: 0.05 }, { turn: 90, label: 'MONITOR', note: 'Voltage sense of the battery monitor.' })
		.wire('W1p', 'FB1.post', 'PB.stud', '6', 3)
		.wire('W1n', 'B1.neg', 'PN.stud', '6', 3, { bends: W1_MINUS })
		.pair('W2', ['FB2.post', 'PB.stud'], ['B2.neg', 'PN.stud'], '4', 0.6)
		.wire('M1', 'PB.stud', 'Q1.in', '2', 0.5)
		.wire('M2', 'Q1.out', 'D.L', '2', 0.5)
		.wire('N1', 'PN.stud', 'SH.battery', '2', 0.3)
		.wire('N2', 'SH.system', 'NB.1', '2', 0.3)
		.pair('C1', ['D.6', 'INV.pos'], ['INV.neg', 'NB.8'], '6', 1.5)
		.pair('C2', ['D.5', 'SOL.pos'], ['SOL.neg', 'NB.7'], '6', 2)
		.pair('C3', ['D.1', 'HTR.pos'], ['HTR.neg', 'NB.3'], '10', 15)
		.pair('C4', ['D.2', 'C24.in-pos'], ['C24.in-neg', 'NB.4'], '10', 1.2)
		.pair('C5', ['D.3', 'C12.in-pos'], ['C12.in-neg', 'NB.5'], '10', 1.2)
		.pair('C6', ['D.4', 'PAD.pos'], ['PAD.neg', 'NB.6'], '12', 2)
		.pair('S1', ['B1.pos', 'MON.pos'], ['MON.neg', 'SH.system'], '18', 1.5)
		.wire('G1', 'C12.out-neg', 'CH.stud', '10', 2, { colour: 'green-yellow' })
		.stack('B1.pos', 'FB1', 'S1p')
		.stack('PB.stud', 'M1', 'W1p', 'W2p')
		.stack('PN.stud', 'N1', 'W1n', 'W2n')
		.stack('SH.system', 'N2', 'S1n')
		.stack('C12.out-neg', 'E12n', 'G1');
	return cases(s, 1);
}
