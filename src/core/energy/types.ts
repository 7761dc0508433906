import type { PartId } from '#core/diagram';

/** One load's day. Plain data. */
export interface LoadRow {
	readonly part: PartId;
	readonly label: string;
	/** Rated draw at the load itself, watts. */
	readonly watts: number;
	readonly hours: number;
	/** Share of those hours that it draws: a compressor rests between runs. */
	readonly dutyShare: number;
	/** Taken from the bank, losses of converters on the way included. */
	readonly wh: number;
	readonly ah: number;
	/** Efficiency of the converters between bank and load; 1 without any. */
	readonly efficiency: number;
}

/** One source's day. */
export interface SourceRow {
	readonly part: PartId;
	readonly label: string;
	readonly wh: number;
	readonly ah: number;
	/** "30 A for 3 h", "400 W × 2.7 h × 0.7". */
	readonly how: string;
}

/** One battery of the bank. */
export interface BatteryRow {
	readonly part: PartId;
	readonly label: string;
	readonly capacityAh: number;
	/** As printed on it. */
	readonly ratedV: number;
	readonly usableShare: number;
	readonly usableWh: number;
	readonly usableAh: number;
}

export interface NotGiven {
	readonly part: PartId;
	readonly label: string;
	/** What is missing: "hours a day", "array", "hours of full sun". */
	readonly what: string;
}

export interface EnergyBalance {
	/** In the diagram's order. */
	readonly loads: readonly LoadRow[];
	readonly sources: readonly SourceRow[];
	readonly batteries: readonly BatteryRow[];
	readonly totals: {
		readonly useWh: number;
		readonly useAh: number;
		readonly bringWh: number;
		readonly bringAh: number;
		/** Use less what the sources bring; negative where they bring more. */
		readonly netWh: number;
		readonly netAh: number;
	};
	/** Voltage between ampere-hours and watt-hours: the bank's printed voltage. */
	readonly bankV: number;
	readonly usableWh: number;
	readonly usableAh: number;
	/** Days until the usable share is gone, from full, without and with the sources. Null: never, or nothing is used. */
	readonly autonomyDays: number | null;
	readonly autonomyWithSourcesDays: number | null;
	/** Loads and sources whose day is not given: they are not in the sums. */
	readonly notGiven: readonly NotGiven[];
	/** Labels of loads that no counted battery feeds. */
	readonly elsewhere: readonly string[];
}
