/**
 * What a kind of part is. Each kind answers for itself (terminals, internal links, outline), so that network,
 * rules and canvas never ask "which kind is this?".
 */
import type * as z from 'zod';
import type { Param } from '#core/diagram';
import type { Box, Point, Side } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import type { FuseFamilyId, ThreadId } from '#core/tables';

export type Role = 'positive' | 'negative' | 'either' | 'chassis';

/** A place where conductors land. Positions are relative to the part's centre, before rotation. */
export interface Terminal {
	readonly id: string;
	/** As printed on the part or used in the trade: "+", "end stud L", "position 3". */
	readonly label: string;
	readonly kind: 'stud' | 'clamp';
	readonly at: Point;
	readonly side: Side;
	/** Further sides a conductor may leave by; the one that faces its other end is taken. None when left out. */
	readonly otherSides?: readonly Side[];
	/** Which pole belongs here. */
	readonly role: Role;
	/** Null for a clamp. */
	readonly thread: ThreadId | null;
	/** From seat to thread end with the nut removed; null for a clamp. */
	readonly usableLengthMm: number | null;
	/** From seat to the inside of the closed cover; null where there is no cover or it is not known. */
	readonly coverHeightMm: number | null;
	/** Widest cable that leaves under the closed cover (outside diameter); null as above. */
	readonly coverSlotMm: number | null;
	/** The maker's limit, or 4 as the general limit. */
	readonly maxTerminals: number;
	readonly ratedA: number | null;
	/** On a fuse block's own post: the fuse link that sits in this stack. Lugs below it by-pass it. */
	readonly fuseInStack?: string;
	/** True for the underside plate of a fuse block: it lands on another part's stud and takes no lug. */
	readonly mountingPlate?: boolean;
	/** True where a fuse block may be mounted. Default true for studs. */
	readonly acceptsBlock?: boolean;
	/** What is printed on the part beside it, and where; nothing when left out. */
	readonly print?: { readonly text: string; readonly at: Point };
}

/** Ends of internal links are terminal ids, or internal nodes written "@name". */
export type LinkEnd = string;

export interface ProtectiveDevice {
	readonly kind: 'fuse' | 'breaker';
	readonly ratingA: number;
	readonly family: FuseFamilyId | null;
	/** Greatest system voltage it may be used on; null: as its family, or not known where there is no family. */
	readonly ratedV: number | null;
	/** Breaking capacity at the system voltage; null: as its family, or not known where there is no family. */
	readonly breakingA: number | null;
	/** True for a breaker made for current from its first end to its second only. Left out: either way. */
	readonly polarised?: boolean;
	/** True for a breaker that closes again by itself. Left out: by hand. */
	readonly resetsItself?: boolean;
}

interface PassiveLink {
	readonly id: string;
	readonly between: readonly [LinkEnd, LinkEnd];
	readonly resistanceOhm: number;
	readonly ratedA: number | null;
}

export type Link =
	| (PassiveLink & { readonly kind: 'segment' })
	| (PassiveLink & { readonly kind: 'shunt' })
	| (PassiveLink & { readonly kind: 'switch' })
	| (PassiveLink & { readonly kind: 'protective'; readonly device: ProtectiveDevice })
	| {
			readonly kind: 'battery';
			readonly id: string;
			readonly positive: LinkEnd;
			readonly negative: LinkEnd;
			/** Open-circuit voltage in use, and resistance in use. */
			readonly emfV: number;
			readonly resistanceOhm: number;
			/** Open-circuit voltage and resistance into a dead short. */
			readonly faultEmfV: number;
			readonly faultResistanceOhm: number;
			readonly capacityAh: number;
			readonly continuousA: number | null;
			/** Open-circuit voltage when nearly empty. Left out: as `emfV`. */
			readonly lowEmfV?: number;
			/** Voltage that capacity is turned into energy with, as printed on it. Left out: `emfV`. */
			readonly ratedV?: number;
			/** Share of the capacity that may be used each day. Left out: all of it. */
			readonly usableShare?: number;
			/** True for one kept to start an engine: its energy is not for other loads. */
			readonly keptForEngine?: boolean;
	  }
	| {
			/** Charger, controller or converter output: pushes up to `maxA` until its terminals reach `setV`; never sinks. */
			readonly kind: 'source';
			readonly id: string;
			readonly positive: LinkEnd;
			readonly negative: LinkEnd;
			readonly maxA: number;
			readonly setV: number;
			/** Link id of the load that feeds it (a converter's input), or null when fed from outside the drawing. */
			readonly fedBy: string | null;
			readonly efficiency: number;
			/** False when its output can pass current back from the battery into a fault on the input side. */
			readonly blocksReverse: boolean;
			/** True for supplies whose output is a rail of its own (counts as a source in every case). */
			readonly alwaysOn: boolean;
			/** False when a fault can draw more than `maxA` from it. Left out: true. */
			readonly selfLimiting?: boolean;
			/** What it brings in a day. Left out: nothing is counted. */
			readonly daily?: DailyYield;
	  }
	| {
			readonly kind: 'load';
			readonly id: string;
			readonly positive: LinkEnd;
			readonly negative: LinkEnd;
			/** Rated draw: at constant power, constant current, or as a resistance. */
			readonly draw:
				| { readonly kind: 'power'; readonly watts: number }
				| { readonly kind: 'current'; readonly amps: number }
				| { readonly kind: 'resistance'; readonly ohms: number };
			/** Share of the time a converter input draws what its output delivers; set for inputs of converters. */
			readonly followsSource: string | null;
			readonly reversible: boolean;
			/** Circuits that need the tight voltage-drop limit (navigation lights, bilge pump, panel feeders …). */
			readonly critical: boolean;
			/** What it draws while it starts, as a multiple of its rated draw, and for how long. Left out: no more than rated. */
			readonly starting?: { readonly times: number; readonly seconds: number | null };
			/** At its rated draw; null: not given. Left out: nobody would give it (a converter's input, a starter motor). */
			readonly hoursPerDay?: number | null;
			/** Share of those hours that it draws. Left out: all of them. */
			readonly dutyShare?: number;
	  };

/** What a source brings in a day: hours at its rated output, or sun on an array. Null: not given. */
export type DailyYield =
	| { readonly kind: 'hours'; readonly hours: number | null }
	| { readonly kind: 'sun'; readonly peakW: number | null; readonly sunHours: number | null; readonly yieldShare: number };

export type PartGroup = 'sources' | 'charging' | 'protection' | 'distribution' | 'loads' | 'own';

/** Symbols for what links do not tell: which machine, which converter, which contact. Drawn by core/symbols. */
export type SymbolName = 'generator' | 'motor' | 'rectifier' | 'inverter' | 'dc-converter' | 'solar' | 'relay' | 'disconnector';

export interface PartDefinition<Params extends z.ZodObject = z.ZodObject> {
	readonly kind: string;
	/** Trade name, for the shelf. */
	readonly name: string;
	/** One sentence for a newcomer: what it does and where it belongs. */
	readonly help: string;
	readonly group: PartGroup;
	/** IEC 81346-2 class letter for new designations. */
	readonly letter: string;
	/** Schema, defaults and inspector form at once: each field carries `.meta({ title, unit? })`. */
	readonly params: Params;
	terminals(params: z.output<Params>): readonly Terminal[];
	links(params: z.output<Params>): readonly Link[];
	/** Outline at full size around (0, 0), before rotation; studs are drawn by the drawing, not here. */
	outline(params: z.output<Params>): readonly Primitive[];
	/** The body's box around (0, 0), before rotation. */
	box(params: z.output<Params>): Box;
	/**
	 * Free area of the outline for designation and ratings, before rotation. Left out where the body has no room:
	 * they are then written beside it, as where it is null.
	 */
	nameplate?(params: z.output<Params>): Box | null;
	/**
	 * What else changes when one parameter takes another value, so that the part stays what it is: a draw given in
	 * watts becomes one in amps. `nominalV` is the system's voltage. Left out: nothing.
	 */
	alongWith?(change: Readonly<Record<string, unknown>>, params: z.output<Params>, nominalV: number): Readonly<Record<string, Param>>;
	/** Its symbol, where that does not follow from its links. Left out: each link has the symbol of its kind. */
	readonly symbol?: SymbolName;
	/** Ratings in a line, for lists and the drawing: "12.8 V 200 Ah". */
	summary(params: z.output<Params>): string;
	/** What this one is called and designated with, where parts of the kind differ in that. Left out: `name` and `letter`. */
	called?(params: z.output<Params>): { readonly name: string; readonly letter: string };
	/** What about the parameters together cannot be, a sentence each; what is wrong is left out of the part. Left out: nothing. */
	faults?(params: z.output<Params>): readonly string[];
	/** For a fuse block or adapter, which may be mounted on another part's stud by its plate. */
	readonly mounts?: Mounting<z.output<Params>>;
}

export interface Mounting<Params> {
	/** What it is called in a stack: "fuse block". */
	readonly noun: string;
	/** Height of what lies on the host's stud, mm. */
	plateMm(params: Params): number;
}

/** Gives a definition its types; the parameters of the functions follow from `params`. */
export const definePart = <Params extends z.ZodObject>(definition: PartDefinition<Params>): PartDefinition<Params> => definition;
