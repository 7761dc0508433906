/** Drawing coordinates are millimetres, x to the right and y downward. */
export interface Point {
	readonly x: number;
	readonly y: number;
}

export interface Box {
	readonly minX: number;
	readonly minY: number;
	readonly maxX: number;
	readonly maxY: number;
}

/** Side a conductor leaves a terminal by, before the part's rotation. */
export type Side = 'north' | 'east' | 'south' | 'west';
