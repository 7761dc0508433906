import { voltsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { standing } from './load-poles.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

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
		title: 'A device is fed with the voltage it is made for',
		severity: 'error',
		group: 'conductors',
		why: 'Twice its voltage destroys a device within seconds, or later and with fire; half of it and it does not work.',
		source: { default: 'common practice, no source: 9 to 16 V for what is made for 12 V, and in proportion' }
	},

	messages: {
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
		for (const load of study.network.loads) {
			const { madeForV } = study.part(load.part).params;
			if (typeof madeForV !== 'number' || standing(study, load) !== 'fed') continue;
			const openV = study.nets.voltsBetween(load.positive, load.negative);
			if (openV === null) continue;
			const [fromV, toV] = [(RANGE_OF_12V.fromV * madeForV) / 12, (RANGE_OF_12V.toV * madeForV) / 12];
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

function highest({ cases }: Study, load: number, openV: number): { voltsV: number; caseName: string; caseId: string | null } {
	let worst: ReturnType<typeof highest> = { voltsV: openV, caseName: 'with nothing on', caseId: null };
	for (const { id, point, operatingCase } of cases) {
		const voltsV = point.loadV[load]!;
		if (point.status !== 'solved' || !point.loadFed[load] || voltsV <= worst.voltsV) continue;
		worst = { voltsV, caseName: `in "${operatingCase.label.trim() || id}"`, caseId: id };
	}
	return worst;
}
