/**
 * Random diagrams that pass the schema and nothing else: parts joined at random, ends in the air, mounts in
 * circles, stacks of things that are not there, parameters of the wrong type.
 */
import fc from 'fast-check';
import {
	AWG_SIZES,
	COLOURS,
	DiagramSchema,
	type Conductor,
	type Diagram,
	type Part,
	type StackItem,
	type TerminalRef
} from '#core/diagram';
import { describe, partDefinitions } from '#core/parts';
import { circuit } from './circuit.ts';

const KINDS = [...partDefinitions.map(({ kind }) => kind), 'fuel-cell', 'constructor'];

const PART_IDS = ['a', 'b', 'c', 'd', 'e', 'g', 'h_2', 'f-1'];

const param = fc.oneof(
	fc.double({ noNaN: true, noDefaultInfinity: true, min: -10, max: 1e6 }),
	fc.constantFrom('power', 'studs', 'M8', ''),
	fc.boolean(),
	fc.constant(null),
	fc.array(fc.constantFrom(10, 40, 100, null), { maxLength: 4 })
);

const part = fc.constantFrom(...KINDS).chain((kind) => {
	const names = Object.keys(partDefinitions.find((definition) => definition.kind === kind)?.params.shape ?? { any: 0 });
	return fc.record({
		kind: fc.constant(kind),
		label: fc.constantFrom('', ' ', 'F1', 'f1', 'B1', 'L', 'Ω "quoted"'),
		at: fc.constant({ x: 0, y: 0 }),
		rotation: fc.constantFrom(0 as const, 90 as const),
		params: fc.dictionary(fc.constantFrom(...names), param, { maxKeys: 2 }),
		note: fc.constant('')
	});
});

const parts = fc
	.uniqueArray(fc.tuple(fc.constantFrom(...PART_IDS), part), { selector: ([id]) => id, maxLength: PART_IDS.length })
	.map((entries): Record<string, Part> => Object.fromEntries(entries));

/** Mostly a terminal that exists. */
function terminal(of: Record<string, Part>): fc.Arbitrary<TerminalRef> {
	const real = Object.entries(of).flatMap(([id, value]) => describe(value).terminals.map((t) => ({ part: id, terminal: t.id })));
	const unreal = fc.record({ part: fc.constantFrom(...PART_IDS, 'gone'), terminal: fc.constantFrom('pos', 'nowhere') });
	return real.length === 0 ? unreal : fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...real) }, { weight: 1, arbitrary: unreal });
}

const conductor = (of: Record<string, Part>): fc.Arbitrary<Conductor> =>
	fc.record({
		label: fc.constantFrom('', 'C1', 'c1', 'C2'),
		from: terminal(of),
		to: terminal(of),
		gauge: fc.constantFrom(...AWG_SIZES).map((size) => ({ system: 'awg' as const, size })),
		lengthM: fc.oneof(fc.constant(null), fc.double({ min: 0.01, max: 100, noNaN: true })),
		insulationC: fc.constantFrom(60 as const, 105 as const),
		environment: fc.constantFrom('outside' as const, 'engine-space' as const),
		bundleCount: fc.constantFrom(1, 3, 30),
		sheathed: fc.boolean(),
		colour: fc.constantFrom(...COLOURS),
		use: fc.constantFrom('ordinary' as const, 'cranking' as const, 'spare' as const),
		bends: fc.constant(null)
	});

const stackItem: fc.Arbitrary<StackItem> = fc.oneof(
	fc.record({
		kind: fc.constant('lug' as const),
		conductor: fc.constantFrom('W0', 'W1', 'W2', 'gone'),
		end: fc.constantFrom('from' as const, 'to' as const)
	}),
	fc.record({ kind: fc.constant('block' as const), block: fc.constantFrom('a', 'b', 'gone') }),
	fc.constantFrom<StackItem>({ kind: 'fuse' }, { kind: 'washer' }, { kind: 'lock-washer' }, { kind: 'nut' })
);

const operatingCase = fc.record({
	label: fc.constantFrom('', 'Night'),
	order: fc.integer({ min: 0, max: 3 }),
	duration: fc.constantFrom('continuous' as const, 'surge' as const),
	loads: fc.constantFrom(0, 0.5, 1, 10),
	sources: fc.constantFrom(0, 1),
	levels: fc.dictionary(fc.constantFrom(...PART_IDS), fc.constantFrom(0, 1, 10), { maxKeys: 3 })
});

export const randomDiagram: fc.Arbitrary<Diagram> = parts.chain((of) =>
	fc
		.record({
			conductors: fc.array(conductor(of), { maxLength: 14 }),
			mounts: fc.dictionary(fc.constantFrom(...PART_IDS), terminal(of), { maxKeys: 3 }),
			stacks: fc.uniqueArray(fc.tuple(terminal(of), fc.array(stackItem, { maxLength: 5 })), {
				selector: ([{ part, terminal }]) => `${part}.${terminal}`,
				maxLength: 3
			}),
			cases: fc.dictionary(fc.constantFrom('night', 'day'), operatingCase, { maxKeys: 2 }),
			profile: fc.constantFrom('common-practice', 'us-small-craft', 'moon-law'),
			nominalV: fc.constantFrom(12 as const, 24 as const, 48 as const),
			colourScheme: fc.constantFrom('abyc' as const, 'iec-60446' as const, 'iec-60445' as const)
		})
		.map(({ conductors, mounts, stacks, cases, profile, nominalV, colourScheme }) => {
			const frame = circuit({}, [], { profile, nominalV, colourScheme });
			return DiagramSchema.parse({
				...frame,
				parts: of,
				conductors: Object.fromEntries(conductors.map((value, index) => [`W${index}`, value])),
				mounts,
				stacks: Object.fromEntries(stacks.map(([{ part, terminal }, items]) => [`${part}.${terminal}`, items])),
				cases
			});
		})
);
