import { areaMm2, gaugeText } from '#core/conductors';
import { defineRule } from './define.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, partName } from './words.ts';

/** The cable, 6 AWG, beyond which its weight levers at an extension: common practice, no source. */
const HEAVY_MM2 = 13.4;
/** On a battery post, 1 AWG: common practice, no source. */
const HEAVY_ON_POST_MM2 = 42.5;

export const adapterMisuse = defineRule({
	meta: {
		id: 'adapter-misuse',
		title: 'An adapter post stands on a stud itself, and its cables do not lever at it',
		severity: 'warning',
		group: 'studs',
		why: 'An adapter is a longer lever with one more joint: on another adapter, or under the weight of a heavy cable, it works loose.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		stacked: ({ name, host }: { name: string; host: string }) => ({
			message: `${capital(name)} stands on ${host}, which is an adapter itself.`,
			remedy: 'Use a bus with more studs.'
		}),
		strain: ({ name, conductor, gauge }: { name: string; conductor: string; gauge: string }) => ({
			message: `${capital(conductor)} (${gauge}) hangs on ${name}.`,
			remedy: 'Hold it by a clamp close to its lug, or land it on the stud itself and something lighter on the adapter.'
		}),
		battery: ({ name, conductor, gauge }: { name: string; conductor: string; gauge: string }) => ({
			message: `${capital(conductor)} (${gauge}) hangs on ${name}, which stands on a battery post: its lever is on the battery’s seal.`,
			remedy: 'Land it on the post itself, or on a bus beside the battery.'
		})
	},

	*check(study) {
		const adapters = study.parts.filter(({ id }) => study.diagram.parts[id]!.kind === 'adapter-post');
		for (const adapter of adapters) {
			const name = partName(adapter);
			const host = Object.hasOwn(study.diagram.mounts, adapter.id) ? study.diagram.mounts[adapter.id]! : null;
			if (host && adapters.some(({ id }) => id === host.part))
				yield {
					message: 'stacked',
					data: { name, host: partName(study.part(host.part)) },
					at: [partSubject(adapter.id), partSubject(host.part)]
				};
			const onBattery = host !== null && study.form.batteries.some(({ part }) => part === host.part);
			for (const { id, name: conductor, conductor: drawn } of study.conductors) {
				const lands = drawn.from.part === adapter.id || drawn.to.part === adapter.id;
				if (!lands || areaMm2(drawn.gauge) <= HEAVY_MM2) continue;
				const data = { name, conductor, gauge: gaugeText(drawn.gauge) };
				const at = subjects([conductorSubject(id), partSubject(adapter.id)]);
				if (onBattery && areaMm2(drawn.gauge) > HEAVY_ON_POST_MM2) yield { message: 'battery', data, at };
				else yield { message: 'strain', severity: 'note', data, at };
			}
		}
	}
});
