/** Ridge Post 3: mountain-rescue trailer, 12 V, two lithium iron phosphate blocks in parallel. */
import type { Diagram } from '#core/diagram';
import { sheet } from './sheet.ts';

type State = 'before' | 'after';

/** Left of the link posts, clear of their names. */
const W1_MINUS: [number, number][] = [
	[310, 427],
	[310, 1020],
	[400, 1020]
];

/** Left to right: bank, main conductors, fused bus, devices, negative bus. */
function bank(state: State, stringFuseA: number) {
	const s = sheet({
		title: {
			title: 'Ridge Post 3',
			supplementaryTitle: state === 'before' ? 'Mountain-rescue trailer, as found' : 'Mountain-rescue trailer, as repaired',
			craft: 'Rescue trailer',
			identificationNumber: 'RP3-E-01',
			revisionIndex: state === 'before' ? 'A' : 'B'
		},
		nominalV: 12,
		craft: 'vehicle',
		negative: 'bonded',
		profile: 'common-practice'
	});
	const block = { capacityAh: 200, continuousA: 200, chargeA: 100, faultResistanceMilliohm: 1.25 };
	const holder = { family: 'class-t', fuseA: stringFuseA, plateRatedA: 300 } as const;
	return s
		.part('B1', 'battery', [110, 260], block, { turn: 90 })
		.part('B2', 'battery', [110, 760], block, { turn: 90 })
		.part('FB1', 'fuse-block', [220, 90], holder)
		.part('FB2', 'fuse-block', [220, 590], holder)
		.mount('FB1', 'B1.pos')
		.mount('FB2', 'B2.pos')
		.part('LP', 'link-post', [400, 593], { pole: 'positive', usableLengthMm: 30 })
		.part('LN', 'link-post', [400, 1100], { pole: 'negative', usableLengthMm: 30 })
		.part('SW', 'battery-disconnect', [580, 593], { ratedA: 350 })
		.part('SH', 'shunt', [600, 1100]);
}

/** The panel, and what it feeds in a row to its right. */
function panel(s: ReturnType<typeof bank>, y: number) {
	const ways = [
		['FRIDGE', 5, 15, '12', 2.5],
		['MAST', 20, 25, '8', 4],
		['LIGHTS', 6, 10, '14', 3],
		['ROUTER', 1.5, 3, '16', 2],
		['FAN', 4, 7.5, '14', 2.5],
		['USB', 10, 15, '12', 2]
	] as const;
	const fuseA = [null, null, null, null, null, null, ...ways.map(([, , fuse]) => fuse)];
	const names = ['spare', 'spare', 'spare', 'spare', 'spare', 'spare', ...ways.map(([name]) => name.toLowerCase())];
	s.part('PAN', 'blade-panel', [940, y], { ways: 12, ratedA: 100, fuseA, names });
	ways.forEach(([id, draw, , gauge, lengthM], index) => {
		s.part(id, 'load', [1075 + 128 * index, y + 110], { draw }, { turn: 90 });
		s.pair(`P${index + 7}`, [`PAN.${index + 7}`, `${id}.pos`], [`${id}.neg`, `PAN.n${index + 7}`], gauge, lengthM);
	});
	return s;
}

export function ridgePostAfter(): Diagram {
	const s = bank('after', 225)
		.part('D', 'fused-bus', [720, 250], { fuseA: [250, 100, 40, 60], names: ['inverter', 'panel', 'radio', 'DC-DC'] }, { turn: 270 })
		.part('F5', 'twin-fuse-block', [720, 110], { fuseAA: 40, fuseBA: 40 })
		.mount('F5', 'D.R')
		.part('DDC', 'dcdc-charger', [940, 220], { maxA: 40, inputFrom: 'outside' }, { turn: 270 })
		.part('SOL', 'solar-controller', [1180, 220], { maxA: 30 }, { turn: 270 })
		.part('MCH', 'mains-charger', [1460, 220], { maxA: 30 }, { turn: 90 })
		.part('RAD', 'load', [940, 400], { draw: 25, critical: true, connection: 'studs' }, { turn: 90 })
		.part('INV', 'inverter', [1130, 950], { watts: 2000, cutOffV: 11 }, { turn: 90 })
		.part('NB', 'negative-bus', [1890, 470], { studs: 6, ratedA: 500, usableLengthMm: 25 }, { turn: 270 })
		.part('CH', 'chassis-point', [1890, 760]);
	panel(s, 590)
		.wire('W1p', 'FB1.post', 'LP.stud', '2/0', 0.45)
		.wire('W1n', 'B1.neg', 'LN.stud', '2/0', 0.45, { bends: W1_MINUS })
		.pair('W2', ['FB2.post', 'LP.stud'], ['B2.neg', 'LN.stud'], '2/0', 0.45)
		.wire('W3', 'LP.stud', 'SW.in', '4/0', 0.4)
		.wire('W4', 'SW.out', 'D.L', '4/0', 0.5)
		.wire('W5', 'LN.stud', 'SH.battery', '4/0', 0.3)
		.wire('W6', 'SH.system', 'NB.1', '4/0', 0.3)
		.pair('C1', ['D.1', 'INV.pos'], ['INV.neg', 'NB.2'], '2/0', 1.2)
		.pair('C2', ['D.2', 'PAN.feed'], ['PAN.neg', 'NB.3'], '4', 2.5)
		.pair('C3', ['D.3', 'RAD.pos'], ['RAD.neg', 'NB.4'], '6', 4)
		.pair('C4', ['D.4', 'DDC.out-pos'], ['DDC.out-neg', 'NB.5'], '6', 6)
		.pair('C5', ['F5.a', 'SOL.pos'], ['SOL.neg', 'NB.6'], '8', 1.5)
		.pair('C6', ['F5.b', 'MCH.pos'], ['MCH.neg', 'NB.6'], '8', 1.8)
		.wire('G1', 'NB.1', 'CH.stud', '2/0', 0.5, { colour: 'green-yellow' });
	return s
		.stack('LP.stud', 'W3', 'W1p', 'W2p')
		.stack('LN.stud', 'W5', 'W1n', 'W2n')
		.stack('D.R', 'F5')
		.stack('NB.1', 'W6', 'G1')
		.stack('NB.6', 'C5n', 'C6n')
		.case('peak', 'Peak, no charging')
		.case('charging', 'Charging, no loads', { loads: 0, sources: 1 })
		.case('driving', 'Driving by day', { sources: 1, levels: { MCH: 0, SOL: 28 / 30 } })
		.case('lost', 'One battery lost, inverter held to 1100 W, radio at low power', { levels: { B2: 0, INV: 0.55, RAD: 0.9 } })
		.done();
}

export function ridgePostBefore(): Diagram {
	const s = bank('before', 300)
		.part('D', 'fused-bus', [720, 300], { fuseA: [40, 70, null, 250], names: ['charger', 'solar', 'spare', 'inverter'] }, { turn: 270 })
		.part('FR', 'fuse-block', [720, 160], { fuseA: 40 }, { label: 'F5' })
		.mount('FR', 'D.R')
		.part('RAD', 'load', [930, 130], { draw: 25, critical: true, connection: 'studs' }, { turn: 90 })
		.part('F4', 'inline-fuse', [1170, 90], { family: 'strip-sf51', fuseA: 60 }, { note: 'In the tow vehicle.' })
		.part('DDC', 'dcdc-charger', [1360, 170], { maxA: 40, inputFrom: 'outside' }, { turn: 270 })
		.part('INV', 'inverter', [1540, 455], { watts: 2000, cutOffV: 11 }, { turn: 90 })
		.part('SOL', 'solar-controller', [1210, 400], { maxA: 30 }, { turn: 270 })
		.part('MCH', 'mains-charger', [960, 400], { maxA: 30 }, { turn: 90 })
		.part('F2', 'inline-fuse', [830, 600], { family: 'strip-sf51', fuseA: 100 })
		.part('NB', 'negative-bus', [1890, 470], { studs: 4, thread: 'M6', ratedA: 150 }, { turn: 270 })
		.part('CH', 'chassis-point', [1890, 760]);
	panel(s, 780)
		.wire('W1p', 'FB1.post', 'LP.stud', '2/0', 0.45)
		.wire('W1n', 'B1.neg', 'LN.stud', '2/0', 0.45, { bends: W1_MINUS })
		.pair('W2', ['FB2.post', 'LP.stud'], ['B2.neg', 'LN.stud'], '2/0', 2)
		.wire('W3', 'LP.stud', 'SW.in', '4/0', 0.4)
		.wire('W4', 'SW.out', 'D.L', '4/0', 0.5)
		.wire('W5', 'LN.stud', 'SH.battery', '4/0', 0.3)
		.wire('W6', 'SH.system', 'NB.1', '4/0', 0.3)
		.pair('C1', ['D.4', 'INV.pos'], ['INV.neg', 'NB.2'], '2/0', 1.2)
		.wire('C2p', 'D.L', 'F2.in', '4', 2.5)
		.wire('C2a', 'F2.out', 'PAN.feed', '4', 0.1)
		.wire('C2n', 'PAN.neg', 'NB.3', '4', 2.5)
		.pair('C3', ['FR.post', 'RAD.pos'], ['RAD.neg', 'NB.3'], '8', 4)
		.wire('C4p', 'D.R', 'F4.in', '6', 6)
		.wire('C4a', 'F4.out', 'DDC.out-pos', '6', 0.1)
		.wire('C4n', 'DDC.out-neg', 'NB.4', '6', 6)
		.wire('C5p', 'D.2', 'SOL.pos', '12', 1.5, { label: 'C4+' })
		.wire('C5n', 'SOL.neg', 'NB.4', '12', 1.5)
		.wire('C6p', 'D.1', 'MCH.pos', '8', 1.8)
		.wire('C6n', 'MCH.neg', 'B1.neg', '8', 1.8)
		.wire('G1', 'NB.1', 'CH.stud', '2/0', 0.5, { colour: 'green-yellow' });
	return s
		.stack('LP.stud', 'W3', 'W1p', 'W2p')
		.stack('LN.stud', 'W5', 'W1n', 'W2n')
		.stack('B1.neg', 'W1n', 'C6n')
		.stack('D.L', 'C2p', 'W4')
		.stack('D.R', 'C4p', 'FR')
		.stack('NB.1', 'W6', 'G1')
		.stack('NB.3', 'C2n', 'C3n')
		.stack('NB.4', 'C4n', 'C5n')
		.case('peak', 'Peak, no charging')
		.case('charging', 'Charging, no loads', { loads: 0, sources: 1 })
		.case('driving', 'Driving by day', { sources: 1, levels: { MCH: 0, SOL: 28 / 30 } })
		.case('lost', 'One battery lost', { levels: { B2: 0 } })
		.done();
}
