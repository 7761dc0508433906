/**
 * Builds a schema-valid diagram in one expression, so that a test shows what matters and nothing else:
 *
 *     circuit(
 *     	{ b: ['battery', { capacityAh: 100 }], f: ['inline-fuse', { fuseA: 40 }], l: ['load', { draw: 5 }] },
 *     	[
 *     		['b.pos', 'f.in', { gauge: '6', lengthM: 0.1 }],
 *     		['f.out', 'l.pos'],
 *     		['l.neg', 'b.neg']
 *     	]
 *     );
 *
 * Parts are laid out in a row; conductors are called W1, W2 … in the order given.
 */
import {
	AWG_SIZES,
	DiagramSchema,
	FORMAT,
	VERSION,
	terminalRef,
	type Conductor,
	type Diagram,
	type Gauge,
	type OperatingCase,
	type Param,
	type Part,
	type StackItem
} from '#core/diagram';
import { describe } from '#core/parts';

type PartSpec = readonly [kind: string, params?: Record<string, Param>, rest?: Partial<Omit<Part, 'kind' | 'params'>>];

type ConductorSpec = readonly [
	from: string,
	to: string,
	rest?: Partial<Omit<Conductor, 'from' | 'to' | 'gauge'>> & {
		/** Its id; W1, W2 … when not given. */
		id?: string;
		/** "2/0" is AWG, "16 mm²" is metric. 6 AWG when not given. */
		gauge?: string;
	}
];

export interface CircuitOptions {
	nominalV?: Diagram['system']['nominalV'];
	craft?: Diagram['system']['craft'];
	negative?: Diagram['system']['negative'];
	profile?: string;
	colourScheme?: Diagram['colourScheme'];
	ambient?: Diagram['ambient'];
	/** By case id; one continuous case with everything on when not given. */
	cases?: Record<string, Partial<OperatingCase>>;
	/** Block id → the stud it is mounted on. */
	mounts?: Record<string, string>;
	/** Stud → what sits on it from the seat up: "W1" a lug, "block F1", "fuse", "washer", "lock-washer", "nut". */
	stacks?: Record<string, readonly string[]>;
}

export function circuit(parts: Record<string, PartSpec>, conductors: readonly ConductorSpec[] = [], options: CircuitOptions = {}): Diagram {
	const conductorRecord: Record<string, Conductor> = {};
	conductors.forEach(([from, to, { id, gauge, ...rest } = {}], index) => {
		const key = id ?? `W${index + 1}`;
		if (conductorRecord[key]) throw new Error(`Two conductors are called "${key}".`);
		conductorRecord[key] = {
			label: key,
			from: terminalRef(from),
			to: terminalRef(to),
			gauge: gaugeOf(gauge ?? '6'),
			lengthM: 1,
			insulationC: 105,
			environment: 'outside',
			bundleCount: 1,
			sheathed: false,
			colour: 'auto',
			use: 'ordinary',
			bends: null,
			...rest
		};
	});

	const diagram = DiagramSchema.parse({
		format: FORMAT,
		version: VERSION,
		titleBlock: {
			title: 'Test circuit',
			supplementaryTitle: '',
			legalOwner: '',
			identificationNumber: '',
			craft: '',
			revisionIndex: '',
			dateOfIssue: '',
			documentType: '',
			creator: '',
			approvalPerson: ''
		},
		system: { nominalV: options.nominalV ?? 12, craft: options.craft ?? 'vehicle', negative: options.negative ?? 'insulated' },
		profile: options.profile ?? 'common-practice',
		colourScheme: options.colourScheme ?? 'abyc',
		ambient: options.ambient ?? { outsideC: 30, engineSpaceC: 50 },
		cases: casesOf(options.cases ?? { on: {} }),
		parts: Object.fromEntries(
			Object.entries(parts).map(([id, [kind, params = {}, rest = {}]], index) => [
				id,
				{ kind, label: id.toUpperCase(), at: { x: index * 400, y: 0 }, rotation: 0, params, note: '', ...rest }
			])
		),
		conductors: conductorRecord,
		mounts: Object.fromEntries(Object.entries(options.mounts ?? {}).map(([block, stud]) => [block, terminalRef(stud)])),
		stacks: Object.fromEntries(
			Object.entries(options.stacks ?? {}).map(([key, items]) => [key, items.map((item) => stackItem(item, key, conductorRecord))])
		)
	});
	refuseMistakes(diagram);
	return diagram;
}

/** A misspelt parameter or terminal would silently test something else. */
function refuseMistakes({ parts, conductors, mounts }: Diagram): void {
	for (const [id, part] of Object.entries(parts)) {
		const { definition, problems } = describe(part);
		if (definition && problems.length > 0) throw new Error(`${id}: ${problems.join(' ')}`);
	}
	for (const { part, terminal } of [...Object.values(conductors).flatMap(({ from, to }) => [from, to]), ...Object.values(mounts)]) {
		const description = parts[part] && describe(parts[part]);
		if (description?.definition && !description.terminal(terminal)) {
			throw new Error(`${part} has no terminal "${terminal}"; it has ${description.terminals.map(({ id }) => id).join(', ')}.`);
		}
	}
}

function casesOf(cases: Record<string, Partial<OperatingCase>>): Record<string, OperatingCase> {
	return Object.fromEntries(
		Object.entries(cases).map(([id, rest], order) => [
			id,
			{ label: id, order, duration: 'continuous' as const, loads: 1, sources: 0, levels: {}, ...rest }
		])
	);
}

function gaugeOf(text: string): Gauge {
	const metric = /^([\d.]+) mm²$/.exec(text);
	if (metric) return { system: 'iec', size: metric[1] } as Gauge;
	if ((AWG_SIZES as readonly string[]).includes(text)) return { system: 'awg', size: text } as Gauge;
	throw new Error(`"${text}" is neither an AWG size nor "… mm²".`);
}

function stackItem(text: string, key: string, conductors: Record<string, Conductor>): StackItem {
	if (text === 'washer' || text === 'lock-washer' || text === 'nut' || text === 'fuse') return { kind: text };
	if (text.startsWith('block ')) return { kind: 'block', block: text.slice('block '.length) };
	const conductor = conductors[text];
	if (!conductor) throw new Error(`"${text}" in the stack of ${key} is no conductor, "block …", washer, lock-washer, nut or fuse.`);
	const stud = terminalRef(key);
	const isFrom = conductor.from.part === stud.part && conductor.from.terminal === stud.terminal;
	return { kind: 'lug', conductor: text, end: isFrom ? 'from' : 'to' };
}
