import { areaMm2, gaugeText } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { NEC_552_BOND } from '#core/tables';
import { ampsText } from '#core/units';
import { bondedSystems, type BondedSystem } from './chassis.ts';
import { amperageSource, amperageText, deviceName, exceeds, gaugeForDevice, limitText, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { greatest } from './extremes.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects, WHOLE_DIAGRAM } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

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
		apart: ({ names, bonds, others }: { names: string; bonds: string; others: string }) => ({
			message: `The negative of ${names} is given as bonded, but nothing joins it to the chassis: ${bonds} bonds that of ${others}, which is isolated from it. A positive conductor of ${names} touching the chassis opens no fuse.`,
			remedy: `Run one conductor from the negative bus of ${names}, on the load side of the shunt, to a chassis point.`
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
		if (study.diagram.system.negative !== 'bonded' || study.form.batteries.length === 0) return;
		const systems = bondedSystems(study);
		const unbonded = systems.filter(({ batteries, isBonded }) => batteries.length > 0 && !isBonded);
		if (systems.every(({ isBonded }) => !isBonded)) return yield missing(study);
		for (const system of unbonded) yield apart(study, system, systems);
		for (const system of systems) {
			const bond = greatest(system.bonds, ({ conductor }) => areaMm2(conductor.gauge));
			if (!bond) continue;
			yield* study.profile.basedOn === 'rv-nec-552' && system.batteries.length > 0
				? byTable(study, bond, system)
				: byFault(study, bond, system);
		}
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

function missing(study: Study) {
	const points = study.parts.filter(({ terminals, links }) => links.length === 1 && terminals.every(({ role }) => role === 'chassis'));
	const at = points.map(({ id }) => partSubject(id));
	return {
		message: 'missing' as const,
		data: { points: points.length === 0 ? null : points.map(partName).join(', ') },
		at: at.length === 0 ? ([WHOLE_DIAGRAM] as const) : subjects(at)
	};
}

/** Batteries whose fault finds no way back, though some isolated output has its bond. */
function apart(study: Study, { batteries }: BondedSystem, systems: readonly BondedSystem[]) {
	const bonded = systems.filter(({ isBonded }) => isBonded);
	const bonds = bonded.flatMap((system) => system.bonds);
	const named = (parts: readonly string[]) => listed([...new Set(parts)].map((part) => partName(study.part(part))));
	return {
		message: 'apart' as const,
		data: {
			names: named(batteries.map(({ part }) => part)),
			bonds: bonds.length === 0 ? 'the chassis itself' : listed(bonds.map(({ name }) => name)),
			others: named(bonded.flatMap((system) => system.parts))
		},
		at: subjects([...bonds.map(({ id }) => conductorSubject(id)), ...batteries.map(({ part }) => partSubject(part))])
	};
}

/** The bond must be protected by the largest device that feeds a positive conductor of its system. */
function* byFault(study: Study, bond: ConductorView, { has }: BondedSystem) {
	const devices = devicesOf(study).filter(({ a }) => study.form.poles[a] === 'positive' && has(a));
	const largest = greatest(devices, ({ device }) => device.ratingA);
	const limit = greatestDevice(study.profile, bond.ampacity, study.diagram.system.nominalV);
	if (!largest || !exceeds(largest.device.ratingA, limit.currentA)) return;
	yield {
		message: 'thin' as const,
		data: {
			name: bond.name,
			gauge: gaugeText(bond.conductor.gauge),
			amperage: amperageText(bond.ampacity),
			device: deviceName(study, largest.origin),
			deviceA: largest.device.ratingA,
			limitA: limit.currentA,
			limit: limitText(limit, bond.ampacity.currentA),
			thicker: gaugeForDevice(study, bond, largest.device.ratingA)
		},
		at: subjects([conductorSubject(bond.id), partSubject(largest.origin.part)]),
		source: sources('common practice, no source', limit.source, amperageSource(bond.ampacity)),
		unverified: bond.ampacity.unverified || limit.unverified
	};
}

function* byTable(study: Study, bond: ConductorView, { batteries }: BondedSystem) {
	const posts = new Set(batteries.map(({ positive }) => positive));
	const leads = study.conductors.filter(({ branch, pole }) => pole === 'positive' && (posts.has(branch.a) || posts.has(branch.b)));
	const gauges = [{ system: 'awg' as const, size: NEC_552_BOND.value }, ...leads.map(({ conductor }) => conductor.gauge)];
	const least = greatest(gauges, areaMm2)!;
	if (!exceeds(areaMm2(least), areaMm2(bond.conductor.gauge))) return;
	yield {
		message: 'belowTable' as const,
		data: { name: bond.name, gauge: gaugeText(bond.conductor.gauge), least: gaugeText(least) },
		at: subjects([conductorSubject(bond.id)])
	};
}
