/** What fuses and breakers are made for, and how they are named together. */
import type { Wire } from '#core/network';
import type { ProtectiveDevice } from '#core/parts';
import { breakingCapacityA, fuseFamily, type Sourced } from '#core/tables';
import { deviceName } from './conductor-words.ts';
import { groupBy } from './group-by.ts';
import type { Study } from './study.ts';
import { derived } from './watch.ts';
import { listed, partName } from './words.ts';

export interface DeviceBranch extends Wire {
	readonly device: ProtectiveDevice;
	readonly origin: Extract<Wire['origin'], { kind: 'link' }>;
}

/** In the network's order. */
export const devicesOf = derived(({ form }): readonly DeviceBranch[] =>
	form.branches.filter((branch): branch is DeviceBranch => branch.device !== null && branch.origin.kind === 'link')
);

const GIVEN = 'the value given for the part';

/** Greatest system voltage; null where neither the part nor a family tells. */
export function ratedVolts({ ratedV, family }: ProtectiveDevice): Sourced<number> | null {
	if (ratedV !== null) return { value: ratedV, source: GIVEN, confidence: 'verified' };
	return family === null ? null : fuseFamily(family).maxSystemV;
}

/** Greatest current it interrupts at a voltage, amps; null where that is not known, or the voltage is too high for it. */
export function breakingAmps({ breakingA, family }: ProtectiveDevice, volts: number): Sourced<number> | null {
	if (breakingA !== null) return { value: breakingA, source: GIVEN, confidence: 'verified' };
	if (family === null) return null;
	const found = breakingCapacityA(family, volts);
	return found.value > 0 ? found : null;
}

/** Values from memory or habit are shown as unverified. */
export const isUnverified = ({ confidence }: Sourced<unknown>): boolean => confidence === 'memory' || confidence === 'common-practice';

/** "strip fuse SF51", "breaker". */
export const deviceKind = ({ kind, family }: ProtectiveDevice): string => (family === null ? kind : fuseFamily(family).name);

const POSITION = /^(.*) position (\d+)$/;

/** "D1 position 1 and F5 post a"; several positions of one part are listed behind it: "D1 positions 1, 2, 4". */
export const deviceNames = (study: Study, devices: readonly DeviceBranch[]): string =>
	listed(
		[...groupBy(devices, ({ origin }) => origin.part)].flatMap(([part, alike]) => {
			const names = alike.map(({ origin }) => deviceName(study, origin));
			const positions = names.flatMap((name) => POSITION.exec(name)?.[2] ?? []);
			return names.length > 1 && positions.length === names.length
				? [`${partName(study.part(part))} positions ${positions.join(', ')}`]
				: names;
		})
	);
