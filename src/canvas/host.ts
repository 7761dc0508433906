/**
 * What the canvas needs from whoever mounts it. It asks for nothing else, so it can be tested, or replaced,
 * without Svelte.
 */
import type { Area, Command, Diagram, ItemKey, ItemKind, Part, TerminalRef } from '#core/diagram';
import type { ChangeMarks, PartSymbols, Scene } from '#core/drawing';
import type { Box, Point } from '#core/geometry';
import type { CheckResult } from '#core/check';
import type { LensView } from '#core/explain';

export type Tool =
	| { readonly kind: 'select' }
	| { readonly kind: 'pan' }
	/** Draw a conductor; `from` is set once the first stud was picked. */
	| { readonly kind: 'connect'; readonly from: TerminalRef | null }
	/** Place a part of this kind at the next click, with these parameters instead of the kind's own. */
	| { readonly kind: 'place'; readonly partKind: string; readonly params?: Part['params'] | undefined }
	/** Draw an area of this kind. */
	| { readonly kind: 'area'; readonly like: Pick<Area, 'label' | 'spaces' | 'ambientC'> }
	| { readonly kind: 'note' }
	/** Mark two points of a picture whose distance is known. */
	| { readonly kind: 'scale'; readonly underlay: string };

/** How far panels reach over the canvas from each of its edges, in CSS pixels. */
export interface Insets {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

export interface CanvasHost {
	/** Runs a command as one undo step. Returns the reason when it was refused (the host tells the user). */
	run(command: Command): string | null;
	select(keys: readonly ItemKey[]): void;
	/** A finding's mark was clicked. */
	focusFinding?(key: string): void;
	/** The mark of remarks on this was clicked. */
	openRemarks?(on: ItemKey): void;
	setTool(tool: Tool): void;
	/**
	 * A new part of this kind was asked for here; the host makes id, label and defaults and runs the command. With `on`,
	 * it is a fuse block that is mounted on that stud in the same step; with `params`, they take the place of the defaults.
	 */
	placePart(partKind: string, at: Point, on?: TerminalRef, params?: Part['params']): void;
	/** Two studs were joined; the host proposes gauge, colour and label and runs the command. */
	connect(from: TerminalRef, to: TerminalRef): void;
	/** A rectangle was drawn with the area tool. */
	drawArea?(box: Box): void;
	/** A note is wanted here, about this. */
	writeNote?(at: Point, about: { readonly kind: ItemKind; readonly id: string } | null): void;
	/** Two points were marked on a picture, in drawing coordinates. */
	measured?(underlay: string, from: Point, to: Point): void;
	/** Right click or long press, in client coordinates. */
	openMenu(client: Point, key: ItemKey | null): void;
	/** Said politely to screen readers and shown in the status line. */
	announce(text: string): void;
	viewChanged(view: { readonly zoom: number }): void;
	/** What lies over the canvas now, so that "fit" and "reveal" use the part that can be seen. Nothing, if not given. */
	insets?(): Insets;
}

/** What helps the hand while it draws. */
export interface Aids {
	/** Dots behind the drawing, which what is placed and moved falls on. */
	readonly grid: boolean;
	/** What is moved falls into line with its neighbours. */
	readonly guides: boolean;
}

export interface CanvasModel {
	readonly diagram: Diagram;
	readonly selection: ReadonlySet<ItemKey>;
	/** Latest check, possibly of a slightly older diagram; null before the first. */
	readonly check: CheckResult | null;
	readonly tool: Tool;
	readonly theme: 'light' | 'dark';
	/** Finding whose place is highlighted. */
	readonly focusedFinding: string | null;
	/** What conductors and studs are coloured by; their own colours without one. */
	readonly lens?: LensView | null;
	/** What protects the selection, or is protected by it. */
	readonly halo?: ReadonlySet<ItemKey>;
	/** How many open remarks there are on what. */
	readonly remarks?: ReadonlyMap<ItemKey, number>;
	/** Both, when left out. */
	readonly aids?: Aids;
	/** Draws parts as symbols; as their outlines to scale without it. */
	readonly symbols?: PartSymbols | null;
	/** What differs from another state of the drawing. */
	readonly changes?: ChangeMarks | null;
}

export interface Canvas {
	show(model: CanvasModel): void;
	/** What is drawn. */
	scene(): Scene;
	/** Whole diagram in view. `at once` where nothing was seen before. */
	fit(how?: 'gliding' | 'at once'): void;
	/** What lies over the canvas has changed: a diagram that was wholly in view is so again. */
	refit(): void;
	zoomBy(factor: number): void;
	/** Brings an item into view, without zooming out of the user's zoom if it fits; with `close`, large enough to be made out. */
	reveal(key: ItemKey, close?: boolean): void;
	/** Client coordinates of a part's centre, a conductor's middle or a stud; for tests and menus. */
	clientPoint(key: ItemKey): Point | null;
	/** Drawing coordinates of a point on the screen. */
	toDiagram(client: Point): Point;
	/** A part that is dragged here from outside: shown where it would come to lie. */
	carryPart(partKind: string, client: Point, params?: Part['params']): void;
	/** Sets down what was carried: as a click with the place tool does. */
	dropPart(partKind: string, client: Point, params?: Part['params']): void;
	/** The part was carried away again. */
	carryEnd(): void;
	/** Gives the sheet the keyboard. */
	focus(): void;
	cancelGesture(): void;
	destroy(): void;
}
