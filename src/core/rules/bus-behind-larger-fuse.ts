import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import type { ConductorView, PartView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { conductorsByPart } from './wiring.ts';
import { capital, partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly ratedA: number;
	readonly fedA: number;
	readonly takenA: number;
}

export const busBehindLargerFuse = defineRuleForEach('parts', {
	meta: {
		id: 'bus-behind-larger-fuse',
		title: 'A bus or panel is protected at its rating',
		severity: 'warning',
		group: 'protection',
		why: 'When everything behind a panel is on at once, no single fuse is over its rating and the bar between them is.',
		source: { default: 'the rating given for the part; common practice' }
	},

	messages: {
		larger: ({ name, ratedA, fedA, takenA }: Data) => ({
			message: `${capital(name)} is rated ${ampsText(ratedA)}; what feeds it lets ${ampsText(fedA)} through, and what it feeds may take ${ampsText(takenA)}.`,
			remedy: `Fit at most ${ampsText(ratedA)} before it, or use a bus or panel of a higher rating.`
		})
	},

	/** Positive bars that are fed through conductors; an unlimited feed is said by the rules on those. */
	*checkOne(part, study) {
		const ratedA = barRatingA(part);
		const views = ratedA === null ? [] : (conductorsByPart(study).get(part.id) ?? []).map(study.conductor);
		if (ratedA === null || views.length === 0) return;
		const feeds = views.flatMap((view) => feedOf(study, part.id, view) ?? []);
		const fedA = feeds.reduce((sum, { currentA }) => sum + currentA, 0);
		if (fedA === Infinity || !exceeds(fedA, ratedA)) return;
		const takenA = takenFrom(study, part, views, feeds);
		if (!exceeds(takenA, ratedA)) return;
		yield {
			message: 'larger',
			data: { name: partName(part), ratedA, fedA, takenA },
			at: subjects([partSubject(part.id), ...feeds.map(({ view }) => conductorSubject(view.id))])
		};
	}
});

const barRatingA = ({ definition, links }: PartView): number | null =>
	definition?.group === 'distribution'
		? links.reduce<number | null>((least, link) => {
				if (link.kind !== 'segment' || link.ratedA === null) return least;
				return least === null ? link.ratedA : Math.max(least, link.ratedA);
			}, null)
		: null;

interface Feed {
	readonly view: ConductorView;
	readonly currentA: number;
}

/** What a conductor can bring to the bar: let through to its far end, where the bar itself is not what feeds it. */
function feedOf({ form, protection }: Study, part: string, view: ConductorView): Feed | null {
	const end = view.conductor.from.part === part ? 'from' : 'to';
	const node = form.nodeOfEnd.get(view.id)![end];
	if (view.pole !== 'positive' || view.conductor.from.part === view.conductor.to.part) return null;
	// Behind a fuse of the part itself lie its loads; a source there has a fuse of its own rating at most.
	const isOutgoing = form.branchesAt[node]!.some((index) => {
		const { device, origin } = form.branches[index]!;
		return device !== null && origin.kind === 'link' && origin.part === part;
	});
	if (isOutgoing) return null;
	const { currentA } = protection(view.id)[end === 'from' ? 'to' : 'from'];
	return currentA > 0 ? { view, currentA } : null;
}

/** Fuses of the part, blocks on its studs, and what conductors without a fuse there carry at most in a case. */
function takenFrom({ form, diagram, part }: Study, bus: PartView, views: readonly ConductorView[], feeds: readonly Feed[]): number {
	const own = bus.links.reduce((sum, link) => sum + (link.kind === 'protective' && isUsed(link.id) ? link.device.ratingA : 0), 0);
	const onStuds = Object.entries(diagram.mounts)
		.filter(([block, host]) => host.part === bus.id && Object.hasOwn(diagram.parts, block))
		.flatMap(([block]) => part(block).links)
		.reduce((sum, link) => sum + (link.kind === 'protective' ? link.device.ratingA : 0), 0);
	const feeding = new Set(feeds.map(({ view }) => view));
	const fused = new Set(
		bus.links.flatMap((link) => (link.kind === 'protective' ? link.between.map((end) => form.nodeOf.get(`${bus.id}.${end}`)) : []))
	);
	const bare = views
		.filter((view) => view.pole === 'positive' && !feeding.has(view) && !fused.has(view.branch.a) && !fused.has(view.branch.b))
		.reduce((sum, { surge }) => sum + surge.currentA, 0);
	return own + onStuds + bare;

	function isUsed(link: string): boolean {
		const branch = form.branches[form.branchOfLink.get(`${bus.id}.${link}`)!]!;
		return views.some(({ branch: { a, b } }) => [a, b].some((node) => node === branch.a || node === branch.b));
	}
}
