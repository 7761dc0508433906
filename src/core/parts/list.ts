import type { Param } from '#core/diagram';
import type { PartDefinition } from './define.ts';
import { adapterPost } from './kinds/adapter-post.ts';
import { alternator } from './kinds/alternator.ts';
import { batteryDisconnect } from './kinds/battery-disconnect.ts';
import { battery } from './kinds/battery.ts';
import { bladePanel } from './kinds/blade-panel.ts';
import { chassisPoint } from './kinds/chassis-point.ts';
import { circuitBreaker } from './kinds/circuit-breaker.ts';
import { combinerRelay } from './kinds/combiner-relay.ts';
import { dcdcCharger } from './kinds/dcdc-charger.ts';
import { dcdcConverter } from './kinds/dcdc-converter.ts';
import { fuseBlock } from './kinds/fuse-block.ts';
import { fusedBus } from './kinds/fused-bus.ts';
import { inlineFuse } from './kinds/inline-fuse.ts';
import { inverter } from './kinds/inverter.ts';
import { linkPost } from './kinds/link-post.ts';
import { load } from './kinds/load.ts';
import { mainsCharger } from './kinds/mains-charger.ts';
import { negativeBus } from './kinds/negative-bus.ts';
import { ownPart } from './kinds/own-part.ts';
import { positiveBus } from './kinds/positive-bus.ts';
import { shunt } from './kinds/shunt.ts';
import { solarController } from './kinds/solar-controller.ts';
import { starterMotor } from './kinds/starter-motor.ts';
import { twinFuseBlock } from './kinds/twin-fuse-block.ts';

/** Every kind of part, in the order of the shelf. */
export const partDefinitions: readonly PartDefinition[] = [
	battery,
	alternator,
	dcdcCharger,
	mainsCharger,
	solarController,
	combinerRelay,
	fuseBlock,
	twinFuseBlock,
	inlineFuse,
	circuitBreaker,
	batteryDisconnect,
	fusedBus,
	positiveBus,
	negativeBus,
	bladePanel,
	shunt,
	linkPost,
	adapterPost,
	dcdcConverter,
	chassisPoint,
	load,
	inverter,
	starterMotor,
	ownPart
];

const byKind = new Map(partDefinitions.map((definition) => [definition.kind, definition]));

/** Null for a kind this build does not know, for example from a newer file. */
export const definitionOf = (kind: string): PartDefinition | null => byKind.get(kind) ?? null;

/** Parameters of a new part of this kind, all at their defaults. A kind that does not exist throws. */
export function newParams(kind: string): Record<string, Param> {
	const definition = definitionOf(kind);
	if (!definition) throw new RangeError(`There is no part of kind "${kind}".`);
	return definition.params.parse({}) as Record<string, Param>;
}
