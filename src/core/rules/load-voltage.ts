import { voltsText } from '#core/units';
import { caseName } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { least } from './extremes.ts';
import { numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const loadVoltage = defineRule({
	meta: {
		id: 'load-voltage',
		title: 'A device has the voltage it needs in every case',
		severity: 'warning',
		group: 'conductors',
		why: 'A compressor that cannot start hums and heats; a radio that sags while it transmits is not heard. A percentage does not show it.',
		source: { default: 'the lowest voltage given for the device' }
	},

	messages: {
		low: ({ name, volts, leastV, caseName }: { name: string; volts: number; leastV: number; caseName: string }) => ({
			message: `In “${caseName}” ${name} has ${voltsText(volts)}; it works down to ${voltsText(leastV)}.`,
			remedy: 'Use shorter or thicker conductors there and back, a fuller or larger battery, or less at a time.'
		}),
		off: ({ name, leastV, openV }: { name: string; leastV: number; openV: number }) => ({
			message: `${capital(name)} works down to ${voltsText(leastV)}, more than the ${voltsText(openV)} its supply has with nothing on.`,
			remedy: 'Correct the voltage, or feed it through a converter.'
		})
	},

	/** One report for each device: its lowest voltage in a case in which it is on. */
	*check({ form, cases, part, atRest }) {
		for (const load of form.loads) {
			const view = part(load.part);
			const leastV = numberOf(view, load.followsSource === null ? 'minV' : 'minInputV');
			if (leastV === null) continue;
			const at = [partSubject(load.part)] as const;
			const name = partName(view);
			const openV = atRest.status === 'solved' ? atRest.loadV[load.index]! : null;
			if (openV !== null && openV > 0 && exceeds(leastV, openV)) {
				yield { message: 'off', data: { name, leastV, openV }, at };
				continue;
			}
			const drawing = cases.filter(({ point }) => point.status === 'solved' && point.loadA[load.index]! > 1e-6);
			const worst = least(
				drawing.map((result) => ({ result, volts: result.point.loadV[load.index]! })),
				({ volts }) => volts
			);
			if (!worst || !exceeds(leastV, worst.volts)) continue;
			yield { message: 'low', data: { name, volts: worst.volts, leastV, caseName: caseName(worst.result) }, at, caseId: worst.result.id };
		}
	}
});
