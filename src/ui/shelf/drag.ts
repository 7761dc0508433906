/** Type under which a part's kind travels while it is dragged from the shelf. */
export const SHELF_DRAG = 'application/x-wireworthy-part-kind';
