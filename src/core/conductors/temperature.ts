export interface Heating {
	/** Around the conductor, °C. */
	readonly ambientC: number;
	/** Temperature the insulation is made for, °C. */
	readonly insulationC: number;
	readonly currentA: number;
	/** After all factors: the current that brings the conductor to the insulation's temperature. */
	readonly ampacityA: number;
}

/**
 * Estimated temperature of a conductor that carries a current for hours, °C: its rise goes with the heat, I².
 * Above the amperage the estimate goes on rising. Infinite for a current where no amperage is left.
 */
export function workingTemperatureC({ ambientC, insulationC, currentA, ampacityA }: Heating): number {
	if (currentA === 0) return ambientC;
	return ambientC + Math.max(0, insulationC - ambientC) * (currentA / ampacityA) ** 2;
}
