/** Diagram → network: the graph the solver and the protection checks walk. */
export { branchesAt, buildNetwork } from './build.ts';
export { byForm, formOf, ofSameForm } from './form.ts';
export { islandsOf } from './islands.ts';
export { ASSUMED_LENGTH_M, usedLengthM } from './length.ts';
export { polesOf } from './poles.ts';
export { unionFind, type UnionFind } from './union-find.ts';
export type {
	BatteryBranch,
	Branch,
	Form,
	LoadBranch,
	Network,
	NodeIndex,
	Origin,
	PartLookup,
	Pole,
	SourceBranch,
	Unresolved,
	Wire
} from './types.ts';
