import { voltsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { deviceKind, deviceNames, devicesOf, isUnverified, ratedVolts, type DeviceBranch } from './device-limits.ts';
import { groupBy } from './group-by.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly names: string;
	readonly isOne: boolean;
	readonly kind: string;
	readonly ratedV: number;
	readonly reachedV: number;
}

/** A rating this much above the circuit's voltage leaves room for a charger set a little high: common practice. */
const MARGIN = 1.1;

export const fuseVoltageRating = defineRule({
	meta: {
		id: 'fuse-voltage-rating',
		title: 'A fuse or breaker is made for the voltage of its circuit',
		severity: 'error',
		group: 'protection',
		why: 'A fuse on more volts than it is made for may melt and go on arcing: the circuit is not interrupted, and the fuse itself burns.',
		source: { 'us-small-craft': '33 CFR 183.455(d)', default: 'the voltage the fuse or breaker is made for' }
	},

	messages: {
		over: ({ names, isOne, kind, ratedV, reachedV }: Data) => ({
			message: `${capital(names)} (${kind}) ${isOne ? 'is' : 'are'} made for up to ${voltsText(ratedV)}; the circuit reaches ${voltsText(reachedV)} while charging or at rest.`,
			remedy: `Fit a type made for at least ${voltsText(reachedV)} of direct current.`
		}),
		close: ({ names, isOne, kind, ratedV, reachedV }: Data) => ({
			message: `${capital(names)} (${kind}) ${isOne ? 'is' : 'are'} made for up to ${voltsText(ratedV)}, hardly more than the ${voltsText(reachedV)} the circuit reaches while charging or at rest.`,
			remedy: 'Fit a type made for a higher voltage of direct current.'
		})
	},

	/** One report for all of a type on one net. */
	*check(study) {
		const reachedV = voltsReached(study);
		const judged = devicesOf(study).flatMap((branch) => {
			const rated = ratedVolts(branch.device);
			const volts = reachedV(branch);
			return rated !== null && volts > 0 && exceeds(MARGIN * volts, rated.value) ? [{ branch, rated, volts }] : [];
		});
		const keyOf = ({ branch, rated }: (typeof judged)[number]) => `${study.nets.of(branch.a)} ${rated.value} ${deviceKind(branch.device)}`;
		for (const alike of groupBy(judged, keyOf).values()) {
			const [{ branch, rated }] = alike as [(typeof judged)[number]];
			const volts = Math.max(...alike.map((item) => item.volts));
			const isOver = exceeds(volts, rated.value);
			yield {
				message: isOver ? 'over' : 'close',
				severity: isOver ? 'error' : 'warning',
				data: {
					names: deviceNames(
						study,
						alike.map((item) => item.branch)
					),
					isOne: alike.length === 1,
					kind: deviceKind(branch.device),
					ratedV: rated.value,
					reachedV: volts
				},
				at: subjects([...new Set(alike.map((item) => item.branch.origin.part))].map(partSubject)),
				unverified: isUnverified(rated)
			};
		}
	}
});

/** Greatest volts a device sees against the return: in any case, at rest, and at the setting of any charger on its net. */
function voltsReached({ form, nets, cases, atRest }: Study): (branch: DeviceBranch) => number {
	const points = [...cases.map(({ point }) => point), atRest].filter(({ status }) => status === 'solved');
	const setV = new Map<number, number>();
	for (const { positive, setV: volts } of form.sources) {
		setV.set(nets.of(positive), Math.max(volts, setV.get(nets.of(positive)) ?? 0));
	}
	const reached = (node: number) => Math.max(setV.get(nets.of(node)) ?? 0, ...points.map(({ nodeV }) => Math.abs(nodeV[node]!)));
	// Once open, a device in the negative has the whole voltage across it.
	const acrossNegative = (node: number) =>
		Math.max(
			0,
			...[...form.batteries, ...form.sources].flatMap(({ positive }) =>
				nets.voltsBetween(positive, node) === null ? [] : [reached(positive)]
			)
		);
	return ({ a, b }) => (form.poles[a] === 'negative' ? acrossNegative(a) : Math.max(reached(a), reached(b)));
}
