import { setParams, type Command } from '#core/diagram';
import { listed, type Finding, type Study } from '#core/rules';
import { ampsText } from '#core/units';
import { devicesIn, ratingsOf, withRating, type DevicePlace } from './device-rating.ts';
import { applied, findingsOfRule, mend } from './findings.ts';
import type { Proposal, RemedyKind } from './types.ts';

/** Rules that want a larger one; all others want a smaller one. */
const LARGER = ['fuse-below-load'];

/** The nearest rating on sale that passes. */
export const otherFuse: RemedyKind = {
	rules: [
		...LARGER,
		'oversized-protection',
		'fuse-over-device-limit',
		'fuse-oversized-for-load',
		'fuse-value-not-standard',
		'no-fast-clearing',
		'block-misuse'
	],

	*propose(study, finding) {
		const { diagram } = study;
		const devices = devicesIn(
			diagram,
			finding.subjects.flatMap(({ kind, id }) => (kind === 'part' ? [id] : []))
		);
		const before = findingsOfRule(diagram, finding.rule);
		for (const together of choices(study, finding, devices)) {
			for (const commands of steps(study, finding, together)) {
				const after = applied(diagram, commands.commands);
				if (!after || mend(before, findingsOfRule(after, finding.rule), finding) !== 'whole') continue;
				yield commands;
				break;
			}
		}
	}
};

/** Devices to change at once. */
function choices(study: Study, { rule, subjects, numbers }: Finding, devices: readonly DevicePlace[]): DevicePlace[][] {
	const conductor = subjects.find(({ kind }) => kind === 'conductor');
	if (conductor && study.network.branchOfConductor.has(conductor.id)) {
		const { from, to } = study.protection(conductor.id);
		const limiting = [...from.limitedBy, ...to.limitedBy].map(({ part, link }) => `${part}.${link}`);
		const own = devices.filter(({ part, link }) => limiting.includes(`${part}.${link}`));
		return own.length === 0 ? [] : [own];
	}
	if (rule === 'fuse-below-load') return devices.filter(({ device }) => device.ratingA === numbers.ratingA).map((device) => [device]);
	return devices.map((device) => [device]);
}

/** Each step towards a larger or smaller rating, nearest first, where the finding does not tell where to begin. */
function* steps(study: Study, { rule, numbers }: Finding, devices: readonly DevicePlace[]): Generator<Proposal> {
	const isLarger = LARGER.includes(rule);
	const { ratingA: now } = devices.reduce((a, b) => (b.device.ratingA > a.device.ratingA ? b : a)).device;
	const ladder = ratingsOf(devices[0]!.device);
	const begin = isLarger
		? (numbers.neededA ?? now)
		: Math.min(now, (numbers.limitA ?? now) / (rule === 'oversized-protection' ? 1 : devices.length));
	const wanted = isLarger
		? ladder.filter((ratingA) => ratingA > now && ratingA >= begin)
		: ladder.filter((ratingA) => ratingA < now && ratingA <= begin).toReversed();
	for (const ratingA of wanted.slice(0, MOST_STEPS)) {
		const commands: Command[] = [];
		const changed = devices.filter(({ device }) => (isLarger ? device.ratingA < ratingA : device.ratingA > ratingA));
		let { diagram } = study;
		for (const { part, link } of changed) {
			const params = withRating(diagram.parts[part]!, link, ratingA);
			const command = params && setParams({ parts: [part], params });
			if (!command) return;
			commands.push(command);
			diagram = applied(diagram, [command])!;
		}
		const names = listed(changed.map(({ part, link }) => deviceText(study, part, link)));
		yield { title: `Fit ${ampsText(ratingA)} for ${names}`, commands };
	}
}

const MOST_STEPS = 8;

/** "F3", or "D position 2" where the part has several. */
export function deviceText(study: Study, part: string, link: string): string {
	const { label, links, terminals } = study.part(part);
	const name = label.trim() || part;
	const devices = links.filter(({ kind }) => kind === 'protective');
	const device = devices.find(({ id }) => id === link);
	if (devices.length < 2 || !device || !('between' in device)) return name;
	const end = device.between.findLast((id) => terminals.some((terminal) => terminal.id === id));
	return `${name} ${terminals.find(({ id }) => id === end)?.label ?? link}`;
}
