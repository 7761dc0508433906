import { setParams, type Param, type PartId } from '#core/diagram';
import { describe, fieldMeta } from '#core/parts';
import { listed } from '#core/rules';
import { FUSE_FAMILIES, fuseFamily, type FuseFamilyId } from '#core/tables';
import { ampsText, voltsText } from '#core/units';
import type { Proposal, RemedyKind } from './types.ts';

/** Another type of fuse where the part takes several: made for the voltage, or able to break the short. */
export const fuseType: RemedyKind = {
	rules: ['fuse-voltage-rating', 'interrupt-capacity', 'selectivity-lost'],

	*propose(study, { subjects }) {
		const parts = subjects.flatMap(({ kind, id }) => (kind === 'part' && Object.hasOwn(study.diagram.parts, id) ? [id] : []));
		for (const kind of new Set(parts.map((id) => study.diagram.parts[id]!.kind))) {
			const alike = parts.filter((id) => study.diagram.parts[id]!.kind === kind);
			const { definition, params } = describe(study.diagram.parts[alike[0]!]!);
			if (!definition) continue;
			const names = listed(alike.map((id) => study.part(id).label.trim() || id));
			if (!('family' in definition.params.shape)) {
				yield* bySpecification(alike, names, params);
				continue;
			}
			const options = fieldMeta(definition.params.shape.family).options ?? [];
			for (const { value } of options) {
				const family = value as FuseFamilyId;
				if (value === params.family || !FUSE_FAMILIES.includes(family)) continue;
				yield {
					title: `Use ${fuseFamily(family).name}s in ${names}`,
					// Ratings of voltage and breaking capacity were the other type's.
					commands: [setParams({ parts: alike, params: { family, ...cleared(params as Record<string, Param>) } })],
					group: `type ${kind}`
				};
			}
		}
	}
};

/** A holder for one type of fuse takes any that fits it: what is asked for is written on the fuse. */
function* bySpecification(parts: readonly PartId[], names: string, params: Readonly<Record<string, unknown>>): Generator<Proposal> {
	if (!('fuseRatedV' in params) || !('fuseBreakingA' in params)) return;
	const { maxSystemV, breaking } = fuseFamily('class-t');
	const breakingA = breaking.value[0]!.currentA;
	yield {
		title: `Use a holder and fuse for ${names} marked ${voltsText(maxSystemV.value)} DC and ${ampsText(breakingA)} breaking capacity, such as Class T`,
		commands: [setParams({ parts: [...parts], params: { fuseRatedV: maxSystemV.value, fuseBreakingA: breakingA } })]
	};
}

const GIVEN_BY_TYPE = ['fuseRatedV', 'fuseBreakingA', 'ratedV', 'breakingA'];

const cleared = (params: Record<string, Param>): Record<string, Param> =>
	Object.fromEntries(GIVEN_BY_TYPE.filter((name) => typeof params[name] === 'number').map((name) => [name, null]));
