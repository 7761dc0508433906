/** What a profile is made of: limits, amperage tables and factors, all with their sources. */
import type { AwgSize, BundleStep, Sourced } from '#core/tables';
import type { AmperageTable } from './amperage-tables.ts';
import type { Profile, ProfileNumber } from './types.ts';

type Words = Pick<ProfileNumber, 'title' | 'unit' | 'group'>;

/** The limits every profile has, in the order to show them. */
export const LIMITS = {
	deviceFactor: { title: 'Greatest fuse or breaker, times amperage', unit: '×', group: 'protection' },
	deviceFactorFrom50V: { title: 'Greatest fuse or breaker from 50 V, times amperage', unit: '×', group: 'protection' },
	nextStandardUpTo: { title: 'Next standard rating allowed up to, times amperage', unit: '×', group: 'protection' },
	unsheathedM: { title: 'Unprotected length', unit: 'm', group: 'protection' },
	sheathedM: { title: 'Unprotected length in a sheath or enclosure', unit: 'm', group: 'protection' },
	batteryM: { title: 'Unprotected length at a battery', unit: 'm', group: 'protection' },
	fuseLoadShare: { title: 'Continuous current as a share of a fuse’s rating', unit: '×', group: 'protection' },
	fuseGroupedShare: { title: 'The same for three or more hot fuses side by side', unit: '×', group: 'protection' },
	criticalDropPercent: { title: 'Voltage drop of critical circuits', unit: '%', group: 'voltage-drop' },
	ordinaryWarnPercent: { title: 'Voltage drop of other circuits, warning', unit: '%', group: 'voltage-drop' },
	ordinaryDropPercent: { title: 'Voltage drop of other circuits, limit', unit: '%', group: 'voltage-drop' },
	dropResistivity: { title: 'Resistivity of copper for voltage drop', unit: 'Ω·mm²/m', group: 'voltage-drop' },
	smallestSeparateMm2: { title: 'Smallest conductor on its own', unit: 'mm²', group: 'conductors' },
	smallestSheathedMm2: { title: 'Smallest conductor in a sheath', unit: 'mm²', group: 'conductors' },
	bundleFromV: { title: 'Bundling counts from a system voltage of', unit: 'V', group: 'factors' }
} as const satisfies Record<string, Words>;

export type LimitKey = keyof typeof LIMITS;
export type Limits = Readonly<Record<LimitKey, Sourced<number>>>;

export interface ProfileSpec extends Pick<Profile, 'id' | 'name' | 'scope'> {
	readonly limits: Limits;
	/** For conductors on their own, and for two or more together: most profiles use one table for both. */
	readonly amperage: { readonly single: AmperageTable; readonly together: AmperageTable };
	/** One factor for an engine space up to a temperature; null where the ambient equation serves there too. */
	readonly engineSpace: {
		readonly upToC: number;
		/** By insulation, °C, ascending: the last one not above a conductor's holds. */
		readonly factors: readonly { readonly insulationC: number; readonly factor: Sourced<number> }[];
	} | null;
	/** True where temperatures above the table's are counted by the equation behind the printed factors. */
	readonly countsAmbient: boolean;
	readonly bundle: Sourced<readonly BundleStep[]>;
	readonly devicesBySize?: Sourced<Readonly<Partial<Record<AwgSize, number>>>>;
}

export const practice = (value: number): Sourced<number> => ({
	value,
	source: 'common practice, no source',
	confidence: 'common-practice'
});
