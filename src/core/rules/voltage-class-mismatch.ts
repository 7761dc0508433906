import { voltsText } from '#core/units';
import { banksOf, batteriesOf } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import { standing } from './load-poles.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** What a device of nominally 12 V stands and needs: common practice, no source. */
const RANGE_OF_12V = { fromV: 9, toV: 16 } as const;

interface Data {
	readonly name: string;
	readonly madeForV: number;
	readonly voltsV: number;
	readonly limitV: number;
	readonly caseName: string;
}

export const voltageClassMismatch = defineRule({
	meta: {
		id: 'voltage-class-mismatch',
		title: 'Batteries give the voltage of the system, and devices get the voltage they are made for',
		severity: 'error',
		group: 'conductors',
		why: 'Twice its voltage destroys a device within seconds, or later and with fire; half of it and it does not work.',
		source: { default: 'common practice, no source: 9 to 16 V for what is made for 12 V, and in proportion' }
	},

	messages: {
		bank: ({ names, nominalV, voltsV }: { names: string; nominalV: number; voltsV: number }) => ({
			message: `No bank gives the ${voltsText(nominalV)} of the system. The highest voltage of ${names} is ${voltsText(voltsV)}, at rest; every percentage and limit here is taken of ${voltsText(nominalV)}.`,
			remedy: 'Set the nominal voltage of the diagram to that of the batteries, or join batteries in series until they give it.'
		}),
		high: ({ name, madeForV, voltsV, limitV, caseName }: Data) => ({
			message: `${capital(name)} is made for ${voltsText(madeForV)}, at most ${voltsText(limitV)}, and gets ${voltsText(voltsV)} ${caseName}.`,
			remedy: 'Feed it through a DC-DC converter, or use a device made for this voltage.'
		}),
		low: ({ name, madeForV, voltsV, limitV, caseName }: Data) => ({
			message: `${capital(name)} is made for ${voltsText(madeForV)}, at least ${voltsText(limitV)}, and gets ${voltsText(voltsV)} ${caseName}.`,
			remedy: 'Feed it from the voltage it is made for.'
		})
	},

	/** High is judged in the worst case, also while charging; low by what batteries and sources offer with nothing on. */
	*check(study) {
		const bank = wrongBank(study);
		if (bank) yield bank;
		for (const load of study.form.loads) {
			const { madeForV } = study.part(load.part).params;
			if (typeof madeForV !== 'number' || standing(study, load) !== 'fed') continue;
			const openV = study.nets.voltsBetween(load.positive, load.negative);
			if (openV === null) continue;
			const { fromV, toV } = rangeOf(madeForV);
			const worst = highest(study, load.index, openV);
			const data = { name: partName(study.part(load.part)), madeForV };
			const at = [partSubject(load.part)] as const;
			if (exceeds(worst.voltsV, toV)) yield { message: 'high', data: { ...data, ...worst, limitV: toV }, at, caseId: worst.caseId };
			else if (exceeds(fromV, openV)) {
				yield { message: 'low', data: { ...data, voltsV: openV, limitV: fromV, caseName: 'with nothing on' }, at };
			}
		}
	}
});

const rangeOf = (nominalV: number) => ({ fromV: (RANGE_OF_12V.fromV * nominalV) / 12, toV: (RANGE_OF_12V.toV * nominalV) / 12 });

/**
 * Batteries of which neither a bank by itself nor all as they are joined, also through switches, give the system's
 * voltage. One bank that does is enough: a starter battery may have another.
 */
function wrongBank(study: Study) {
	const { form, nets, diagram } = study;
	const { nominalV } = diagram.system;
	const { banks } = banksOf(study);
	const own = banks.map(({ strings }) => strings[0]!.batteries.reduce((sum, { emfV }) => sum + emfV, 0));
	const once = (nodes: readonly number[]) => [...new Map(nodes.map((node) => [nets.of(node), node])).values()];
	const bottoms = once(form.batteries.map(({ negative }) => negative));
	const joined = once(form.batteries.map(({ positive }) => positive)).flatMap((top) =>
		bottoms.flatMap((bottom) => nets.voltsBetween(top, bottom) ?? [])
	);
	const voltsV = Math.max(...own, ...joined);
	const { fromV, toV } = rangeOf(nominalV);
	const fits = (volts: number) => volts >= fromV && volts <= toV;
	if (own.length === 0 || own.some(fits) || fits(voltsV)) return null;
	const [first, ...others] = [...new Set(banks.flatMap(batteriesOf).map(({ part }) => part))];
	const names = listed([first!, ...others].map((part) => partName(study.part(part))));
	return {
		message: 'bank' as const,
		data: { names, nominalV, voltsV },
		at: subjects([first!, ...others].map(partSubject))
	};
}

function highest({ cases }: Study, load: number, openV: number): { voltsV: number; caseName: string; caseId: string | null } {
	const fed = cases.filter(({ point }) => point.status === 'solved' && point.loadFed[load]);
	const inCases = fed.map(({ id, point, operatingCase }) => ({
		voltsV: point.loadV[load]!,
		caseName: `in “${operatingCase.label.trim() || id}”`,
		caseId: id
	}));
	return greatest([{ voltsV: openV, caseName: 'with nothing on', caseId: null }, ...inCases], ({ voltsV }) => voltsV)!;
}
