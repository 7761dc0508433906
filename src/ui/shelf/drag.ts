import type { Part } from '#core/diagram';

/** Type under which a part's kind travels while it is dragged from the shelf. */
export const SHELF_DRAG = 'application/x-wireworthy-part-kind';

/** What is on its way from our own shelf. */
export const shelfDrag: { kind: string | null; params?: Part['params'] | undefined } = { kind: null };
