/** Otter's Reach: 9 m river workboat, 12 V, aluminium hull, diesel inboard, lead-acid start and house banks. */
import type { Diagram } from '#core/diagram';
import { sheet } from './sheet.ts';

type State = 'before' | 'after';

const HOT = { environment: 'engine-space' } as const;
const CRANKING = { environment: 'engine-space', use: 'cranking' } as const;

/** Engine on top, house bank on the left, wheelhouse panel and deck gear on the right. */
function common(state: State) {
	const house = { chemistry: 'lead-acid', capacityAh: 120, resistanceMilliohm: 5.5, faultResistanceMilliohm: 3.75 } as const;
	/** In the space of the petrol tank. */
	const tankSpace = { space: 'fuel', ignitionProtected: state === 'after' } as const;
	return sheet({
		title: {
			title: 'Otter’s Reach',
			supplementaryTitle: state === 'before' ? 'River workboat, as found' : 'River workboat, as repaired',
			craft: 'River workboat, 9 m',
			identificationNumber: 'OTR-E-01',
			revisionIndex: state === 'before' ? 'A' : 'B'
		},
		nominalV: 12,
		craft: 'boat',
		negative: 'insulated',
		profile: 'us-small-craft'
	})
		.part(
			'SB',
			'battery',
			[110, 240],
			{ chemistry: 'lead-acid', capacityAh: 90, resistanceMilliohm: 5, faultResistanceMilliohm: 3.2 },
			{ turn: 90 }
		)
		.part('KSW', 'battery-disconnect', [480, 110], { ratedA: 300 })
		.part('ALT', 'alternator', [620, 290], { maxA: 120 })
		.part('STR', 'starter-motor', [920, 280], { crankingA: 400 }, { label: 'STARTER' })
		.part('RLY', 'combiner-relay', [1180, 110], { ratedA: 150 })
		.part('H1', 'battery', [110, 660], house, { turn: 90 })
		.part('H2', 'battery', [110, 1070], house, { turn: 90 })
		.part('FH1', 'fuse-block', [220, 480], { fuseA: 150 })
		.part('FH2', 'fuse-block', [220, 890], { fuseA: 150 })
		.mount('FH1', 'H1.pos')
		.mount('FH2', 'H2.pos')
		.part('HP', 'link-post', [500, 920], { pole: 'positive', usableLengthMm: 30 })
		.part('HSW', 'battery-disconnect', [660, 920], { ratedA: 300, ...tankSpace })
		.part('SH', 'shunt', [520, 1280])
		.part(
			'D',
			'fused-bus',
			[820, 640],
			{ fuseA: [150, 60, 100, null], ratedA: 300, names: ['capstan', 'panel', 'relay', 'spare'], ...tankSpace },
			{ turn: 270 }
		)
		.part('CAP', 'load', [1050, 1010], { draw: 90, connection: 'studs', thread: 'M8' }, { turn: 90, label: 'CAPSTAN' })
		.part(
			'BP',
			'load',
			[1250, 500],
			{ draw: 8.5, critical: true, stallA: 34, stallV: 12, unattended: true, connection: 'studs', thread: 'M5' },
			{ turn: 90, label: 'BILGE PUMP' }
		)
		.part('NB', 'negative-bus', [2000, 560], { studs: 8, ratedA: 300 }, { turn: 270 })
		.wire('H1p', 'FH1.post', 'HP.stud', '1/0', 0.5)
		.wire('H2p', 'FH2.post', 'HP.stud', '1/0', 0.5)
		.wire('H2n', 'H2.neg', 'SH.battery', '1/0', 0.5)
		.wire('M1', 'HP.stud', 'HSW.in', '1/0', 0.6)
		.wire('M2', 'HSW.out', 'D.L', '1/0', 0.5)
		.wire('N1', 'SH.system', 'NB.2', '1/0', 0.15)
		.wire('K1a', 'SB.pos', 'KSW.in', '1/0', 0.6, CRANKING)
		.wire('K1b', 'KSW.out', 'STR.pos', '1/0', 1.6, CRANKING)
		.wire('K1n', 'SB.neg', 'STR.neg', '1/0', 2.2, CRANKING)
		.stack('HP.stud', 'M1', 'H1p', 'H2p');
}

type Way = readonly [id: string, draw: number, fuseA: number, gauge: string, lengthM: number, critical: boolean];

function panel(s: ReturnType<typeof common>, ways: readonly Way[], feeder: string) {
	const spare = Array.from({ length: 6 }, () => null);
	const fuseA = [...spare, ...ways.map(([, , fuse]) => fuse)];
	const names = [...spare.map(() => 'spare'), ...ways.map(([id]) => id.toLowerCase())];
	s.part('PAN', 'blade-panel', [1030, 710], { ways: 12, ratedA: 100, fuseA, names }, { note: 'In the wheelhouse.' });
	ways.forEach(([id, draw, , , , critical], index) => {
		s.part(id, 'load', [1175 + 128 * index, 820], { draw, critical }, { turn: 90 });
	});
	return s.pair('C2', ['D.2', 'PAN.feed'], ['PAN.neg', 'NB.4'], feeder, 2);
}

/** The relay joins the banks only while the alternator runs; cranking lasts three seconds. */
const cases = (s: ReturnType<typeof common>) =>
	s
		.case('capstan', 'Capstan and panel, engine off', { levels: { STR: 0, BP: 0, RLY: 0 } })
		.case('pump', 'Bilge pump and panel, engine off', { levels: { STR: 0, CAP: 0, RLY: 0 } })
		.case('charging', 'Under way, charging both banks', { sources: 1, levels: { STR: 0, CAP: 0, BP: 0 } })
		.case('cranking', 'Cranking', { duration: 'surge', levels: { CAP: 0, BP: 0, RLY: 0 } })
		.done();

export function ottersReachAfter(): Diagram {
	const s = common('after')
		.part('FK', 'twin-fuse-block', [220, 110], { fuseAA: 150, fuseBA: 100 })
		.mount('FK', 'SB.pos')
		// The blade fuse is quick enough for a stalled pump, but breaks 1 kA; the industrial one breaks the 4 kA of a short at this post.
		.part('F6', 'inline-fuse', [400, 470], { family: 'cylindrical', fuseA: 25 })
		.part('F7', 'inline-fuse', [520, 470], { fuseA: 15 });
	const ways = [
		['NAV', 2, 5, '10', 10, true],
		['VHF', 6, 10, '10', 5, true],
		['FRIDGE', 5, 15, '10', 6, true],
		['PLOTTER', 3, 5, '14', 5, false],
		['DECK', 10, 20, '10', 7, false],
		['CABIN', 2, 5, '14', 4, false]
	] as const;
	panel(s, ways, '6');
	ways.forEach(([id, , , gauge, lengthM], index) => {
		s.pair(`P${index + 7}`, [`PAN.${index + 7}`, `${id}.pos`], [`${id}.neg`, `PAN.n${index + 7}`], gauge, lengthM);
	});
	s.pair('K2', ['FK.a', 'ALT.pos'], ['ALT.neg', 'SB.neg'], '4', 1.8, HOT)
		.wire('K3a', 'FK.b', 'RLY.a', '2', 1.8, {
			bends: [
				[330, 20],
				[1070, 20]
			]
		})
		.wire('K3b', 'RLY.b', 'D.3', '2', 1.2)
		.wire('K3n', 'STR.neg', 'NB.5', '2', 2)
		.wire('H1n', 'H1.neg', 'SH.battery', '1/0', 0.5)
		.pair('C1', ['D.1', 'CAP.pos'], ['CAP.neg', 'NB.3'], '2', 5.5)
		.wire('C6a', 'H1.pos', 'F6.in', '8', 0.1)
		.wire('C6b', 'F6.out', 'F7.in', '8', 0.05)
		.wire('C6p', 'F7.out', 'BP.pos', '8', 6.85)
		.wire('C6n', 'BP.neg', 'NB.6', '8', 7)
		.stack('SB.pos', 'K1a', 'FK')
		.stack('SB.neg', 'K1n', 'K2n')
		.stack('STR.neg', 'K1n', 'K3n')
		.stack('H1.pos', 'FH1', 'C6a')
		.stack('SH.battery', 'H1n', 'H2n');
	return cases(s);
}

export function ottersReachBefore(): Diagram {
	const s = common('before')
		.part('FK', 'twin-fuse-block', [220, 110], { fuseAA: 150, fuseBA: 100 })
		.mount('FK', 'SB.pos')
		.part('F6', 'inline-fuse', [400, 470], { fuseA: 30 })
		.part('HORN', 'load', [1180, 300], { draw: 5 }, { turn: 90 })
		.part('HULL', 'chassis-point', [1860, 960], {}, { note: 'Aluminium hull.' });
	const ways = [
		['NAV', 2, null, '16', 10, true],
		['VHF', 6, 10, '12', 5, true],
		['FRIDGE', 5, 15, '12', 6, true],
		['PLOTTER', 3, 5, '14', 5, false],
		['DECK', 10, 25, '10', 7, false],
		['CABIN', 2, 5, '14', 4, false]
	] as const;
	panel(s, ways as unknown as readonly Way[], '6');
	ways.forEach(([id, , , gauge, lengthM], index) => {
		// The navigation lights were added to the deck lights' way.
		const way = id === 'NAV' ? 11 : index + 7;
		s.wire(`P${index + 7}p`, `PAN.${way}`, `${id}.pos`, gauge, lengthM);
		if (id === 'DECK') s.wire('P11n', 'DECK.neg', 'HULL.stud', gauge, 1);
		else s.wire(`P${index + 7}n`, `${id}.neg`, `PAN.n${index + 7}`, gauge, lengthM);
	});
	s.pair('K2', ['FK.a', 'ALT.pos'], ['ALT.neg', 'SB.neg'], '4', 1.8, { ...HOT, insulationC: 75 })
		.wire('K3a', 'FK.b', 'RLY.a', '2', 1.8, {
			bends: [
				[330, 20],
				[1070, 20]
			]
		})
		.wire('K3b', 'RLY.b', 'D.R', '2', 1.2)
		.wire('K3n', 'STR.neg', 'H1.neg', '2', 2, {
			bends: [
				[740, 215],
				[740, 420],
				[615, 420],
				[615, 780]
			]
		})
		.wire('H1n', 'H1.neg', 'SH.battery', '1/0', 0.5)
		.wire('C1p', 'D.1', 'CAP.pos', '2', 5.5)
		.wire('C1n', 'CAP.neg', 'H1.neg', '2', 5.5)
		.wire('C6a', 'H1.pos', 'F6.in', '14', 0.15)
		.wire('C6p', 'F6.out', 'BP.pos', '14', 6.85, { colour: 'yellow' })
		.wire('C6n', 'BP.neg', 'H1.neg', '14', 7)
		.wire('K5p', 'STR.pos', 'HORN.pos', '16', 1.5, HOT)
		.wire('K5n', 'HORN.neg', 'H1.neg', '14', 1.5, HOT)
		.wire('G1', 'HULL.stud', 'NB.7', '8', 1, { colour: 'green-yellow' })
		.stack('SB.pos', 'K1a', 'FK')
		.stack('SB.neg', 'K1n', 'K2n')
		.stack('STR.pos', 'K1b', 'K5p')
		.stack('STR.neg', 'K1n', 'K3n')
		.stack('H1.pos', 'FH1', 'C6a')
		.stack('H1.neg', 'C6n', 'K5n', 'C1n', 'K3n', 'H1n')
		.stack('SH.battery', 'H1n', 'H2n');
	return cases(s);
}
