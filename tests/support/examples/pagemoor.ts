/** Pagemoor: mobile library, 24 V, four 12 V lead-acid blocks in two strings of two. */
import type { Diagram } from '#core/diagram';
import { sheet } from './sheet.ts';

type State = 'before' | 'after';

const ORDINARY = { drawAs: 'current', connection: 'studs' } as const;

/** The bank in two columns, the devices in three rows between the fused bus and the negative bus. */
function common(state: State, fuseA: (number | null)[], names: string[]) {
	const block = { chemistry: 'lead-acid', capacityAh: 150, faultResistanceMilliohm: 3 } as const;
	const s = sheet({
		title: {
			title: 'Pagemoor',
			supplementaryTitle: state === 'before' ? 'Mobile library, as found' : 'Mobile library, as repaired',
			craft: 'Mobile library',
			identificationNumber: 'PGM-E-01',
			revisionIndex: state === 'before' ? 'A' : 'B'
		},
		nominalV: 24,
		craft: 'vehicle',
		negative: 'bonded',
		profile: 'common-practice'
	});
	const loads = [
		['ROUTER', 3, 5],
		['RADIO', 10, 15],
		['READERS', 7, 10]
	] as const;
	s.part('B1', 'battery', [110, 270], block, { turn: 90 })
		.part('B2', 'battery', [110, 720], block, { turn: 90 })
		.part('B3', 'battery', [470, 270], block, { turn: 90 })
		.part('B4', 'battery', [470, 720], block, { turn: 90 })
		.part('FS1', 'fuse-block', [220, 90], { fuseA: 150 })
		.mount('FS1', 'B1.pos')
		.part('PB', 'link-post', [740, 610], { pole: 'positive', usableLengthMm: 30 })
		.part('PN', 'link-post', [740, 960], { pole: 'negative', usableLengthMm: 30 })
		.part('SH', 'shunt', [1080, 1010])
		.part('D', 'fused-bus', [1080, 330], { positions: 8, ratedA: 300, fuseA, names }, { turn: 270 })
		.part('CNV', 'dcdc-converter', [1290, 90], { maxA: 20, setV: 12 }, { turn: 0 })
		.part('P12', 'blade-panel', [1500, 120], {
			ways: 6,
			ratedA: 30,
			fuseA: [null, null, null, 5, 15, 10],
			names: ['', '', '', 'router', 'radio', 'readers']
		})
		.part('MCH', 'mains-charger', [1330, 450], { maxA: 40, setV: 28.8 }, { turn: 90 })
		.part('DDC', 'dcdc-charger', [1590, 460], { maxA: 25, setV: 28.8, inputFrom: 'outside' }, { turn: 270 })
		.part('HTR', 'load', [1800, 460], { ...ORDINARY, draw: 10 }, { turn: 90 })
		.part('LTG', 'load', [1980, 460], { ...ORDINARY, draw: 12 }, { turn: 90 })
		.part('INV', 'inverter', [1390, 790], { watts: 1600, cutOffV: 21 }, { turn: 90 })
		.part('LIFT', 'load', [1720, 790], { ...ORDINARY, draw: 80, thread: 'M8' }, { turn: 90 })
		.part('NB', 'negative-bus', [2200, 600], { studs: 6, ratedA: 300 }, { turn: 270 })
		.wire('X1', 'B1.neg', 'B2.pos', '1/0', 0.25)
		.wire('X2', 'B3.neg', 'B4.pos', '1/0', 0.25)
		.wire('S1n', 'B2.neg', 'PN.stud', '1/0', 0.6)
		.pair('C1', ['D.1', 'INV.pos'], ['INV.neg', 'NB.2'], '2', 1.5)
		.pair('C3', ['D.3', 'MCH.pos'], ['MCH.neg', 'NB.4'], '8', 1.5)
		.pair('C4', ['D.4', 'DDC.out-pos'], ['DDC.out-neg', 'NB.4'], '8', 5)
		.pair('C6', ['D.6', 'LTG.pos'], ['LTG.neg', 'NB.6'], '12', 9)
		.pair('E1', ['CNV.out-pos', 'P12.feed'], ['P12.neg', 'CNV.out-neg'], '10', 0.5);
	loads.forEach(([id, draw], index) => {
		s.part(id, 'load', [1650 + 140 * index, 210], { draw }, { turn: 90 });
		s.pair(`P${index + 4}`, [`P12.${index + 4}`, `${id}.pos`], [`${id}.neg`, `P12.n${index + 4}`], '14', 2);
	});
	return s;
}

/** Everything on at once; and what the day draws on the average, from 262 Ah in 8 h. */
const cases = (s: ReturnType<typeof common>) =>
	s
		.case('peak', 'Lift, inverter and all else on')
		.case('day', 'Average over the day', {
			levels: { LTG: 0.875, INV: 0.186, LIFT: 0.0422, HTR: 0.2, ROUTER: 0.27, RADIO: 0.27, READERS: 0.27 }
		})
		.case('charging', 'Charging, no loads', { loads: 0, sources: 1 })
		.done();

export function pagemoorAfter(): Diagram {
	const s = common(
		'after',
		[125, 125, 60, 40, 20, 20, 20, null],
		['inverter', 'lift', 'mains charger', 'DC-DC', 'heater', 'lighting', 'converter', 'spare']
	)
		.part('FS2', 'fuse-block', [580, 90], { fuseA: 150 })
		.mount('FS2', 'B3.pos')
		.part('SW', 'battery-disconnect', [920, 610], { ratedA: 250 })
		.part('CH', 'chassis-point', [2200, 860])
		.wire('S1p', 'FS1.post', 'PB.stud', '1/0', 0.6, {
			bends: [
				[330, 104],
				[330, 30],
				[740, 30]
			]
		})
		.wire('S2p', 'FS2.post', 'PB.stud', '1/0', 0.6, {
			bends: [
				[660, 104],
				[660, 610]
			]
		})
		.wire('S2n', 'B4.neg', 'PN.stud', '1/0', 0.6)
		.wire('M1', 'PB.stud', 'SW.in', '1/0', 0.5)
		.wire('M2', 'SW.out', 'D.L', '1/0', 0.8)
		.wire('N1', 'PN.stud', 'SH.battery', '1/0', 0.4)
		.wire('N2', 'SH.system', 'NB.1', '1/0', 0.4)
		.pair('C2', ['D.2', 'LIFT.pos'], ['LIFT.neg', 'NB.3'], '2', 6)
		.pair('C5', ['D.5', 'HTR.pos'], ['HTR.neg', 'NB.5'], '10', 5)
		.pair('C7', ['D.7', 'CNV.in-pos'], ['CNV.in-neg', 'NB.6'], '10', 1)
		.wire('G1', 'NB.1', 'CH.stud', '1/0', 0.5, { colour: 'green-yellow' })
		.stack('PB.stud', 'M1', 'S1p', 'S2p')
		.stack('PN.stud', 'N1', 'S1n', 'S2n')
		.stack('NB.1', 'N2', 'G1')
		.stack('NB.4', 'C3n', 'C4n')
		.stack('NB.6', 'C7n', 'C6n');
	return cases(s);
}

export function pagemoorBefore(): Diagram {
	const s = common(
		'before',
		[125, 125, 60, 40, 20, 40, 20, 20],
		['inverter', 'lift', 'mains charger', 'DC-DC', 'heater', 'lighting', 'converter', 'projector']
	)
		.part('SW', 'battery-disconnect', [900, 1010], { ratedA: 250 })
		.part(
			'J8',
			'link-post',
			[1900, 60],
			{ thread: 'M5', ratedA: 20 },
			{ label: 'PROJECTOR', note: 'Bare end in a cupboard; the projector was never fitted.' }
		)
		.part('COM', 'load', [300, 1060], { draw: 3 }, { turn: 90, label: 'RADIO 2', note: '12 V community radio.' })
		.part('LAMPS', 'load', [1980, 640], { draw: 1 }, { turn: 90, note: 'Reading lamps.' })
		.part('CH', 'chassis-point', [1960, 860])
		.wire('S1p', 'FS1.post', 'PB.stud', '1/0', 0.6)
		.wire('S2p', 'B3.pos', 'B1.pos', '2', 0.9)
		.wire('S2n', 'B4.neg', 'B2.neg', '2', 0.9)
		.wire('M1', 'PB.stud', 'D.L', '1/0', 1.3)
		.wire('N1', 'PN.stud', 'SW.in', '1/0', 0.4)
		.wire('N2', 'SW.out', 'SH.battery', '1/0', 0.4)
		.wire('N3', 'SH.system', 'NB.1', '1/0', 0.4)
		.wire('C2p', 'D.2', 'LIFT.pos', '2', 6)
		.wire('C2n', 'LIFT.neg', 'CH.stud', '8', 0.5)
		.pair('C5', ['D.5', 'HTR.pos'], ['HTR.neg', 'NB.5'], '10', 5, { label: '' })
		.wire('C7p', 'D.7', 'CNV.in-pos', '10', 1)
		.wire('C7n', 'CNV.in-neg', 'NB.6', '10', 1, { label: '' })
		.wire('C8p', 'D.8', 'J8.stud', '12', 4)
		.pair('C9', ['B2.pos', 'COM.pos'], ['COM.neg', 'B2.neg'], '14', 1.5)
		.wire('L1p', 'LTG.pos', 'LAMPS.pos', '18', 2.5)
		.wire('L1n', 'LAMPS.neg', 'LTG.neg', '18', 2.5)
		.wire('G1', 'CH.stud', 'NB.1', '8', 0.5, { colour: 'green-yellow' })
		.stack('B1.pos', 'FS1', 'S2p')
		.stack('B2.pos', 'X1', 'C9p')
		.stack('B2.neg', 'S1n', 'S2n', 'C9n')
		.stack('PB.stud', 'M1', 'S1p')
		.stack('PN.stud', 'N1', 'S1n')
		.stack('NB.1', 'N3', 'G1')
		.stack('NB.4', 'C3n', 'C4n')
		.stack('NB.6', 'C7n', 'C6n')
		.stack('LTG.pos', 'C6p', 'L1p')
		.stack('LTG.neg', 'C6n', 'L1n');
	return cases(s);
}
