/**
 * Which figure a number of a finding is. Rules hand on numbers by name, not by figure; a number is taken to be a
 * figure of the finding's subjects when it is the same to the last digits, and either too odd to be so by chance or
 * called alike.
 */
import type { FigureId } from './figure-id.ts';

export interface Candidate {
	readonly figure: FigureId;
	readonly name: string;
	readonly value: number;
	readonly unit: string;
}

const SAME = 1e-9;

/** What rules call such numbers. */
const CALLED: Readonly<Record<string, RegExp>> = {
	amperage: /ampacity|amperage/i,
	'worst-current': /current|load/i,
	'surge-current': /current|surge|start/i,
	current: /current|load|draw/i,
	loading: /percent|share|loading/i,
	'let-through': /let|device|rating|protect|through/i,
	'let-through-from': /let|device|rating|protect|through/i,
	'let-through-to': /let|device|rating|protect|through/i,
	'greatest-device': /limit|greatest|allowed|most/i,
	'volts-lost': /drop|lost|own/i,
	'drop-percent': /drop|lost|percent/i,
	total: /drop|lost/i,
	percent: /drop|lost|percent/i,
	volts: /volt|terminal|load|at/i,
	'working-temperature': /temperature|working/i,
	'fault-current': /fault|short/i,
	breaking: /break|interrupt/i,
	use: /use/i,
	bring: /bring/i,
	usable: /usable/i,
	net: /net|short/i,
	autonomy: /without|days/i,
	'autonomy-with-sources': /days/i
};

export function figureOfNumber(key: string, value: number, unit: string, candidates: readonly Candidate[]): FigureId | null {
	const alike = candidates.filter(
		(candidate) =>
			(candidate.unit === unit || unit === '') &&
			Number.isFinite(candidate.value) &&
			Math.abs(candidate.value - value) <= SAME * Math.max(1, Math.abs(value))
	);
	const called = alike.find(({ figure }) => 'figure' in figure && CALLED[figure.figure]?.test(key) === true);
	if (called) return called.figure;
	return isOdd(value) && unit !== '' ? (alike[0]?.figure ?? null) : null;
}

/** More than three digits: no two quantities of a system share those by chance. */
const isOdd = (value: number): boolean => Math.abs(value - Number(value.toPrecision(3))) > SAME * Math.abs(value);
