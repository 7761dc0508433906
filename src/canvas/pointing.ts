/** From pointer inputs to what they do: the state machine, the tool in use, and the view. No DOM: it runs in Node. */
import type { ItemKey } from '#core/diagram';
import type { Point } from '#core/geometry';
import type { CanvasDesk } from './desk.ts';
import type { CanvasModel, Tool } from './host.ts';
import { pick } from './pick.ts';
import { IDLE, step, type Gesture, type PointerInput, type Press } from './pointer.ts';
import { createAreaTool } from './tools/area.ts';
import { createConnectTool } from './tools/connect.ts';
import { createNoteTool } from './tools/note.ts';
import { createPanTool } from './tools/pan.ts';
import { createPlaceTool } from './tools/place.ts';
import { createScaleTool } from './tools/scale.ts';
import { createSelectTool } from './tools/select.ts';
import type { CanvasTool, Drag } from './tools/tool.ts';
import { panBy, zoomAbout, type View } from './viewport.ts';

export interface PointingHost {
	/** The user moves the view: whatever was gliding stops. */
	takeView(view: View): void;
	/** On the screen of the canvas. */
	openMenu(at: Point, key: ItemKey | null): void;
}

export interface Pointing {
	feed(input: PointerInput): void;
	/** Takes a new model: a drag whose diagram or tool was changed by somebody else is cancelled. */
	show(model: CanvasModel): void;
	/** Cancels what is being done with a pointer; false when nothing is. */
	cancel(): boolean;
	/** Escape while nothing is held. */
	escape(): void;
	stop(): void;
}

export function createPointing(desk: CanvasDesk, { takeView, openMenu }: PointingHost): Pointing {
	const tools: Record<Tool['kind'], CanvasTool> = {
		select: createSelectTool(desk),
		pan: createPanTool(desk),
		connect: createConnectTool(desk),
		place: createPlaceTool(desk),
		area: createAreaTool(desk),
		note: createNoteTool(desk),
		scale: createScaleTool(desk)
	};
	const tool = (): CanvasTool => tools[desk.model.tool.kind];

	let state = IDLE;
	let drag: Drag | null = null;
	let timer: ReturnType<typeof setTimeout> | undefined;
	let lastHover: Press | null = null;

	function feed(input: PointerInput): void {
		if (!desk.shown) return;
		const next = step(state, input, (press) => (drag = tool().drag(press)) === null);
		// Set first: what a gesture does may call back.
		state = next.state;
		next.gestures.forEach(act);
	}

	function act(gesture: Gesture): void {
		switch (gesture.kind) {
			case 'hover':
				lastHover = gesture;
				return tool().hover(gesture);
			case 'leave':
				lastHover = null;
				return tool().leave();
			case 'tap':
				return tool().tap(gesture, gesture.count);
			case 'drag-start':
				return;
			case 'drag-move':
				return drag?.move(gesture);
			case 'drag-end':
				return release((held) => held.end(gesture));
			case 'drag-cancel':
				return release((held) => held.cancel());
			case 'pan-start':
				tool().leave();
				return desk.cursor('grabbing');
			case 'pan':
				return takeView(panBy(desk.view, gesture.dx, gesture.dy));
			case 'pan-end':
				return desk.cursor('default');
			case 'pinch':
				return takeView(zoomAbout(panBy(desk.view, gesture.dx, gesture.dy), gesture.about, gesture.factor));
			case 'menu':
				tool().leave();
				return openMenu(gesture.at, keyAt(gesture));
			case 'wait':
				clearTimeout(timer);
				timer = setTimeout(() => feed({ kind: 'waited' }), gesture.ms);
				return;
			case 'stop-waiting':
				return clearTimeout(timer);
		}
	}

	function release(how: (held: Drag) => void): void {
		const held = drag;
		drag = null;
		desk.cursor('default');
		if (held) how(held);
	}

	function keyAt({ at, device }: Extract<Gesture, { kind: 'menu' }>): ItemKey | null {
		const target = pick(desk, at, device);
		if (target === null) return null;
		if (target.kind === 'mark') return target.mark.selects[0] ?? null;
		return target.kind === 'handle' ? `conductor:${target.conductor}` : target.key;
	}

	function cancel(): boolean {
		if (state.kind === 'idle' || state.kind === 'spent') return false;
		feed({ kind: 'escape' });
		return true;
	}

	return {
		feed,
		cancel,
		show(model) {
			const before = desk.shown;
			const otherTool = before !== null && before.tool.kind !== model.tool.kind;
			if (drag && (otherTool || before?.diagram !== model.diagram)) cancel();
			if (otherTool) tool().leave();
			desk.show(model);
			if (!otherTool) return;
			desk.cursor('default');
			if (lastHover && state.kind === 'idle') tool().hover(lastHover);
		},
		escape() {
			if (desk.shown) tool().escape();
		},
		stop: () => clearTimeout(timer)
	};
}
