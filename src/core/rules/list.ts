/**
 * Every rule, in the order of evaluation and of the list the user sees: topology before what depends on it.
 * A test compares this list with the folder and with the tests.
 */
import { acSideNotChecked } from './ac-side-not-checked.ts';
import { alternatorConductor } from './alternator-conductor.ts';
import { alternatorOverloaded } from './alternator-overloaded.ts';
import { arrayBesideController } from './array-beside-controller.ts';
import { arrayConductors } from './array-conductors.ts';
import { arrayCurrent } from './array-current.ts';
import { arrayStringFuses } from './array-string-fuses.ts';
import { arraySwitch } from './array-switch.ts';
import { arrayVoltageCold } from './array-voltage-cold.ts';
import { arrayVoltageHot } from './array-voltage-hot.ts';
import { autoResetBreaker } from './auto-reset-breaker.ts';
import { batteryDischargeLimit } from './battery-discharge-limit.ts';
import { batteryPlace } from './battery-place.ts';
import { adapterMisuse } from './adapter-misuse.ts';
import { blockMisuse } from './block-misuse.ts';
import { blocksNotMatched } from './blocks-not-matched.ts';
import { breakerForAc } from './breaker-for-ac.ts';
import { breakerPolarity } from './breaker-polarity.ts';
import { busBehindLargerFuse } from './bus-behind-larger-fuse.ts';
import { busOrder } from './bus-order.ts';
import { busOverloaded } from './bus-overloaded.ts';
import { caseBond } from './case-bond.ts';
import { chargeLimit } from './charge-limit.ts';
import { chargeVoltage } from './charge-voltage.ts';
import { chargingDropRule } from './charging-drop.ts';
import { chassisBond } from './chassis-bond.ts';
import { chassisUsedAsReturn } from './chassis-used-as-return.ts';
import { circuitNotIdentified } from './circuit-not-identified.ts';
import { coldCharging } from './cold-charging.ts';
import { colourFault } from './colour-fault.ts';
import { combinerCurrent } from './combiner-current.ts';
import { conductorBelowMinimum } from './conductor-below-minimum.ts';
import { converterFeedsItself } from './converter-feeds-itself.ts';
import { coverClearance } from './cover-clearance.ts';
import { crankingMark } from './cranking-mark.ts';
import { criticalCircuitSharesFuse } from './critical-circuit-shares-fuse.ts';
import { danglingConductor } from './dangling-conductor.ts';
import { deadEndedLiveConductor } from './dead-ended-live-conductor.ts';
import type { Rule } from './define.ts';
import { deviceOverloaded } from './device-overloaded.ts';
import { deviceTooHot } from './device-too-hot.ts';
import { duplicateLabel } from './duplicate-label.ts';
import { energyShortfall } from './energy-shortfall.ts';
import { fuseBelowLoad } from './fuse-below-load.ts';
import { fuseInNegative } from './fuse-in-negative.ts';
import { fuseOpensOnStart } from './fuse-opens-on-start.ts';
import { fuseOverDeviceLimit } from './fuse-over-device-limit.ts';
import { fuseOversizedForLoad } from './fuse-oversized-for-load.ts';
import { fuseValueNotStandard } from './fuse-value-not-standard.ts';
import { fuseVoltageRating } from './fuse-voltage-rating.ts';
import { halfConnectedCharger } from './half-connected-charger.ts';
import { holderLimit } from './holder-limit.ts';
import { hotJoint } from './hot-joint.ts';
import { ignitionSource } from './ignition-source.ts';
import { insulatedReturn } from './insulated-return.ts';
import { interlinkThin } from './interlink-thin.ts';
import { interruptCapacity } from './interrupt-capacity.ts';
import { inverterDrop } from './inverter-drop.ts';
import { inverterLowVoltageCurrent } from './inverter-low-voltage-current.ts';
import { inverterRipple } from './inverter-ripple.ts';
import { lengthDoubt } from './length-doubt.ts';
import { liveStudsBare } from './live-studs-bare.ts';
import { loadDump } from './load-dump.ts';
import { loadInNoCase } from './load-in-no-case.ts';
import { loadVoltage } from './load-voltage.ts';
import { lugHole } from './lug-hole.ts';
import { lugUnderFuse } from './lug-under-fuse.ts';
import { lugsClash } from './lugs-clash.ts';
import { mainDisconnectMissing } from './main-disconnect-missing.ts';
import { midPointTap } from './mid-point-tap.ts';
import { missingLabel } from './missing-label.ts';
import { missingLength } from './missing-length.ts';
import { negativeSmallerThanPositive } from './negative-smaller-than-positive.ts';
import { noFastClearing } from './no-fast-clearing.ts';
import { noPrecharge } from './no-precharge.ts';
import { noReturn } from './no-return.ts';
import { notFed } from './not-fed.ts';
import { oneBatteryLost } from './one-battery-lost.ts';
import { oneWayLengthDoubt } from './one-way-length-doubt.ts';
import { oversizedProtection } from './oversized-protection.ts';
import { ownLeads } from './own-leads.ts';
import { parallelConductors } from './parallel-conductors.ts';
import { protectionTooFar } from './protection-too-far.ts';
import { reversedBattery } from './reversed-battery.ts';
import { reversedPolarity } from './reversed-polarity.ts';
import { ring } from './ring.ts';
import { secondBond } from './second-bond.ts';
import { secondSourceMissing } from './second-source-missing.ts';
import { selectivityLost } from './selectivity-lost.ts';
import { shortCircuitCurrentUnknown } from './short-circuit-current-unknown.ts';
import { shuntBypassed } from './shunt-bypassed.ts';
import { signalNegatives } from './signal-negatives.ts';
import { solidConductor } from './solid-conductor.ts';
import { stackOrder } from './stack-order.ts';
import { stalledMotor } from './stalled-motor.ts';
import { stringPathsUnequal } from './string-paths-unequal.ts';
import { stringWithoutFuse } from './string-without-fuse.ts';
import { studCrowded } from './stud-crowded.ts';
import { studTooShort } from './stud-too-short.ts';
import { switchInNegative } from './switch-in-negative.ts';
import { terminalTemperature } from './terminal-temperature.ts';
import { torque } from './torque.ts';
import { twoSourceConductor } from './two-source-conductor.ts';
import { unconnectedPart } from './unconnected-part.ts';
import { undersizedConductor } from './undersized-conductor.ts';
import { undersizedReturn } from './undersized-return.ts';
import { unequalVoltageParallel } from './unequal-voltage-parallel.ts';
import { unknownPartKind } from './unknown-part-kind.ts';
import { unprotectedConductor } from './unprotected-conductor.ts';
import { unusableValue } from './unusable-value.ts';
import { voltageClassMismatch } from './voltage-class-mismatch.ts';
import { voltageCollapse } from './voltage-collapse.ts';
import { voltageDrop } from './voltage-drop.ts';
import { washerInCurrentPath } from './washer-in-current-path.ts';
import { waterProtection } from './water-protection.ts';
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
	converterFeedsItself,
	shuntBypassed,
	deadEndedLiveConductor,
	unconnectedPart,
	arrayBesideController,
	signalNegatives,
	insulatedReturn,
	ring,

	// Protection.
	unprotectedConductor,
	protectionTooFar,
	twoSourceConductor,
	stringWithoutFuse,
	oversizedProtection,
	undersizedReturn,
	fuseBelowLoad,
	fuseOverDeviceLimit,
	criticalCircuitSharesFuse,
	fuseOversizedForLoad,
	mainDisconnectMissing,
	switchInNegative,
	chassisBond,
	caseBond,
	fuseInNegative,
	fuseVoltageRating,
	interruptCapacity,
	shortCircuitCurrentUnknown,
	noFastClearing,
	selectivityLost,
	breakerPolarity,
	autoResetBreaker,
	fuseValueNotStandard,
	crankingMark,
	ownLeads,
	busBehindLargerFuse,
	stalledMotor,
	fuseOpensOnStart,
	holderLimit,
	breakerForAc,
	arrayStringFuses,
	arraySwitch,
	ignitionSource,
	waterProtection,
	deviceTooHot,

	// Conductors.
	voltageCollapse,
	undersizedConductor,
	voltageDrop,
	inverterLowVoltageCurrent,
	inverterDrop,
	chargingDropRule,
	voltageClassMismatch,
	chassisUsedAsReturn,
	secondBond,
	negativeSmallerThanPositive,
	parallelConductors,
	conductorBelowMinimum,
	busOverloaded,
	deviceOverloaded,
	alternatorConductor,
	terminalTemperature,
	arrayConductors,
	loadVoltage,
	inverterRipple,
	noPrecharge,
	solidConductor,

	// Batteries.
	blocksNotMatched,
	midPointTap,
	stringPathsUnequal,
	batteryDischargeLimit,
	oneBatteryLost,
	chargeLimit,
	chargeVoltage,
	energyShortfall,
	interlinkThin,
	combinerCurrent,
	alternatorOverloaded,
	loadDump,
	coldCharging,
	arrayVoltageCold,
	arrayVoltageHot,
	arrayCurrent,
	secondSourceMissing,
	batteryPlace,

	// Studs.
	lugUnderFuse,
	washerInCurrentPath,
	studCrowded,
	studTooShort,
	blockMisuse,
	adapterMisuse,
	stackOrder,
	coverClearance,
	lugsClash,
	lugHole,
	torque,
	hotJoint,
	busOrder,
	liveStudsBare,

	// Documents.
	colourFault,
	duplicateLabel,
	circuitNotIdentified,
	loadInNoCase,
	missingLabel,
	unusableValue,
	missingLength,
	oneWayLengthDoubt,
	lengthDoubt,
	acSideNotChecked
];
