import { studKey, type PartId, type StudKey } from '#core/diagram';
import { threadText } from '#core/studs';
import { thread } from '#core/tables';
import { ampsText, millimetresText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { continuousCaseIds, plateDrawA } from './stack-currents.ts';
import type { Study, WorstCurrent } from './study.ts';
import { conductorSubject, partSubject, studSubject } from './subjects.ts';
import { gathered, ofForm } from './watch.ts';
import { capital, partName } from './words.ts';

/** Slack of a plate's hole around the stud, mm: common practice, no source. */
const SLACK_MM = 1.2;

export const blockMisuse = defineRule({
	meta: {
		id: 'block-misuse',
		title: 'A fuse block or adapter sits on a stud that fits it, within the rating of its plate',
		severity: 'error',
		group: 'studs',
		why: 'The plate of a twin block carries both circuits through one joint; a plate that does not fit its stud has no joint worth the name.',
		source: { default: 'the rating given for the plate; common practice, no source' }
	},

	messages: {
		fuses: ({ name, sumA, ratedA, one }: { name: string; sumA: number; ratedA: number; one: boolean }) => ({
			message: `${capital(name)} holds ${one ? 'a fuse' : 'fuses'} of ${ampsText(sumA)}${one ? '' : ' together'} on a plate rated ${ampsText(ratedA)}.`,
			remedy: one ? 'Fit a smaller fuse.' : 'Fit smaller fuses, or give each circuit a block of its own.'
		}),
		current: ({ name, currentA, ratedA }: { name: string; currentA: number; ratedA: number }) => ({
			message: `The plate of ${name} is rated ${ampsText(ratedA)} and carries ${ampsText(currentA)}.`,
			remedy: 'Give each circuit a block of its own, on another stud.'
		}),
		place: ({ name, stud }: { name: string; stud: string }) => ({
			message: `${capital(name)} is mounted on ${stud}, which has no seat for a plate.`,
			remedy: 'Mount it on a battery post, or on an end stud or plain stud of a bus.'
		}),
		hole: ({ name, hole, stud, size, slackMm }: { name: string; hole: string; stud: string; size: string; slackMm: number }) => ({
			message:
				slackMm < 0
					? `The plate of ${name} is made for ${hole} and does not go over the ${size} stud ${stud}.`
					: `The plate of ${name} is made for ${hole} and has ${millimetresText(slackMm, 2)} of slack on the ${size} stud ${stud}.`,
			remedy: `Use a block whose plate fits ${size}. Never drill a plate out.`
		}),
		plateLug: ({ name, block }: { name: string; block: string }) => ({
			message: `${capital(name)} ends on the plate of ${block}, which lands on a stud and takes no lug.`,
			remedy: `End it on the stud that ${block} is mounted on.`
		})
	},

	*check(study) {
		yield* misusedBlocks(study);
		yield* lugsOnPlates(study);
	}
});

const mounts = ofForm(({ diagram }) =>
	Object.entries(diagram.mounts).flatMap(([block, host]) => (Object.hasOwn(diagram.parts, block) ? [{ block, host }] : []))
);

const misusedBlocks = gathered(mounts, (study, { block, host }) => [...misuseOf(study, block, studKey(host))]);

function* misuseOf(study: Study, block: PartId, host: StudKey) {
	const view = study.part(block);
	const plate = view.terminals.find(({ mountingPlate }) => mountingPlate);
	if (!plate) return;
	const name = partName(view);

	if (plate.ratedA !== null) {
		const fuses = view.links.filter((link) => link.kind === 'protective' && link.between.includes(plate.id));
		const sumA = fuses.reduce((sum, link) => sum + (link.kind === 'protective' ? link.device.ratingA : 0), 0);
		const carried = plateCurrent(study, block);
		const at = [partSubject(block)] as const;
		if (exceeds(carried.currentA, plate.ratedA)) {
			yield { message: 'current' as const, data: { name, currentA: carried.currentA, ratedA: plate.ratedA }, at, caseId: carried.caseId };
		} else if (sumA > plate.ratedA) {
			yield { message: 'fuses' as const, data: { name, sumA, ratedA: plate.ratedA, one: fuses.length === 1 }, at };
		}
	}
	yield* fit(study, block, host, plate);
}

function plateCurrent(study: Study, block: PartId): WorstCurrent {
	const draw = plateDrawA(study, block);
	let worst: WorstCurrent = { currentA: 0, caseId: null };
	for (const [i, caseId] of continuousCaseIds(study).entries()) {
		const currentA = Math.abs(draw(i));
		if (currentA > worst.currentA) worst = { currentA, caseId };
	}
	return worst;
}

function* fit(study: Study, block: string, key: string, plate: { thread: Parameters<typeof thread>[0] | null }) {
	const host = study.stack(key)?.terminal;
	if (!host) return;
	const data = { name: partName(study.part(block)), stud: study.studName(key) };
	const at = [partSubject(block), studSubject(key)] as const;
	if (host.kind === 'clamp' || host.acceptsBlock === false) {
		yield { message: 'place' as const, data, at };
	} else if (plate.thread !== null && host.thread !== null) {
		const slackMm = thread(plate.thread).holeMm - thread(host.thread).majorMm;
		if (slackMm >= 0 && slackMm <= SLACK_MM) return;
		yield { message: 'hole' as const, data: { ...data, hole: threadText(plate.thread), size: threadText(host.thread), slackMm }, at };
	}
}

const lugsOnPlates = gathered(
	(study) => study.conductors,
	(study, { id, name, conductor }) =>
		[conductor.from, conductor.to].flatMap(({ part, terminal }) => {
			const view = study.part(part);
			if (!view.terminal(terminal)?.mountingPlate) return [];
			const data = { name, block: partName(view) };
			return [{ message: 'plateLug' as const, data, at: [conductorSubject(id), partSubject(part)] as const }];
		})
);
