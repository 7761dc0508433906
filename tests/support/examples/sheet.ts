import {
	AWG_SIZES,
	DiagramSchema,
	emptyDiagram,
	newConductor,
	studKey,
	terminalRef,
	type Conductor,
	type Diagram,
	type Gauge,
	type OperatingCase,
	type Param,
	type Part,
	type StackItem,
	type TitleBlock
} from '#core/diagram';
import { describe } from '#core/parts';

type Params = Record<string, Param>;
type Fields = Partial<Omit<Conductor, 'from' | 'to' | 'gauge' | 'lengthM' | 'bends'>> & { bends?: [number, number][] };

interface Settings {
	readonly title: Partial<TitleBlock>;
	readonly nominalV: Diagram['system']['nominalV'];
	readonly craft: Diagram['system']['craft'];
	readonly negative: Diagram['system']['negative'];
	readonly profile: string;
	readonly ambient?: Diagram['ambient'];
}

/** A drawing being made: each call adds one thing, and a name that does not exist is a mistake that throws. */
export function sheet({ title, nominalV, craft, negative, profile, ambient }: Settings) {
	const empty = emptyDiagram();
	const diagram: Diagram = {
		...empty,
		titleBlock: { ...empty.titleBlock, documentType: 'Wiring diagram', ...title },
		system: { nominalV, craft, negative },
		profile,
		ambient: ambient ?? empty.ambient,
		cases: {}
	};

	const refuseUnknown = (key: string) => {
		const { part, terminal } = terminalRef(key);
		if (!diagram.parts[part]) throw new Error(`There is no part "${part}".`);
		const { terminals } = describe(diagram.parts[part]);
		if (!terminals.some(({ id }) => id === terminal))
			throw new Error(`${part} has no terminal "${terminal}"; it has ${terminals.map(({ id }) => id).join(', ')}.`);
	};

	const self = {
		/** A part by the middle of its body, turned clockwise. Its label is its id unless given. */
		part(
			id: string,
			kind: string,
			at: readonly [number, number],
			params: Params = {},
			rest: { turn?: Part['rotation']; label?: string; note?: string } = {}
		) {
			if (diagram.parts[id]) throw new Error(`There are two parts "${id}".`);
			const { turn = 0, label = id, note = '' } = rest;
			const part: Part = { kind, label, at: { x: at[0], y: at[1] }, rotation: turn, params, note };
			const { definition, problems } = describe(part);
			if (!definition || problems.length > 0) throw new Error(`${id}: ${problems.join(' ')}`);
			diagram.parts[id] = part;
			return self;
		},

		/** A conductor between two studs; "2/0" is an AWG size, "16 mm²" a metric one. Its label is its id unless given. */
		wire(id: string, from: string, to: string, gauge: string, lengthM: number, fields: Fields = {}) {
			if (diagram.conductors[id]) throw new Error(`There are two conductors "${id}".`);
			[from, to].forEach(refuseUnknown);
			const { bends, ...rest } = fields;
			diagram.conductors[id] = {
				...newConductor(terminalRef(from), terminalRef(to)),
				label: id.replace(/p$/, '+').replace(/n$/, '−'),
				gauge: gaugeOf(gauge),
				lengthM,
				bends: bends?.map(([x, y]) => ({ x, y })) ?? null,
				...rest
			};
			return self;
		},

		/** Both conductors of a circuit: "C1" makes C1+ and C1−. */
		pair(
			id: string,
			plus: readonly [string, string],
			minus: readonly [string, string],
			gauge: string,
			lengthM: number,
			fields: Fields = {}
		) {
			return self.wire(`${id}p`, ...plus, gauge, lengthM, fields).wire(`${id}n`, ...minus, gauge, lengthM, fields);
		},

		mount(block: string, on: string) {
			refuseUnknown(on);
			diagram.mounts[block] = terminalRef(on);
			return self;
		},

		/** What sits on a stud from the seat upward: a conductor's or block's id, "fuse", "washer", "lock-washer" or "nut". */
		stack(key: string, ...items: string[]) {
			diagram.stacks[key] = items.map((item) => stackItem(diagram, key, item));
			return self;
		},

		case(id: string, label: string, rest: Partial<OperatingCase> = {}) {
			const order = Object.keys(diagram.cases).length + 1;
			diagram.cases[id] = { label, order, duration: 'continuous', loads: 1, sources: 0, levels: {}, ...rest };
			return self;
		},

		done: (): Diagram => DiagramSchema.parse(diagram)
	};
	return self;
}

export type Sheet = ReturnType<typeof sheet>;

function gaugeOf(text: string): Gauge {
	if ((AWG_SIZES as readonly string[]).includes(text)) return { system: 'awg', size: text } as Gauge;
	return { system: 'iec', size: text.replace(' mm²', '') } as Gauge;
}

function stackItem({ conductors, mounts }: Diagram, key: string, item: string): StackItem {
	if (item === 'fuse' || item === 'washer' || item === 'lock-washer' || item === 'nut') return { kind: item };
	const host = mounts[item];
	if (host && studKey(host) === key) return { kind: 'block', block: item };
	const conductor = conductors[item];
	const end = conductor && (['from', 'to'] as const).find((side) => studKey(conductor[side]) === key);
	if (!end) throw new Error(`"${item}" does not land on ${key}.`);
	return { kind: 'lug', conductor: item, end };
}
