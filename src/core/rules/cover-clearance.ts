import { cableDiameterMm, gaugeText } from '#core/conductors';
import { COVER_AIR_MM } from '#core/studs';
import { millimetresText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { conductorSubject, studSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

export const coverClearance = defineRuleForEach('stacks', {
	meta: {
		id: 'cover-clearance',
		title: 'The cover closes over what is on the stud',
		severity: 'warning',
		group: 'studs',
		why: 'A cover that does not close is left off, and a bare live stud waits for a tool to fall on it.',
		source: { default: 'common practice, no source; cable diameters vary by maker' }
	},

	messages: {
		cable: ({ name, gauge, stud, cableMm, slotMm }: { name: string; gauge: string; stud: string; cableMm: number; slotMm: number }) => ({
			message: `${capital(name)} (${gauge}, about ${mm(cableMm)} thick) does not pass the ${mm(slotMm)} slot of the cover over ${stud}.`,
			remedy: 'Land it on a stud without this cover, or use two thinner conductors on two studs.'
		}),
		height: ({ stud, heightMm, coverMm }: { stud: string; heightMm: number; coverMm: number }) => ({
			message: `The stack on ${stud} stands ${mm(heightMm)} high with its nut; the cover leaves ${mm(coverMm)}.`,
			remedy: 'Move a terminal to another stud.'
		})
	},

	*checkOne({ key, terminal, layers, heightMm, hardwareAssumed }, study) {
		const { coverSlotMm, coverHeightMm } = terminal;
		if (coverSlotMm !== null) {
			const gauges = new Map(layers.flatMap(({ item, gauge }) => (item.kind === 'lug' && gauge ? [[item.conductor, gauge] as const] : [])));
			for (const [id, gauge] of gauges) {
				const cableMm = cableDiameterMm(gauge);
				if (!exceeds(cableMm, coverSlotMm)) continue;
				yield {
					message: 'cable',
					data: { name: study.conductorName(id), gauge: gaugeText(gauge), stud: study.studName(key), cableMm, slotMm: coverSlotMm },
					at: subjects([studSubject(key), conductorSubject(id)])
				};
			}
		}
		const nut = layers.findLast(({ item }) => item.kind === 'nut');
		const topMm = heightMm + (nut?.thicknessMm ?? 0);
		if (coverHeightMm === null || !exceeds(topMm + COVER_AIR_MM, coverHeightMm)) return;
		yield {
			message: 'height',
			data: { stud: study.studName(key), heightMm: topMm, coverMm: coverHeightMm },
			at: [studSubject(key)],
			assumptions: hardwareAssumed ? ['A flat washer, a lock washer and a nut close the stack.'] : []
		};
	}
});

const mm = (value: number): string => millimetresText(value);
