/** Stretches of one direction in bins by place, so that the few near a line are found without looking at all. */

export interface Stretch {
	readonly id: string;
	/** Coordinate of its line: y of a horizontal stretch, x of a vertical one. */
	readonly at: number;
	readonly from: number;
	readonly to: number;
	readonly widthMm: number;
	/** First and last stretches are held by their terminals. */
	held: boolean;
}

/** Size of a bin across and along the stretches. */
const ACROSS_MM = 64;
const ALONG_MM = 256;
/** More bins than a drawing has in one direction. */
const STRIDE = 2 ** 24;

const binAcross = (mm: number): number => Math.floor(mm / ACROSS_MM);
const binAlong = (mm: number): number => Math.floor(mm / ALONG_MM);

/** A stretch over more bins than this is looked at every time. */
const OUTSIZE_BINS = 64;

export class StretchBins {
	readonly #bins = new Map<number, Stretch[]>();
	readonly #all = new Set<Stretch>();
	readonly #outsize = new Set<Stretch>();
	// Windows may be as wide as one likes; beyond these bins there is nothing.
	#low = Infinity;
	#high = -Infinity;
	#first = Infinity;
	#last = -Infinity;

	add(stretch: Stretch): void {
		this.#all.add(stretch);
		const across = binAcross(stretch.at);
		const first = binAlong(stretch.from);
		const last = binAlong(stretch.to);
		if (last - first > OUTSIZE_BINS) {
			this.#outsize.add(stretch);
			return;
		}
		this.#low = Math.min(this.#low, across);
		this.#high = Math.max(this.#high, across);
		this.#first = Math.min(this.#first, first);
		this.#last = Math.max(this.#last, last);
		for (let along = first; along <= last; along++) {
			const key = across * STRIDE + along;
			const bin = this.#bins.get(key);
			if (bin) bin.push(stretch);
			else this.#bins.set(key, [stretch]);
		}
	}

	remove(stretch: Stretch): void {
		this.#all.delete(stretch);
		if (this.#outsize.delete(stretch)) return;
		const across = binAcross(stretch.at);
		const last = binAlong(stretch.to);
		for (let along = binAlong(stretch.from); along <= last; along++) {
			const bin = this.#bins.get(across * STRIDE + along);
			const place = bin?.indexOf(stretch) ?? -1;
			if (place >= 0) bin!.splice(place, 1);
		}
	}

	/** Stretches on lines from `low` to `high` that meet `from` to `to` along them, touching included; each once. */
	search(low: number, high: number, from: number, to: number): Stretch[] {
		const found: Stretch[] = [];
		const first = Math.max(this.#first, binAlong(from));
		const last = Math.min(this.#last, binAlong(to));
		const highest = Math.min(this.#high, binAcross(high));
		const lowest = Math.max(this.#low, binAcross(low));
		if ((highest - lowest + 1) * (last - first + 1) > this.#all.size) {
			for (const stretch of this.#all) if (meets(stretch, low, high, from, to)) found.push(stretch);
			return found;
		}
		for (const stretch of this.#outsize) if (meets(stretch, low, high, from, to)) found.push(stretch);
		for (let across = lowest; across <= highest; across++) {
			for (let along = first; along <= last; along++) {
				const bin = this.#bins.get(across * STRIDE + along);
				if (!bin) continue;
				for (const stretch of bin) {
					// A long stretch lies in several bins: it counts in the first of them.
					if (meets(stretch, low, high, from, to) && (along === first || binAlong(stretch.from) === along)) found.push(stretch);
				}
			}
		}
		return found;
	}
}

const meets = (stretch: Stretch, low: number, high: number, from: number, to: number): boolean =>
	stretch.at >= low && stretch.at <= high && stretch.to >= from && stretch.from <= to;
