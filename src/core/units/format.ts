/** Below this a figure is rounding of the arithmetic, not a quantity: nobody measures a picoampere here. */
const NOTHING = 1e-9;

/** The number with at most `digits` significant digits and no trailing zeros: 0.4270 → "0.427". */
export function compactNumber(value: number, digits = 3): string {
	if (!Number.isFinite(value)) return value > 0 ? 'unlimited' : String(value);
	if (Math.abs(value) < NOTHING) return '0';
	if (Math.abs(value) >= 10 ** (digits - 1)) return String(Math.round(value));
	return String(Number(value.toPrecision(digits)));
}

export const ampsText = (amps: number): string =>
	Math.abs(amps) >= 1000 && Number.isFinite(amps) ? `${compactNumber(amps / 1000)} kA` : `${compactNumber(amps)} A`;

export const voltsText = (volts: number): string =>
	Math.abs(volts) < 0.1 && volts !== 0 ? `${compactNumber(volts * 1000)} mV` : `${Number(volts.toFixed(2))} V`;

export const ohmsText = (ohms: number): string => (Math.abs(ohms) < 1 ? `${compactNumber(ohms * 1000)} mΩ` : `${compactNumber(ohms)} Ω`);

export const metresText = (metres: number): string => `${Number(metres.toFixed(2))} m`;
export const percentText = (percent: number): string => `${Number(percent.toFixed(1))} %`;
export const wattsText = (watts: number): string => `${compactNumber(watts)} W`;
