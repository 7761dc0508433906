/** Areas to begin with; each is an ordinary area once it is drawn, and can be made into anything. */
import type { Area } from '#core/diagram';
import { drawingTexts } from './texts.ts';

type Like = Pick<Area, 'label' | 'spaces' | 'ambientC'>;

/** Temperatures are left to the diagram: what is common is a guess, and a guess must not look like a measurement. */
export function areaKinds(): readonly Like[] {
	const { kinds } = drawingTexts;
	return [
		{ label: kinds.batteryBay, spaces: [], ambientC: null },
		{ label: kinds.engineSpace, spaces: ['engine'], ambientC: null },
		{ label: kinds.cabin, spaces: [], ambientC: null },
		{ label: kinds.berth, spaces: ['sleeping'], ambientC: null },
		{ label: kinds.fuelLocker, spaces: ['fuel'], ambientC: null },
		{ label: kinds.outside, spaces: ['wet'], ambientC: null },
		{ label: kinds.bilge, spaces: ['flooded'], ambientC: null }
	];
}
