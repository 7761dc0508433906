/** What rules about inverters need to know of them. */
import type { LoadBranch } from '#core/network';
import type { Study } from './study.ts';

export interface InverterInput {
	readonly load: LoadBranch;
	/** Drawn from the battery side at full output, watts. */
	readonly watts: number;
	/** Voltage below which it switches off; null when not given. */
	readonly cutOffV: number | null;
}

/** Inverters fed from this drawing, in its order. */
export function invertersOf({ form, part }: Study): InverterInput[] {
	return form.loads.flatMap((load) => {
		const { definition, params } = part(load.part);
		if (definition?.kind !== 'inverter' || load.draw.kind !== 'power') return [];
		const { cutOffV } = params;
		return [{ load, watts: load.draw.watts, cutOffV: typeof cutOffV === 'number' ? cutOffV : null }];
	});
}

/** What a lead-acid or lithium bank of 12 V is at when inverters give up: common practice, no source. */
const ASSUMED_CUT_OFF_OF_12V = 11;

/** Volts at which it switches off, and what had to be assumed. */
export function cutOff(study: Study, { cutOffV }: InverterInput, name: string): { volts: number; assumptions: readonly string[] } {
	if (cutOffV !== null) return { volts: cutOffV, assumptions: [] };
	const volts = (ASSUMED_CUT_OFF_OF_12V * study.diagram.system.nominalV) / 12;
	return { volts, assumptions: [`${name} taken to switch off below ${volts} V.`] };
}
