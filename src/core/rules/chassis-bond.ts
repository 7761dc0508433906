import { areaMm2, gaugeText } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { NEC_552_BOND } from '#core/tables';
import { ampsText } from '#core/units';
import { chassisOf } from './chassis.ts';
import { amperageSource, amperageText, deviceName, exceeds, gaugeForDevice, limitText, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects, WHOLE_DIAGRAM } from './subjects.ts';
import { capital, partName } from './words.ts';

export const chassisBond = defineRule({
	meta: {
		id: 'chassis-bond',
		title: 'The negative is bonded to the chassis by a conductor that carries a fault',
		severity: 'warning',
		group: 'protection',
		why: 'A positive conductor that rubs through on the chassis must open its fuse at once. Without a bond, or through a thin one, it sparks and burns instead.',
		source: { 'rv-nec-552': NEC_552_BOND.source, default: 'common practice, no source' }
	},

	messages: {
		missing: ({ points }: { points: string | null }) => ({
			message:
				points === null
					? 'The negative is given as bonded, but no chassis point is drawn.'
					: `The negative is given as bonded, but no conductor joins it to ${points}.`,
			remedy: 'Run one conductor from the negative bus, on the load side of the shunt, to a chassis point.'
		}),
		thin: ({ name, gauge, amperage, device, deviceA, limitA, limit, thicker }: Thin) => ({
			message: `${capital(name)} (${gauge}, ${amperage}) bonds the chassis. A positive conductor touching it would send the ${ampsText(deviceA)} of ${device} through the bond; at most ${ampsText(limitA)} is allowed (${limit}).`,
			remedy: thicker ? `Use at least ${thicker} for ${name}.` : 'Use a thicker bond, or smaller fuses.'
		}),
		belowTable: ({ name, gauge, least }: { name: string; gauge: string; least: string }) => ({
			message: `${capital(name)} (${gauge}) bonds the chassis; it must be at least ${least}, and no thinner than the battery’s positive lead.`,
			remedy: `Use a conductor of at least ${least}, and no thinner than the battery’s positive lead, for ${name}.`
		})
	},

	*check(study) {
		if (study.diagram.system.negative !== 'bonded' || study.network.batteries.length === 0) return;
		const { nodes, bonds } = chassisOf(study);
		const [first, ...others] = bonds;
		if (!first) {
			if (isBoltedOn(study, nodes)) return;
			const points = study.parts.filter(({ terminals, links }) => links.length === 1 && terminals.every(({ role }) => role === 'chassis'));
			const at = points.map(({ id }) => partSubject(id));
			yield {
				message: 'missing',
				data: { points: points.length === 0 ? null : points.map(partName).join(', ') },
				at: at.length === 0 ? [WHOLE_DIAGRAM] : subjects(at)
			};
			return;
		}
		const bond = others.reduce((a, b) => (areaMm2(b.conductor.gauge) > areaMm2(a.conductor.gauge) ? b : a), first);
		yield* study.profile.basedOn === 'rv-nec-552' ? byTable(study, bond) : byFault(study, bond);
	}
});

interface Thin {
	readonly name: string;
	readonly gauge: string;
	readonly amperage: string;
	readonly device: string;
	readonly deviceA: number;
	readonly limitA: number;
	readonly limit: string;
	readonly thicker: string | null;
}

/** Something of the negative side sits on a chassis stud itself. */
const isBoltedOn = ({ network }: Study, chassis: ReadonlySet<number>): boolean =>
	[...network.batteries, ...network.sources].some(({ negative }) => chassis.has(negative));

/** The bond must be protected by the largest device that feeds a positive conductor. */
function* byFault(study: Study, bond: ConductorView) {
	const largest = study.network.branches
		.filter(({ device, a }) => device !== null && study.network.poles[a] === 'positive')
		.reduce<Study['network']['branches'][number] | null>((a, b) => (a && a.device!.ratingA >= b.device!.ratingA ? a : b), null);
	const limit = greatestDevice(study.profile, bond.ampacity, study.diagram.system.nominalV);
	if (!largest || largest.origin.kind !== 'link' || !exceeds(largest.device!.ratingA, limit.currentA)) return;
	yield {
		message: 'thin' as const,
		data: {
			name: bond.name,
			gauge: gaugeText(bond.conductor.gauge),
			amperage: amperageText(bond.ampacity),
			device: deviceName(study, largest.origin),
			deviceA: largest.device!.ratingA,
			limitA: limit.currentA,
			limit: limitText(limit, bond.ampacity.currentA),
			thicker: gaugeForDevice(study, bond, largest.device!.ratingA)
		},
		at: subjects([conductorSubject(bond.id), partSubject(largest.origin.part)]),
		source: sources('common practice, no source', limit.source, amperageSource(bond.ampacity)),
		unverified: bond.ampacity.unverified || limit.unverified
	};
}

function* byTable(study: Study, bond: ConductorView) {
	const posts = new Set(study.network.batteries.map(({ positive }) => positive));
	const leads = study.conductors.filter(({ branch, pole }) => pole === 'positive' && (posts.has(branch.a) || posts.has(branch.b)));
	const gauges = [{ system: 'awg' as const, size: NEC_552_BOND.value }, ...leads.map(({ conductor }) => conductor.gauge)];
	const least = gauges.reduce((a, b) => (areaMm2(b) > areaMm2(a) ? b : a));
	if (!exceeds(areaMm2(least), areaMm2(bond.conductor.gauge))) return;
	yield {
		message: 'belowTable' as const,
		data: { name: bond.name, gauge: gaugeText(bond.conductor.gauge), least: gaugeText(least) },
		at: subjects([conductorSubject(bond.id)])
	};
}
