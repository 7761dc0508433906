/** What was left half made when the part maker was closed, so that a slip of a key costs nothing. Gone with the page. */
import type { OwnParams } from '#core/parts';

let left: { readonly of: string; readonly draft: OwnParams } | null = null;

/** @param of which part: its id on the sheet or on the shelf, or "new" */
export const leave = (of: string, draft: OwnParams): void => void (left = { of, draft });

/** Null when nothing was left of this part. */
export const leftOf = (of: string): OwnParams | null => (left?.of === of ? left.draft : null);

export const forget = (): void => void (left = null);
