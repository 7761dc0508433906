/** What sits on each stud, in order and to scale. */
export type { Layer, Stack } from './types.ts';
export { fullOrder, isHardware, landings } from './order.ts';
export { stackOf, stackPlaces, stacksOf, type StackPlaces } from './stack-of.ts';
export { LARGEST_RING_MM2, threadText } from './words.ts';

/** Currents, heat, and the best order. */
export { faceOhm, HARDWARE_OHM, jointsIn, jointsOf, type Joint, type TerminalCurrents } from './joints.ts';
export { bestOrder, drawnHeatW, isWorthwhile, type Arrangement } from './best-order.ts';
export { orderFaults, type OrderFault } from './order-faults.ts';
export { obstaclesOf, threadNeededMm, type Obstacle } from './obstacles.ts';
export type { Relief } from './reliefs.ts';

/** Seen from above. */
export { COVER_AIR_MM, underUsualCover, USUAL_END_COVER } from './cover.ts';
export { holeFit, type HoleFit } from './hole.ts';
export { planView, type Neighbour, type PlanBlock, type PlanLug, type PlanView } from './plan-view.ts';
