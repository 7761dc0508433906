/** Sizes on the canvas, in CSS pixels: things that keep their size whatever the zoom. */
export const GRID_MM = 5;
export const PICK_PX = { mouse: 7, pen: 9, touch: 16 } as const;
/** Studs smaller than this on the screen do not catch clicks meant for their part. */
export const STUD_PICK_MIN_PX = { mouse: 2.2, pen: 3, touch: 5 } as const;
/** Where studs are that small, a part starts to move only after this far. */
export const FAR_DRAG_PX = 8;
export const HANDLE_PX = 6;
export const MARK_PX = 10;
/** On a phone, where marks would cover the drawing. */
export const SMALL_MARK_PX = 7;
export const SMALL_SCREEN_PX = 600;
/** How near a neighbour's edge or centre draws what is moved into line with it. */
export const GUIDE_PX = 7;
