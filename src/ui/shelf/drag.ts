/** Type under which a part's kind travels while it is dragged from the shelf. */
export const SHELF_DRAG = 'application/x-wireworthy-part-kind';

/** The kind that is on its way from our own shelf. */
export const shelfDrag: { kind: string | null } = { kind: null };
