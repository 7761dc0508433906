/** What sits on each stud, in order and to scale. */
export type { Layer, Stack } from './types.ts';
export { fullOrder, isHardware, landings } from './order.ts';
export { stackOf, stacksOf } from './stack-of.ts';
export { threadText } from './words.ts';
