/** Diagram → network: the graph the solver and the protection checks walk. */
export type { BatteryBranch, Branch, LoadBranch, Network, NodeIndex, Origin, Pole, SourceBranch } from './types.ts';
