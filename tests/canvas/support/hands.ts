/** A canvas without a screen: a real diagram, real tools, and a pointer driven by the test. */
import { change, type Command, type Diagram, type ItemKey } from '#core/diagram';
import type { CheckResult } from '#core/check';
import { boxCentre, pointAtFraction, type Point } from '#core/geometry';
import type { Finding } from '#core/rules';
import { CanvasDesk, type LayerName } from '../../../src/canvas/desk.ts';
import type { CanvasHost, CanvasModel, Tool } from '../../../src/canvas/host.ts';
import type { Keys, PointerInput } from '../../../src/canvas/pointer.ts';
import { createPointing } from '../../../src/canvas/pointing.ts';
import { createScenes } from '../../../src/canvas/scenes.ts';
import { toScreen, type View } from '../../../src/canvas/viewport.ts';

export const finding = (key: string, severity: Finding['severity'], subjects: Finding['subjects']): Finding => ({
	key,
	rule: key,
	title: key,
	severity,
	subjects,
	message: '',
	remedy: '',
	why: '',
	source: '',
	unverified: false,
	assumptions: [],
	caseId: null,
	numbers: {},
	waiver: null,
	waiverLapsed: false,
	lapse: null
});

export interface Hands {
	readonly desk: CanvasDesk;
	readonly diagram: Diagram;
	readonly selection: ReadonlySet<ItemKey>;
	readonly tool: Tool;
	/** Commands that ran, in words, and calls of the host, oldest first. */
	readonly log: string[];
	/** Layers asked to repaint since last looked at. */
	repainted(): LayerName[];
	/** On the screen: centre of a part, middle of a conductor, a stud. */
	point(key: ItemKey): Point;
	move(to: Point, keys?: Partial<Keys>): void;
	press(at: Point, keys?: Partial<Keys>): void;
	release(at: Point, keys?: Partial<Keys>): void;
	click(at: Point, keys?: Partial<Keys>): void;
	drag(from: Point, to: Point, keys?: Partial<Keys>): void;
	feed(input: PointerInput): void;
	escape(): void;
	setTool(tool: Tool): void;
	set(model: Partial<CanvasModel>): void;
}

export function hands(start: Diagram, options: { findings?: readonly Finding[]; view?: View } = {}): Hands {
	const log: string[] = [];
	let layers: LayerName[] = [];
	let timeMs = 0;
	let model: CanvasModel = {
		diagram: start,
		selection: new Set(),
		check: options.findings ? ({ findings: options.findings } as unknown as CheckResult) : null,
		tool: { kind: 'select' },
		theme: 'light',
		focusedFinding: null
	};
	const set = (next: Partial<CanvasModel>): void => {
		model = { ...model, ...next };
		pointing.show(model);
	};
	const host: CanvasHost = {
		run(command: Command) {
			const refused = command.refuse(model.diagram);
			log.push(refused ?? command.label);
			if (refused === null) set({ diagram: change(model.diagram, command).diagram });
			return refused;
		},
		select(keys) {
			set({ selection: new Set(keys) });
		},
		setTool: (tool) => set({ tool }),
		placePart: (kind, at, on) => log.push(`place ${kind} ${on ? `on ${on.part}.${on.terminal}` : `at ${at.x},${at.y}`}`),
		connect: (from, to) => log.push(`connect ${from.part}.${from.terminal} ${to.part}.${to.terminal}`),
		openMenu: (_, key) => log.push(`menu ${key}`),
		announce: (text) => log.push(text),
		viewChanged: () => undefined
	};
	const desk = new CanvasDesk({
		host,
		scenes: createScenes(),
		repaint: (...which) => layers.push(...which),
		setCursor: () => undefined
	});
	desk.view = options.view ?? { x: 0, y: 0, zoom: 1 };
	const pointing = createPointing(desk, {
		takeView: (view) => (desk.view = view),
		openMenu: (at, key) => host.openMenu(at, key)
	});
	pointing.show(model);

	const input = (at: Point, keys: Partial<Keys> = {}) => ({
		id: 1,
		at,
		keys: { shift: false, alt: false, ctrl: false, ...keys },
		device: 'mouse' as const,
		timeMs: (timeMs += 1000)
	});
	const self: Hands = {
		desk,
		log,
		get diagram() {
			return model.diagram;
		},
		get selection() {
			return model.selection;
		},
		get tool() {
			return model.tool;
		},
		repainted() {
			const seen = [...new Set(layers)];
			layers = [];
			return seen;
		},
		point(key) {
			const stud = desk.index.stud(key);
			const item = desk.scene.items.get(key);
			const at = stud?.at ?? (item?.route ? pointAtFraction(item.route, 0.5) : item?.body && boxCentre(item.body));
			if (!at) throw new Error(`${key} is not on the drawing.`);
			return toScreen(desk.view, at);
		},
		feed: pointing.feed,
		move: (at, keys) => pointing.feed({ kind: 'move', ...input(at, keys) }),
		press: (at, keys) => pointing.feed({ kind: 'down', button: 0, space: false, ...input(at, keys) }),
		release: (at, keys) => pointing.feed({ kind: 'up', ...input(at, keys) }),
		click(at, keys) {
			self.press(at, keys);
			self.release(at, keys);
		},
		drag(from, to, keys) {
			self.press(from, keys);
			self.move({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, keys);
			self.move(to, keys);
			self.release(to, keys);
		},
		escape() {
			if (!pointing.cancel()) pointing.escape();
		},
		setTool: (tool) => set({ tool }),
		set
	};
	return self;
}
