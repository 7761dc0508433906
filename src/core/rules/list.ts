/**
 * Every rule, in the order of evaluation and of the list the user sees: topology before what depends on it.
 * A test compares this list with the folder and with the tests.
 */
import { autoResetBreaker } from './auto-reset-breaker.ts';
import { blockMisuse } from './block-misuse.ts';
import { breakerPolarity } from './breaker-polarity.ts';
import { busOverloaded } from './bus-overloaded.ts';
import { colourFault } from './colour-fault.ts';
import { coverClearance } from './cover-clearance.ts';
import { danglingConductor } from './dangling-conductor.ts';
import { deadEndedLiveConductor } from './dead-ended-live-conductor.ts';
import type { Rule } from './define.ts';
import { deviceOverloaded } from './device-overloaded.ts';
import { duplicateLabel } from './duplicate-label.ts';
import { fuseBelowLoad } from './fuse-below-load.ts';
import { fuseInNegative } from './fuse-in-negative.ts';
import { fuseValueNotStandard } from './fuse-value-not-standard.ts';
import { fuseVoltageRating } from './fuse-voltage-rating.ts';
import { halfConnectedCharger } from './half-connected-charger.ts';
import { interruptCapacity } from './interrupt-capacity.ts';
import { lugUnderFuse } from './lug-under-fuse.ts';
import { missingLabel } from './missing-label.ts';
import { missingLength } from './missing-length.ts';
import { noFastClearing } from './no-fast-clearing.ts';
import { noReturn } from './no-return.ts';
import { notFed } from './not-fed.ts';
import { oversizedProtection } from './oversized-protection.ts';
import { protectionTooFar } from './protection-too-far.ts';
import { reversedBattery } from './reversed-battery.ts';
import { reversedPolarity } from './reversed-polarity.ts';
import { selectivityLost } from './selectivity-lost.ts';
import { shuntBypassed } from './shunt-bypassed.ts';
import { stackOrder } from './stack-order.ts';
import { studCrowded } from './stud-crowded.ts';
import { studTooShort } from './stud-too-short.ts';
import { twoSourceConductor } from './two-source-conductor.ts';
import { unconnectedPart } from './unconnected-part.ts';
import { undersizedConductor } from './undersized-conductor.ts';
import { undersizedReturn } from './undersized-return.ts';
import { unequalVoltageParallel } from './unequal-voltage-parallel.ts';
import { unknownPartKind } from './unknown-part-kind.ts';
import { unprotectedConductor } from './unprotected-conductor.ts';
import { unusableValue } from './unusable-value.ts';
import { voltageCollapse } from './voltage-collapse.ts';
import { voltageDrop } from './voltage-drop.ts';
import { washerInCurrentPath } from './washer-in-current-path.ts';
import { wireAcrossPoles } from './wire-across-poles.ts';

export const RULES: readonly Rule[] = [
	// Topology: what joins what.
	wireAcrossPoles,
	reversedBattery,
	unequalVoltageParallel,
	danglingConductor,
	unknownPartKind,
	reversedPolarity,
	noReturn,
	notFed,
	halfConnectedCharger,
	shuntBypassed,
	deadEndedLiveConductor,
	unconnectedPart,

	// Protection.
	unprotectedConductor,
	protectionTooFar,
	twoSourceConductor,
	oversizedProtection,
	undersizedReturn,
	fuseBelowLoad,
	fuseInNegative,
	fuseVoltageRating,
	interruptCapacity,
	noFastClearing,
	selectivityLost,
	breakerPolarity,
	autoResetBreaker,
	fuseValueNotStandard,

	// Conductors.
	voltageCollapse,
	undersizedConductor,
	voltageDrop,
	busOverloaded,
	deviceOverloaded,

	// Studs.
	lugUnderFuse,
	washerInCurrentPath,
	studCrowded,
	studTooShort,
	blockMisuse,
	stackOrder,
	coverClearance,

	// Documents.
	colourFault,
	duplicateLabel,
	missingLabel,
	unusableValue,
	missingLength
];
