import fc from 'fast-check';
import {
	addArea,
	addCase,
	addConductor,
	addNote,
	addPart,
	addRemark,
	addUnderlay,
	answerRemark,
	AREA_SPACES,
	AWG_SIZES,
	compose,
	editArea,
	editCase,
	editConductors,
	editNote,
	editPart,
	editCustomProfile,
	editReadings,
	editSystem,
	editTitleBlock,
	editUnderlay,
	fragmentOf,
	groupItems,
	importRemarks,
	insertFragment,
	issueRevision,
	landedOn,
	lockItems,
	mountBlock,
	moveEach,
	moveFrames,
	moveParts,
	placeArea,
	reconnectConductor,
	removeCase,
	removeItems,
	removeRemark,
	reorderStack,
	reroute,
	rotateParts,
	setBends,
	setLevel,
	setParams,
	setStarting,
	studKey,
	unmountBlock,
	waiveFinding,
	withdrawWaiver,
	type Command,
	type Diagram
} from '#core/diagram';

/**
 * A plan for a command: numbers that choose among what a diagram holds when its turn comes, so that a sequence of
 * plans stays meaningful while the diagram changes and while a failing sequence is shortened.
 */
export interface Plan {
	readonly kind: keyof typeof makers;
	readonly a: number;
	readonly b: number;
	readonly c: number;
}

const pick = <T>(list: readonly T[], number: number): T | undefined => (list.length > 0 ? list[number % list.length] : undefined);
const terminals = ['pos', 'neg', 'L', 'out'];

/** Each makes a command for this diagram, or nothing where there is nothing to act on. It may still be refused. */
const makers = {
	add: (d: Diagram, a: number, b: number) => addPart({ id: `N${a}`, part: { kind: 'load', label: `N${a}`, at: { x: b * 10, y: a } } }),
	move: (d: Diagram, a: number, b: number, c: number) => some(d, a, b, (parts) => moveParts({ parts, by: { x: c, y: -b } })),
	moveEach: (d: Diagram, a: number, b: number, c: number) =>
		some(d, a, b, ([one, other]) =>
			moveEach({ moves: { [one!]: { x: c, y: b }, [other ?? one!]: c % 2 ? { x: c, y: b } : { x: -b, y: a } }, verb: 'arrange' })
		),
	rotate: (d: Diagram, a: number, b: number, c: number) => some(d, a, b, (parts) => rotateParts({ parts, quarterTurns: (c % 7) - 3 })),
	remove: (d: Diagram, a: number, b: number) => {
		const part = pick(Object.keys(d.parts), a);
		const conductor = pick(Object.keys(d.conductors), b);
		return removeItems({ parts: part && a % 3 > 0 ? [part] : [], conductors: conductor && b % 2 > 0 ? [conductor] : [] });
	},
	paste: (d: Diagram, a: number, b: number, c: number) =>
		Object.keys(d.parts).length > 40
			? undefined
			: some(d, a, b, (ids) => insertFragment({ fragment: fragmentOf(d, ids), by: { x: c, y: a } })),
	connect: (d: Diagram, a: number, b: number, c: number) => {
		const [from, to] = [pick(Object.keys(d.parts), a), pick(Object.keys(d.parts), b)];
		if (!from || !to) return undefined;
		const ends = { from: { part: from, terminal: pick(terminals, c)! }, to: { part: to, terminal: pick(terminals, a + b)! } };
		return addConductor({ id: `W${c}`, conductor: { ...ends, label: `W${b}` } });
	},
	reconnect: (d: Diagram, a: number, b: number, c: number) => {
		const [conductor, part] = [pick(Object.keys(d.conductors), a), pick(Object.keys(d.parts), b)];
		return conductor && part
			? reconnectConductor({ conductor, end: c % 2 ? 'from' : 'to', on: { part, terminal: pick(terminals, c)! } })
			: undefined;
	},
	editConductor: (d: Diagram, a: number, b: number) => {
		const conductor = pick(Object.keys(d.conductors), a);
		return conductor
			? editConductors({ conductors: [conductor], set: { gauge: { system: 'awg', size: pick(AWG_SIZES, b)! }, lengthM: b + 1 } })
			: undefined;
	},
	bend: (d: Diagram, a: number, b: number, c: number) => {
		const conductor = pick(Object.keys(d.conductors), a);
		return conductor ? setBends({ conductor, bends: b % 4 ? [{ x: b, y: c }] : null }) : undefined;
	},
	mount: (d: Diagram, a: number, b: number, c: number) => {
		const [block, part] = [pick(Object.keys(d.parts), a), pick(Object.keys(d.parts), b)];
		return block && part ? mountBlock({ block, on: { part, terminal: pick(terminals, c)! } }) : undefined;
	},
	unmount: (d: Diagram, a: number, b: number) => {
		const block = pick(Object.keys(d.mounts), a);
		return block ? unmountBlock({ block, at: { x: b, y: a } }) : undefined;
	},
	reorder: (d: Diagram, a: number, b: number) => {
		const keys = Object.values(d.conductors).flatMap(({ from, to }) => [studKey(from), studKey(to)]);
		const stud = pick(keys, a);
		return stud
			? reorderStack({ stud, stack: b % 5 ? [...landedOn(d, stud).reverse(), { kind: 'washer' }, { kind: 'nut' }] : [] })
			: undefined;
	},
	label: (d: Diagram, a: number, b: number) => some(d, a, a, ([part]) => editPart({ part: part!, set: { label: `L${b}`, note: `${a}` } })),
	params: (d: Diagram, a: number, b: number, c: number) =>
		some(d, a, a, (parts) => setParams({ parts, params: { watts: b, list: [c, null] } })),
	title: (_: Diagram, a: number) => editTitleBlock({ set: { title: `Title ${a}` } }),
	system: (_: Diagram, a: number, b: number) => editSystem({ set: { nominalV: pick([12, 24, 48] as const, a)!, outsideC: b } }),
	customProfile: (_: Diagram, a: number, b: number) => editCustomProfile({ numbers: { deviceFactor: a % 3 ? a : null, batteryM: b } }),
	case: (_: Diagram, a: number, b: number) =>
		addCase({ id: `k${a % 5}`, case: { label: `case ${a}`, order: b, duration: 'surge', loads: 1, sources: 0, levels: {} } }),
	editCase: (d: Diagram, a: number, b: number) => editCase({ case: pick(Object.keys(d.cases), a)!, set: { label: `renamed ${b}` } }),
	removeCase: (d: Diagram, a: number) => removeCase({ case: pick(Object.keys(d.cases), a)! }),
	level: (d: Diagram, a: number, b: number, c: number) => {
		const part = pick(Object.keys(d.parts), b);
		return part ? setLevel({ case: pick(Object.keys(d.cases), a)!, part, level: c % 3 ? c % 10 : null }) : undefined;
	},
	starting: (d: Diagram, a: number, b: number, c: number) => {
		const part = pick(Object.keys(d.parts), b);
		return part ? setStarting({ case: pick(Object.keys(d.cases), a)!, part, starts: c % 3 > 0 }) : undefined;
	},
	remark: (d: Diagram, a: number, b: number) => {
		const part = pick(Object.keys(d.parts), a);
		return part
			? addRemark({ id: `R${b}`, on: { kind: 'part', id: part }, text: `Look at ${part}`, by: 'A', date: '2024-05-01' })
			: undefined;
	},
	answer: (d: Diagram, a: number, b: number) => {
		const id = pick(Object.keys(d.remarks), a);
		if (!id) return addRemark({ id: `R${b}`, on: { kind: 'diagram', id: '' }, text: 'x', by: 'A', date: '2024-05-01' });
		return b % 3 === 0 ? removeRemark({ id }) : answerRemark({ id, answer: `${b}`, closed: b % 2 === 0 });
	},
	takeIn: (d: Diagram, a: number, b: number) => {
		const id = pick(Object.keys(d.remarks), a) ?? `S${b}`;
		const remark = d.remarks[id] ?? {
			on: { kind: 'diagram' as const, id: '' },
			text: 'x',
			by: 'B',
			date: '2024-05-02',
			answer: '',
			answeredBy: '',
			closed: true
		};
		return importRemarks({ remarks: { [id]: remark } });
	},
	reading: (d: Diagram, a: number, b: number, c: number) => {
		const taken = pick(Object.keys(d.readings), a);
		if (taken !== undefined && c % 3 === 0) return editReadings({ readings: { [taken]: null } });
		const part = pick(Object.keys(d.parts), b);
		if (part === undefined) return undefined;
		const [at, to] = [
			{ part, terminal: 'pos' },
			{ part, terminal: 'neg' }
		];
		const reading = { case: pick(Object.keys(d.cases), a)!, at, to, volts: c, order: b, date: '2024-05-01', by: 'A' };
		return editReadings({ readings: { [taken ?? `G${b}`]: reading } });
	},
	revision: (d: Diagram, a: number) =>
		Object.keys(d.revisions).length > 3
			? undefined
			: issueRevision({ id: `V${a}`, letter: `R${a % 10}`, date: '2024-05-01', by: 'A', why: 'B' }),
	area: (d: Diagram, a: number, b: number, c: number) => {
		const area = pick(Object.keys(d.areas), a);
		const place = { at: { x: a * 10 - 300, y: b * 8 - 200 }, widthMm: 10 + c * 20, heightMm: 10 + b * 20 };
		const like = { spaces: AREA_SPACES.filter((_, i) => (c >> i) % 2 === 1), ambientC: b % 3 ? b : null };
		if (area === undefined || (c % 5 === 0 && Object.keys(d.areas).length < 6))
			return addArea({ id: `A${a}`, area: { label: `Bay ${c}`, ...place, ...like } });
		return c % 2 ? editArea({ area, set: like }) : placeArea({ area, ...place });
	},
	note: (d: Diagram, a: number, b: number, c: number) => {
		const note = pick(Object.keys(d.notes), a);
		const part = pick(Object.keys(d.parts), b);
		const conductor = pick(Object.keys(d.conductors), b);
		const to = c % 3 === 0 ? null : c % 3 === 1 && part ? { kind: 'part' as const, id: part } : null;
		if (note === undefined || (c % 5 === 0 && Object.keys(d.notes).length < 6))
			return addNote({ id: `N${a}`, note: { text: `Look at ${c} and at what lies behind it`, at: { x: a, y: b }, widthMm: 60 + c, to } });
		return editNote({
			note,
			set: c % 2 ? { text: `${b}`, widthMm: 40 + b } : { to: conductor && c % 4 ? { kind: 'conductor', id: conductor } : to }
		});
	},
	underlay: (d: Diagram, a: number, b: number) => {
		const underlay = pick(Object.keys(d.underlays), a);
		if (underlay !== undefined) return editUnderlay({ underlay, set: { mmPerPx: 0.1 + b, opacity: 0.5 } });
		const picture =
			'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
		return addUnderlay({
			id: `U${a}`,
			underlay: { label: 'bay', picture, widthPx: 10, heightPx: 20, at: { x: a, y: b }, mmPerPx: 2, opacity: 1 }
		});
	},
	frames: (d: Diagram, a: number, b: number, c: number) => {
		const [area, note, underlay] = [pick(Object.keys(d.areas), a), pick(Object.keys(d.notes), b), pick(Object.keys(d.underlays), c)];
		if (area === undefined && note === undefined && underlay === undefined) return aNote(a, b);
		return moveFrames({ areas: list(area), notes: list(note), underlays: list(underlay), by: { x: b, y: -c } });
	},
	removeFrames: (d: Diagram, a: number, b: number) => {
		if (Object.keys(d.areas).length === 0) return aNote(a, b);
		return removeItems({
			areas: list(pick(Object.keys(d.areas), a)),
			notes: b % 2 ? list(pick(Object.keys(d.notes), b)) : [],
			underlays: a % 3 ? [] : list(pick(Object.keys(d.underlays), a))
		});
	},
	group: (d: Diagram, a: number, b: number, c: number) =>
		some(d, a, b, (parts) => groupItems({ parts, notes: list(pick(Object.keys(d.notes), c)), group: c % 3 ? `G${c % 4}` : null })),
	lock: (d: Diagram, a: number, b: number, c: number) =>
		some(d, a, b, (parts) => lockItems({ parts, conductors: list(pick(Object.keys(d.conductors), c)), locked: c % 4 === 0 })),
	reroute: (d: Diagram) => (Object.keys(d.conductors).length > 0 ? reroute({ conductors: Object.keys(d.conductors) }) : undefined),
	waive: (d: Diagram, a: number, b: number, c: number) => {
		const key = pick(Object.keys(d.waivers), a);
		if (key !== undefined && c % 2 > 0) return withdrawWaiver({ key });
		return waiveFinding({
			key: `voltage-drop:P${a % 4}`,
			reason: `reason ${b}`,
			by: 'N. N.',
			date: '2024-05-01',
			fingerprint: { severity: b % 7 ? 'error' : 'fatal', subjects: [`part:P${a % 4}`], numbers: { dropV: b } }
		});
	},
	two: (d: Diagram, a: number, b: number) =>
		compose('place and move', [
			addPart({ id: `T${a}`, part: { kind: 'load', at: { x: a, y: b } } }),
			moveParts({ parts: [`T${a}`], by: { x: 1, y: 1 } })
		])
} satisfies Record<string, (d: Diagram, a: number, b: number, c: number) => Command | undefined>;

const aNote = (a: number, b: number): Command =>
	addNote({ id: `O${a}`, note: { text: `Words ${b}`, at: { x: a, y: b }, widthMm: 100, to: null } });

const list = (id: string | undefined): string[] => (id === undefined ? [] : [id]);

function some(d: Diagram, a: number, b: number, make: (parts: string[]) => Command): Command | undefined {
	const ids = Object.keys(d.parts);
	const chosen = [...new Set([pick(ids, a), pick(ids, b)])].filter((id) => id !== undefined);
	return chosen.length > 0 ? make(chosen) : undefined;
}

/** All kinds of plan. */
export const PLAN_KINDS = Object.keys(makers) as readonly Plan['kind'][];

export const plan: fc.Arbitrary<Plan> = fc.record({
	kind: fc.constantFrom(...PLAN_KINDS),
	a: fc.nat(20),
	b: fc.nat(20),
	c: fc.nat(20)
});

export const commandOf = (diagram: Diagram, { kind, a, b, c }: Plan): Command | undefined => makers[kind](diagram, a, b, c);
