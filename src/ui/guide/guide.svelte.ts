/** Which guided start is under way, and at which step: remembered in this browser, so that it can be left and resumed. */
import { remember, remembered } from '../remember.ts';

export const START_IDS = ['circuit', 'bus', 'handover'] as const;
export type StartId = (typeof START_IDS)[number];

const KEY = 'wireworthy-guide';

export interface Place {
	readonly start: StartId;
	readonly step: number;
}

export class Guide {
	/** Where it is; null while none is followed. */
	#at = $state.raw<Place | null>(null);
	/** Where it was left. */
	#left = $state.raw<Place | null>(kept());

	get at(): Place | null {
		return this.#at;
	}

	get left(): Place | null {
		return this.#left;
	}

	/** From its first step, or from where it was left. */
	follow(start: StartId): void {
		this.#go({ start, step: this.#left?.start === start ? this.#left.step : 0 });
	}

	restart(start: StartId): void {
		this.#go({ start, step: 0 });
	}

	/** @param steps there are; past the last one it is over */
	to(step: number, steps: number): void {
		if (!this.#at) return;
		if (step < steps) return this.#go({ start: this.#at.start, step: Math.max(0, step) });
		this.#at = null;
		this.#leftAt(null);
	}

	leave(): void {
		this.#at = null;
	}

	#go(place: Place): void {
		this.#at = place;
		this.#leftAt(place);
	}

	#leftAt(place: Place | null): void {
		this.#left = place;
		remember(KEY, place && `${place.start} ${place.step}`);
	}
}

function kept(): Place | null {
	const [start, step] = (remembered(KEY) ?? '').split(' ');
	const id = START_IDS.find((one) => one === start);
	return id && Number.isInteger(Number(step)) && Number(step) >= 0 ? { start: id, step: Number(step) } : null;
}
