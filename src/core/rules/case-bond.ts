import { areaMm2, gaugesOf, gaugeText } from '#core/conductors';
import { studKey, type Gauge } from '#core/diagram';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import type { ConductorView, PartView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const caseBond = defineRule({
	meta: {
		id: 'case-bond',
		title: 'The metal case of an inverter or charger is bonded',
		severity: 'warning',
		group: 'protection',
		why: 'A fault inside puts battery or mains voltage on the case. Only a bond as strong as its fuse makes that fuse open.',
		source: { default: 'ABYC A-31 and E-11, from memory: DC grounding conductor no more than one size below the positive, at least 16 AWG' }
	},

	messages: {
		none: ({ names, one }: { names: string; one: boolean }) => ({
			message: `The case of ${names} is bonded to nothing.`,
			remedy: `Run a conductor from ${one ? 'its case stud' : 'each case stud'} to the chassis point or the negative bus, no more than one size below ${one ? 'its' : 'the'} positive conductor.`
		}),
		thin: ({ name, gauge, bonded, positive, least }: { name: string; gauge: string; bonded: string; positive: string; least: string }) => ({
			message: `${capital(name)} (${gauge}) bonds the case of ${bonded}, whose positive conductor is ${positive}; at least ${least} is asked for.`,
			remedy: `Use at least ${least} for ${name}.`
		})
	},

	/** One report for all cases without a bond; one for each that is too thin. */
	*check(study) {
		const cased = study.parts.flatMap((part) => {
			const terminal = part.terminals.find(({ role }) => role === 'chassis');
			const isSupplied = part.terminals.some(({ role }) => role === 'positive');
			return terminal && isSupplied ? [{ part, key: `${part.id}.${terminal.id}` }] : [];
		});
		const landed = cased.map((entry) => ({ ...entry, bonds: study.conductors.filter((view) => endsAt(view, entry.key)) }));
		const bare = landed.filter(({ bonds }) => bonds.length === 0).map(({ part }) => part);
		if (bare.length > 0) {
			yield {
				message: 'none',
				data: { names: listed(bare.map(partName)), one: bare.length === 1 },
				at: subjects(bare.map(({ id }) => partSubject(id))),
				unverified: true
			};
		}
		for (const { part, bonds } of landed) {
			const positive = thickest(positivesOf(study, part));
			const bond = thickest(bonds);
			if (!positive || !bond) continue;
			const least = oneSizeBelow(positive.conductor.gauge);
			if (!exceeds(areaMm2(least), areaMm2(bond.conductor.gauge))) continue;
			yield {
				message: 'thin',
				data: {
					name: bond.name,
					gauge: gaugeText(bond.conductor.gauge),
					bonded: partName(part),
					positive: gaugeText(positive.conductor.gauge),
					least: gaugeText(least)
				},
				at: [conductorSubject(bond.id), partSubject(part.id)],
				unverified: true
			};
		}
	}
});

const endsAt = ({ conductor }: ConductorView, key: string): boolean => studKey(conductor.from) === key || studKey(conductor.to) === key;

const positivesOf = (study: Study, { id, terminals }: PartView): ConductorView[] =>
	terminals
		.filter(({ role }) => role === 'positive')
		.flatMap((terminal) => study.conductors.filter((view) => endsAt(view, `${id}.${terminal.id}`)));

const thickest = (views: readonly ConductorView[]): ConductorView | null =>
	greatest(views, ({ conductor }) => areaMm2(conductor.gauge)) ?? null;

/** The next thinner size of the same system, and never thinner than 16 AWG. */
function oneSizeBelow(gauge: Gauge): Gauge {
	const sizes = gaugesOf(gauge.system);
	const thinner = sizes[sizes.findIndex(({ size }) => size === gauge.size) - 1] ?? gauge;
	const floor: Gauge = { system: 'awg', size: '16' };
	return areaMm2(thinner) < areaMm2(floor) ? floor : thinner;
}
