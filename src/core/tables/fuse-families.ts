import type { FuseFamilyId } from './ids.ts';
import type { Confidence, Sourced } from './sourced.ts';

export interface BreakingStep {
	/** Holds up to and including this system voltage. */
	readonly upToV: number;
	readonly currentA: number;
}

export interface FuseFamily {
	readonly name: string;
	/** Open standard, or that the maker's sheet rules. */
	readonly standard: string;
	/** Greatest system voltage it is made for. */
	readonly maxSystemV: Sourced<number>;
	/** Greatest current it interrupts, by voltage, lowest voltage first. */
	readonly breaking: Sourced<readonly BreakingStep[]>;
	/** Ratings on sale, amps, ascending. */
	readonly ratingsA: Sourced<readonly number[]>;
}

const sourced = <Value>(value: Value, source: string, confidence: Confidence): Sourced<Value> => ({ value, source, confidence });
const ladder = (...ratingsA: number[]): Sourced<readonly number[]> => sourced(ratingsA, 'common practice, no source', 'common-practice');

const BLADE = 'ISO 8820-3 types C, E and F';
const STRIP = 'ISO 8820-5 types SF 30 and SF 51';
const MAKER = 'makers’ sheets, from memory';

const bladeBreaking = sourced([{ upToV: 32, currentA: 1000 }], BLADE, 'verified');
const bladeV = sourced(32, BLADE, 'verified');
const stripBreaking = sourced([{ upToV: 32, currentA: 2000 }], STRIP, 'verified');
const stripV = sourced(32, STRIP, 'verified');

const FAMILIES: Readonly<Record<FuseFamilyId, FuseFamily>> = {
	'blade-mini': {
		name: 'blade fuse, mini',
		standard: 'ISO 8820-3 type F',
		maxSystemV: bladeV,
		breaking: bladeBreaking,
		ratingsA: ladder(2, 3, 5, 7.5, 10, 15, 20, 25, 30)
	},
	'blade-regular': {
		name: 'blade fuse, regular',
		standard: 'ISO 8820-3 type C',
		maxSystemV: bladeV,
		breaking: bladeBreaking,
		ratingsA: ladder(1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40)
	},
	'blade-large': {
		name: 'blade fuse, large',
		standard: 'ISO 8820-3 type E',
		maxSystemV: bladeV,
		breaking: bladeBreaking,
		ratingsA: ladder(20, 25, 30, 40, 50, 60, 70, 80, 100)
	},
	'strip-sf30': {
		name: 'strip fuse SF30',
		standard: 'ISO 8820-5 type SF 30',
		maxSystemV: stripV,
		breaking: stripBreaking,
		ratingsA: ladder(30, 40, 50, 60, 70, 80, 100, 125, 150, 200)
	},
	'strip-sf51': {
		name: 'strip fuse SF51',
		standard: 'ISO 8820-5 type SF 51',
		maxSystemV: stripV,
		breaking: stripBreaking,
		ratingsA: ladder(40, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500)
	},
	limiter: {
		name: 'bolt-down limiter',
		standard: 'maker’s sheet',
		maxSystemV: sourced(80, MAKER, 'memory'),
		breaking: sourced(
			[
				{ upToV: 32, currentA: 6000 },
				{ upToV: 80, currentA: 2700 }
			],
			MAKER,
			'memory'
		),
		ratingsA: ladder(35, 40, 50, 60, 70, 80, 100, 125, 130, 150, 175, 200, 225, 250, 275, 300, 325, 350, 400, 500, 600, 700, 750)
	},
	cube: {
		name: 'terminal-mounted cube fuse',
		standard: 'maker’s sheet',
		maxSystemV: sourced(58, MAKER, 'memory'),
		breaking: sourced(
			[
				{ upToV: 14, currentA: 10000 },
				{ upToV: 32, currentA: 5000 },
				{ upToV: 58, currentA: 2000 }
			],
			MAKER,
			'memory'
		),
		ratingsA: ladder(30, 40, 50, 60, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300)
	},
	'class-t': {
		name: 'Class T fuse',
		standard: 'UL 248-15',
		maxSystemV: sourced(125, 'UL 248-15, DC rating as usually marked, from memory', 'memory'),
		breaking: sourced([{ upToV: 125, currentA: 20000 }], 'UL 248-15, DC rating as usually marked, from memory', 'memory'),
		ratingsA: ladder(30, 40, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600)
	},
	cylindrical: {
		name: 'cylindrical or knife-blade industrial fuse',
		standard: 'IEC 60269',
		maxSystemV: sourced(250, 'IEC 60269, least of the usual DC ratings, from memory', 'memory'),
		breaking: sourced([{ upToV: 250, currentA: 10000 }], 'IEC 60269, least of the usual DC ratings, from memory', 'memory'),
		ratingsA: ladder(
			2,
			4,
			5,
			6,
			7.5,
			8,
			10,
			12,
			15,
			16,
			20,
			25,
			30,
			32,
			35,
			40,
			50,
			60,
			63,
			80,
			100,
			125,
			160,
			200,
			250,
			315,
			400,
			500,
			630
		)
	}
};

export const fuseFamily = (id: FuseFamilyId): FuseFamily => FAMILIES[id];

/** Breaking capacity of a family at a system voltage, amps; zero above the voltage it is made for. */
export function breakingCapacityA(id: FuseFamilyId, systemV: number): Sourced<number> {
	const { breaking } = FAMILIES[id];
	const step = breaking.value.find(({ upToV }) => systemV <= upToV);
	return { value: step?.currentA ?? 0, source: breaking.source, confidence: breaking.confidence };
}
