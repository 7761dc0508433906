/** Who writes here: asked once, kept in this browser only. */
import { remember, remembered } from '../remember.ts';

const KEY = 'wireworthy-signature';

export const signature = (): string => remembered(KEY) ?? '';
export const keepSignature = (name: string): void => remember(KEY, name.trim());
