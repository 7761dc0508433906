/** The rules, and what they look at. */
export { defineRule, type Report, type Rule, type RuleMeta } from './define.ts';
export type { Acceptance, Finding, Severity, Subject } from './finding.ts';
export type { CaseResult, ConductorView, PartView, Study, WorstCurrent } from './study.ts';
export { buildStudy } from './build-study.ts';
export { amperageAs } from './amperage.ts';
export { RULES } from './list.ts';
export { ruleCatalogue, type RuleCatalogue } from './catalogue.ts';
export { NOT_IMPLEMENTED, type NotImplemented } from './not-implemented.ts';
export { runRules } from './run.ts';
export { figureName } from './numbers.ts';
export { fingerprintOf, idleWaivers, isOpen, LAPSES_BEYOND } from './waivers.ts';
export { holdBack, type HeldBack } from './hold-back.ts';
export { overcurrentFaults, type OvercurrentFault } from './overcurrent.ts';
export { derived, gathered } from './watch.ts';
export { stackCurrents, type StackCurrents } from './stack-currents.ts';
export { deviceName } from './conductor-words.ts';
export { listed, partName } from './words.ts';
export { breakingAmps, deviceKind, devicesOf, isUnverified, ratedVolts, type DeviceBranch } from './device-limits.ts';
