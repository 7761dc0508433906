/** Which batteries may open by their own electronics: then everything on them alone goes dark at once. */
import type { BatteryBranch } from '#core/network';
import { choiceOf } from './params.ts';
import type { Study } from './study.ts';

export function switchesOff({ part }: Study, battery: Pick<BatteryBranch, 'part'>): boolean {
	const view = part(battery.part);
	const said = choiceOf(view, 'switchesOff');
	return said === 'auto' ? choiceOf(view, 'chemistry') === 'lithium-iron-phosphate' : said === 'yes';
}

/** Batteries whose top is on the net of a node; on a converter's rail, those that feed its input. */
export function batteriesBehind(study: Study, node: number): readonly BatteryBranch[] {
	const { form, nets } = study;
	const seen = new Set<number>();
	const found = new Set<BatteryBranch>();
	const open = [node];
	while (open.length > 0) {
		const net = nets.of(open.pop()!);
		if (seen.has(net)) continue;
		seen.add(net);
		for (const battery of form.batteries) if (nets.of(battery.positive) === net) found.add(battery);
		for (const { positive, fedBy } of form.sources) {
			if (nets.of(positive) === net && fedBy !== null) open.push(form.loads[fedBy]!.positive);
		}
	}
	return [...found];
}
