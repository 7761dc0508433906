import { studKey, type Conductor, type ConductorEnd, type StudKey } from '#core/diagram';
import { threadText } from '#core/studs';
import { thread, type ThreadId } from '#core/tables';
import { compactNumber } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { conductorSubject, studSubject, subjects } from './subjects.ts';
import { gathered } from './watch.ts';
import { capital, listed } from './words.ts';

interface Data {
	readonly name: string;
	readonly stud: string;
	readonly size: string;
	readonly torqueNm: number;
	readonly leastNm: number;
	readonly greatestNm: number;
}

export const torque = defineRule({
	meta: {
		id: 'torque',
		title: 'Nuts are tightened to their torque',
		severity: 'error',
		group: 'studs',
		why: 'A nut too loose is a hot joint; one too tight has begun to strip the stud or to crack its base.',
		source: { default: 'ranges usual for tinned brass or copper studs: common practice, no source; a maker’s figure goes before' }
	},

	messages: {
		over: ({ name, stud, size, torqueNm, leastNm, greatestNm }: Data) => ({
			message: `The nut over the lug of ${name} on ${stud} (${size}) was tightened to ${compactNumber(torqueNm)} N·m; ${compactNumber(leastNm)} to ${compactNumber(greatestNm)} N·m is usual.`,
			remedy: 'Look for a stretched stud or a cracked base, and tighten it afresh.'
		}),
		under: ({ name, stud, size, torqueNm, leastNm, greatestNm }: Data) => ({
			message: `The nut over the lug of ${name} on ${stud} (${size}) was tightened to ${compactNumber(torqueNm)} N·m only; ${compactNumber(leastNm)} to ${compactNumber(greatestNm)} N·m is usual.`,
			remedy: 'Tighten it with a torque wrench.'
		}),
		missing: ({ names, count, recorded }: { names: string; count: number; recorded: number }) => ({
			message: `The torque of ${recorded} ${recorded === 1 ? 'nut is' : 'nuts are'} recorded, that of ${count} is not: ${capital(names)}.`,
			remedy: 'Measure those too, and enter what was read.'
		})
	},

	/** The range of the thread for each nut recorded; one note on the others, once anybody has begun to record. */
	*check(study) {
		const recorded = new Set<StudKey>();
		for (const { id, name, conductor } of recordedOn(study)) {
			for (const end of ['from', 'to'] as const) {
				const nut = nutAt(study, conductor, end);
				if (!nut || nut.torqueNm === null) continue;
				const { key, size, torqueNm } = nut;
				recorded.add(key);
				const [leastNm, greatestNm] = thread(size).torqueNm;
				const isOver = exceeds(torqueNm, greatestNm);
				if (!isOver && !exceeds(leastNm, torqueNm)) continue;
				yield {
					message: isOver ? 'over' : 'under',
					severity: isOver ? 'error' : 'warning',
					data: { name, stud: study.studName(key), size: threadText(size), torqueNm, leastNm, greatestNm },
					at: [conductorSubject(id), studSubject(key)],
					unverified: true
				};
			}
		}
		if (recorded.size === 0) return;
		// One nut holds all lugs of a stud.
		const missing = [...new Set(openNuts(study))].filter((key) => !recorded.has(key));
		if (missing.length === 0) return;
		yield {
			message: 'missing',
			severity: 'note',
			data: { names: listed(missing.map(study.studName)), count: missing.length, recorded: recorded.size },
			at: subjects(missing.map(studSubject))
		};
	}
});

interface Nut {
	readonly key: StudKey;
	readonly size: ThreadId;
	readonly torqueNm: number | null;
}

/** Null for a clamp. */
function nutAt(study: Study, conductor: Conductor, end: ConductorEnd): Nut | null {
	const { part, terminal } = conductor[end];
	const size = study.part(part).terminals.find((other) => other.id === terminal)?.thread;
	return size ? { key: studKey(conductor[end]), size, torqueNm: conductor[`${end}TorqueNm`] ?? null } : null;
}

const isRecorded = ({ fromTorqueNm, toTorqueNm }: Conductor): boolean => (fromTorqueNm ?? null) !== null || (toTorqueNm ?? null) !== null;

/** Conductors with a torque at either end. */
const recordedOn = gathered(
	(study) => study.conductors,
	(_, view) => (isRecorded(view.conductor) ? [view] : [])
);

const openNuts = gathered(
	(study) => study.conductors,
	(study, { conductor }) =>
		(['from', 'to'] as const).flatMap((end) => {
			const nut = nutAt(study, conductor, end);
			return nut?.torqueNm === null ? [nut.key] : [];
		})
);
