/** A short-circuit current by Thévenin's theorem: its formula and inputs, with what sources held at their limit add. */
import type { Condition } from '#core/faults';
import type { Input } from './explanation.ts';
import { input } from './write-out.ts';

interface Shorted {
	readonly openV: number;
	/** Infinity where only sources at their limit feed it. */
	readonly loopOhm: number;
	readonly currentA: number;
}

interface Told {
	readonly condition: Condition;
	/** "between the two", "at B1 + against B1 −" */
	readonly where: string;
	/** Null for a dead short, which has none. */
	readonly shortOhm: number | null;
}

const FEEDING: Readonly<Record<Condition, string>> = {
	greatest: 'batteries full, behind their resistance into a short; sources at their limit',
	least: 'batteries nearly empty, behind their resistance in use'
};
const COPPER: Readonly<Record<Condition, string>> = {
	greatest: 'batteries into a short, conductors at 20 °C, joints, fuses and switches, in series and parallel',
	least: 'batteries in use, conductors warm, joints, fuses and switches, in series and parallel'
};

export function thevenin(
	{ openV, loopOhm, currentA }: Shorted,
	{ condition, where, shortOhm }: Told
): { readonly expression: string; readonly inputs: Input[] } {
	const isFed = loopOhm !== Infinity && openV > 0;
	// What chargers of another rail add, held at their limit.
	const limitedA = currentA - (isFed ? openV / (loopOhm + (shortOhm ?? 0)) : 0);
	const addsLimited = limitedA > 1e-9 || !isFed;
	const computed = { origin: 'computed', confidence: 'common-practice' } as const;
	const drawn = { origin: 'diagram', confidence: 'given' } as const;
	return {
		expression: [...(isFed ? [shortOhm === null ? 'U0 / Rk' : 'U0 / (Rk + Rs)'] : []), ...(addsLimited ? ['Is'] : [])].join(' + '),
		inputs: [
			...(isFed
				? [
						input('U0', `volts ${where} before the short`, openV, 'V', { ...computed, source: FEEDING[condition] }),
						input('Rk', 'resistance of all that feeds it, there and back', loopOhm, 'Ω', { ...computed, source: COPPER[condition] }),
						...(shortOhm === null ? [] : [input('Rs', 'resistance of the short itself', shortOhm, 'Ω', { ...drawn, source: 'as chosen' })])
					]
				: []),
			...(addsLimited
				? [input('Is', 'sources that give no more than their limit', limitedA, 'A', { ...drawn, source: 'ratings on the drawing' })]
				: [])
		]
	};
}
