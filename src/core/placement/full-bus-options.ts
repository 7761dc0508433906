import { compose, type Diagram } from '#core/diagram';
import { isOpen, type Finding } from '#core/rules';
import { barOf } from './bar.ts';
import { judge } from './judge.ts';
import { plansFor, type Plan } from './plans.ts';
import type { FullBusOptions, FullBusRequest, PlacementOption } from './request.ts';
import { shortcutsFor } from './shortcuts.ts';
import { Refused, sketchOn } from './sketch.ts';

/** More are not drawn: the list is already longer than anybody reads. */
const MOST_TRIED = 60;

/**
 * Where new circuits may land on a bus: each way is drawn on a copy and checked with all rules. First those that bring no
 * error of their own, by cost (new warnings, currents, heat, parts and work); then those that are refused, with the reason; last the short
 * cuts that are never offered. Throws for a part without a bar.
 */
export function fullBusOptions(diagram: Diagram, request: FullBusRequest): FullBusOptions {
	if (!barOf(diagram, request.bus)) throw new Error(`Part "${request.bus}" is no bus.`);
	const drafts: PlacementOption[] = [];
	for (const plan of plansFor(diagram, request)) {
		if (drafts.length >= MOST_TRIED) break;
		drafts.push(drawn(diagram, request, plan));
	}
	const whereverItLands = common(drafts);
	const shared = new Set(whereverItLands.map(({ key }) => key));
	const options = drafts.map((option) => judged(option, shared));
	options.sort((a, b) => Number(b.feasible) - Number(a.feasible) || a.cost - b.cost);

	const shortcuts = [...shortcutsFor(diagram, request)].map((plan): PlacementOption => {
		const option = judged(drawn(diagram, request, plan), shared);
		return { ...option, feasible: false, shortcut: true, reasons: [plan.why, ...option.reasons], command: null };
	});
	return { options: [...options, ...shortcuts], whereverItLands };
}

function drawn(before: Diagram, request: FullBusRequest, { id, title, draw }: Plan): PlacementOption {
	const sketch = sketchOn(before);
	const frame = { id, title, feasible: true, shortcut: false, buys: sketch.buys, disturbed: sketch.disturbed };
	try {
		draw(sketch);
	} catch (error) {
		if (!(error instanceof Refused)) throw error;
		const nothing = { added: [], cleared: [], notes: [], figures: null, command: null, diagram: null };
		return { ...frame, ...nothing, reasons: [error.message], cost: Infinity };
	}
	return {
		...frame,
		...judge(before, sketch, request),
		reasons: [],
		command: compose(`land ${request.circuits.map(({ name }) => name).join(', ')}`, sketch.commands),
		diagram: sketch.diagram
	};
}

const errorsOf = ({ added }: PlacementOption): Finding[] =>
	added.filter((finding) => (finding.severity === 'error' || finding.severity === 'fatal') && isOpen(finding));

function common(options: readonly PlacementOption[]): Finding[] {
	const [first, ...others] = options.filter(({ diagram }) => diagram !== null);
	// A single option has nothing to be compared with: its errors are its own.
	if (!first || others.length === 0) return [];
	const keys = others.map((option) => new Set(errorsOf(option).map(({ key }) => key)));
	return errorsOf(first).filter(({ key }) => keys.every((set) => set.has(key)));
}

function judged(option: PlacementOption, shared: ReadonlySet<string>): PlacementOption {
	const own = errorsOf(option).filter(({ key }) => !shared.has(key));
	return {
		...option,
		feasible: option.diagram !== null && own.length === 0,
		reasons: [...option.reasons, ...own.map(({ message }) => message)]
	};
}
