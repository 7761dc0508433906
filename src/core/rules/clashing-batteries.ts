import { exceeds } from './conductor-words.ts';
import type { BatteryBranch } from '#core/network';
import { netsOf, type Clash } from './nets.ts';
import type { Study } from './study.ts';

/** Volts two parallel strings may differ by at rest: common practice, no source. */
export const greatestMismatchV = (nominalV: number): number => (nominalV <= 12 ? 0.5 : 1);

/** Loops of batteries whose voltages do not add up, with the battery that is reversed where that explains all. */
export interface Mismatch {
	readonly clashes: readonly Clash[];
	readonly reversed: BatteryBranch | null;
}

export function batteryMismatch(study: Study): Mismatch {
	const { form, nets, diagram } = study;
	const limitV = greatestMismatchV(diagram.system.nominalV);
	const serious = (clashes: readonly Clash[]) => clashes.filter(({ excessV }) => exceeds(Math.abs(excessV), limitV));
	const clashes = serious(nets.clashes);
	if (clashes.length === 0) return { clashes, reversed: null };

	const suspects = form.batteries.filter((battery) => serious(netsOf(form, battery).clashes).length === 0);
	return { clashes, reversed: likeliest(suspects, study) };
}

/** Of two batteries back to back either may be the reversed one: the rest of the drawing tells which. */
function likeliest(suspects: readonly BatteryBranch[], study: Study): BatteryBranch | null {
	const against = (battery: BatteryBranch): number => rolesAgainst(battery, study);
	return suspects.reduce<BatteryBranch | null>((worst, battery) => (worst && against(worst) > against(battery) ? worst : battery), null);
}

/** How many terminals on the battery's metal are meant for the other pole, less those meant for this one. */
function rolesAgainst(battery: BatteryBranch, { form, nets, parts }: Study): number {
	const [plus, minus] = [nets.of(battery.positive), nets.of(battery.negative)];
	const batteries = new Set(form.batteries.map(({ part }) => part));
	let count = 0;
	for (const { id, terminals } of parts) {
		if (batteries.has(id)) continue;
		for (const terminal of terminals) {
			const node = form.nodeOf.get(`${id}.${terminal.id}`);
			if (node === undefined || (terminal.role !== 'positive' && terminal.role !== 'negative')) continue;
			const net = nets.of(node);
			const belongs = terminal.role === 'positive' ? plus : minus;
			const wrong = terminal.role === 'positive' ? minus : plus;
			if (net === wrong) count += 1;
			if (net === belongs) count -= 1;
		}
	}
	return count;
}
