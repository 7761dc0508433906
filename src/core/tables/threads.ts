import { millimetresFromInches } from '#core/units';
import type { ThreadId } from './ids.ts';

/**
 * Stud thread with the hardware that goes with it; millimetres and newton metres.
 *
 * Metric: pitch ISO 261 coarse (from memory), hole ISO 273 fine, nut ISO 4032, washer ISO 7089, spring washer DIN 127
 * (withdrawn). Inch: pitch ASME B1.1 and holes of ring terminals as sold (from memory), nut ASME B18.2.2, washer ASME
 * B18.21.1 type A narrow, spring washer ASME B18.21.1 helical (from memory). M4 washers and the thickness of the 1/2 in
 * washer are from memory. Torque is common practice, no source.
 */
export interface Thread {
	readonly majorMm: number;
	readonly pitchMm: number;
	/** Hole of a lug or ring made for this stud. */
	readonly holeMm: number;
	readonly nutAcrossFlatsMm: number;
	/** Greatest nut height. */
	readonly nutHeightMm: number;
	readonly washerDiameterMm: number;
	readonly washerThicknessMm: number;
	/** Spring washer. */
	readonly lockWasherDiameterMm: number;
	readonly lockWasherThicknessMm: number;
	/** Usual range for tinned brass or copper studs on a moulded base. */
	readonly torqueNm: readonly [least: number, greatest: number];
}

type Row = readonly [number, number, number, number, number, number, number, number, number, readonly [number, number]];

const inches = millimetresFromInches;

// prettier-ignore
const ROWS: Readonly<Record<ThreadId, Row>> = {
	//      major  pitch   hole   nut s   nut m  washer d2, h   spring d2, s   torque
	M4: [4, 0.7, 4.3, 7, 3.2, 9, 0.8, 7.6, 0.9, [1, 1.4]],
	M5: [5, 0.8, 5.3, 8, 4.7, 10, 1.0, 9.2, 1.2, [2, 2.5]],
	M6: [6, 1.0, 6.4, 10, 5.2, 12, 1.6, 11.8, 1.6, [4, 6]],
	M8: [8, 1.25, 8.4, 13, 6.8, 16, 1.6, 14.8, 2.0, [9, 12]],
	M10: [10, 1.5, 10.5, 16, 8.4, 20, 2.0, 18.1, 2.2, [14, 20]],
	M12: [12, 1.75, 13.0, 18, 10.8, 24, 2.5, 21.1, 2.5, [25, 35]],
	'#8': [4.166, inches(1 / 32), 4.39, inches(11 / 32), 3.137, 9.525, 1.016, 7.4, 1.02, [1, 1.4]],
	'#10': [4.826, inches(1 / 32), 5.0, inches(3 / 8), 3.137, 10.312, 1.016, 8.5, 1.19, [2, 2.5]],
	'1/4': [inches(1 / 4), inches(1 / 20), 6.8, inches(7 / 16), 5.563, 12.7, 1.6, 12.4, 1.57, [4, 6]],
	'5/16': [inches(5 / 16), inches(1 / 18), 8.4, inches(1 / 2), 6.744, 15.875, 1.6, 14.9, 1.98, [9, 12]],
	'3/8': [inches(3 / 8), inches(1 / 16), 9.9, inches(9 / 16), 8.344, 18.644, 1.6, 17.3, 2.39, [14, 20]],
	'1/2': [inches(1 / 2), inches(1 / 13), 13.2, inches(3 / 4), 11.113, 25.4, 2.4, 22.1, 3.18, [25, 35]]
};

export const thread = (id: ThreadId): Thread => {
	const [
		majorMm,
		pitchMm,
		holeMm,
		nutAcrossFlatsMm,
		nutHeightMm,
		washerDiameterMm,
		washerThicknessMm,
		lockWasherDiameterMm,
		lockWasherThicknessMm,
		torqueNm
	] = ROWS[id];
	return {
		majorMm,
		pitchMm,
		holeMm,
		nutAcrossFlatsMm,
		nutHeightMm,
		washerDiameterMm,
		washerThicknessMm,
		lockWasherDiameterMm,
		lockWasherThicknessMm,
		torqueNm
	};
};
