import { compose, type Diagram } from '#core/diagram';
import { isOpen, type Finding } from '#core/rules';
import { barOf } from '#core/bars';
import { judge, warningCost } from './judge.ts';
import { freePositions } from './places.ts';
import type { Plan } from './plan.ts';
import { plansFor } from './plans.ts';
import type { FullBusOptions, FullBusRequest, PlacementOption } from './request.ts';
import { shortcutsFor } from './shortcuts.ts';
import { Refused, sketchOn } from './sketch.ts';

/** More are not drawn: the list is already longer than anybody reads. */
const MOST_TRIED = 120;

/**
 * Where new circuits may land on a bus: each way is drawn on a copy and checked with all rules. First those that bring no
 * error of their own, by cost (new warnings, currents, heat, parts and work); then those that are refused, with the reason; last the short
 * cuts that are never offered. `tried` hears how far it is. Throws for a part without a bar.
 */
export function fullBusOptions(diagram: Diagram, request: FullBusRequest, tried?: (done: number, of: number) => void): FullBusOptions {
	if (!barOf(diagram, request.bus)) throw new Error(`Part "${request.bus}" is no bus.`);
	const plans = take(plansFor(diagram, request), MOST_TRIED);
	const shortcuts = [...shortcutsFor(diagram, request)];
	const of = plans.length + shortcuts.length;
	const drafts = plans.map((plan, index) => {
		tried?.(index, of);
		return drawn(diagram, request, plan);
	});
	const whereverItLands = common(drafts);
	const options = drafts.map((option) => judged(option, whereverItLands));
	options.sort((a, b) => Number(b.feasible) - Number(a.feasible) || Number(a.asks !== null) - Number(b.asks !== null) || a.cost - b.cost);

	const refused = shortcuts.map((plan, index): PlacementOption => {
		tried?.(plans.length + index, of);
		const option = judged(drawn(diagram, request, plan), whereverItLands);
		return { ...option, feasible: false, shortcut: true, reasons: [plan.why, ...option.reasons], command: null };
	});
	return { options: [...options, ...refused], whereverItLands, free: freePositions(diagram, request.bus) };
}

function take<T>(from: Iterable<T>, most: number): T[] {
	const taken: T[] = [];
	for (const item of from) {
		if (taken.length >= most) break;
		taken.push(item);
	}
	return taken;
}

function drawn(before: Diagram, request: FullBusRequest, { id, title, draw }: Plan): PlacementOption {
	const sketch = sketchOn(before);
	const frame = { id, title, shortcut: false, feasible: true, own: [], steps: sketch.steps };
	try {
		draw(sketch);
	} catch (error) {
		if (!(error instanceof Refused)) throw error;
		const nothing = { asks: null, added: [], cleared: [], buys: [], disturbed: [], notes: [], risks: [], figures: null };
		return { ...frame, ...nothing, reasons: [error.message], cost: Infinity, costs: [], command: null, sketched: null, diagram: null };
	}
	const command = compose(`land ${request.circuits.map(({ name }) => name).join(', ')}`, sketch.commands);
	return {
		...frame,
		...judge(before, sketch, request),
		asks: sketch.asks,
		reasons: [],
		buys: sketch.buys.map(({ text }) => text),
		cost: 0,
		command,
		sketched: command,
		diagram: sketch.diagram
	};
}

const isSerious = (finding: Finding): boolean => finding.severity !== 'note' && isOpen(finding);
const isError = ({ severity }: Finding): boolean => severity === 'error' || severity === 'fatal';

/** The same cause found for the same things, in whatever order they are named. */
const alike = ({ rule, severity, subjects }: Finding): string =>
	`${severity} ${rule} ${subjects
		.map(({ kind, id }) => `${kind}:${id}`)
		.sort()
		.join()}`;

/** Of all that load the bus: what keeps off it, or takes something from it, shows what the others may be spared, not what is at fault with them. */
function common(options: readonly PlacementOption[]): Finding[] {
	const [first, ...others] = options.filter(({ diagram, asks, id }) => diagram !== null && asks === null && id !== 'upstream');
	// A single option has nothing to be compared with: its errors are its own.
	if (!first || others.length === 0) return [];
	const keys = others.map(({ added }) => new Set(added.filter(isSerious).map(alike)));
	return first.added.filter((finding) => isSerious(finding) && keys.every((set) => set.has(alike(finding))));
}

/** The same cause found for no more things: a short cut lands fewer circuits. */
const isWithin = (finding: Finding, other: Finding): boolean =>
	finding.rule === other.rule &&
	finding.severity === other.severity &&
	finding.subjects.every(({ kind, id }) => other.subjects.some((subject) => subject.kind === kind && subject.id === id));

function judged(option: PlacementOption, shared: readonly Finding[]): PlacementOption {
	const own = option.added.filter((finding) => !shared.some((other) => isWithin(finding, other)));
	// What is found for more things than before is not gone.
	const cleared = option.cleared.filter((finding) => !option.added.some((other) => isWithin(finding, other)));
	const errors = own.filter((finding) => isError(finding) && isOpen(finding));
	const warnings = own.filter((finding) => finding.severity === 'warning' && isOpen(finding));
	const costs = [...warningCost(warnings.length), ...option.costs].toSorted((a, b) => b.cost - a.cost);
	return {
		...option,
		own,
		cleared,
		feasible: option.diagram !== null && errors.length === 0,
		reasons: [...option.reasons, ...errors.map(({ message }) => message)],
		costs,
		cost: option.diagram === null ? Infinity : costs.reduce((sum, { cost }) => sum + cost, 0)
	};
}
