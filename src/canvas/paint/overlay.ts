/** Paints what lies over the drawing, in CSS pixels: selection, hover, rubber bands, snap hints, finding marks. */
import { itemKey, parseItemKey, studKey, terminalRef, type ItemKey } from '#core/diagram';
import { pointAtFraction, type Box, type Point } from '#core/geometry';
import { changeMarks, type ChangeMarks, type DrawnItem } from '#core/drawing';
import type { Paint, Palette } from '#core/graphics';
import type { Finding } from '#core/rules';
import type { CanvasDesk } from '../desk.ts';
import { gripsOf } from '../frames.ts';
import { subjectKey, type Mark } from '../marks.ts';
import { studFacts } from '../parts.ts';
import { handlesOf } from '../pick.ts';
import { HANDLE_PX } from '../theme.ts';
import { toScreen, visibleBox, type Size } from '../viewport.ts';
import { tracePolyline } from './compile.ts';
import { paintGuides } from './guides.ts';
import { paintRemark } from './remark.ts';
import { PAINT_OF, paintMark, type MarkStanding } from './mark.ts';
import { FONT, type Painter } from './painter.ts';

export interface OverlayScreen {
	readonly context: CanvasRenderingContext2D;
	readonly painter: Painter;
	readonly palette: Palette;
	readonly size: Size;
}

export function paintOverlay(desk: CanvasDesk, screen: OverlayScreen): void {
	const model = desk.shown;
	if (!model) return;
	const { overlay } = desk;
	const pen = new OverlayPen(desk, screen);

	const focused = model.check?.findings.find((finding) => finding.key === model.focusedFinding) ?? null;
	for (const subject of focused?.subjects ?? []) {
		const key = subjectKey(subject);
		if (key) pen.outline(key, PAINT_OF[focused!.severity], 6, 0.35);
	}
	for (const key of model.halo ?? []) pen.outline(key, 'accent', 5, 0.6);
	if (overlay.hover && !model.selection.has(overlay.hover)) pen.outline(overlay.hover, 'selection', 3, 0.45);
	for (const key of model.selection) pen.outline(key, 'selection', 3, 0.9);

	if (model.changes) pen.changes(model.changes);

	// After a tap there is no pointer to show the way: the tool in hand says what is looked for.
	const connecting = model.tool.kind === 'connect' ? model.tool : null;
	const seeks = overlay.seeks ?? (connecting && ({ what: 'lug', except: connecting.from } as const));
	if (seeks) pen.rings(seeks);
	if (connecting?.from) pen.target(itemKey('stud', studKey(connecting.from)));
	if (overlay.ghost) pen.ghost(overlay.ghost);
	if (overlay.band) pen.band(overlay.band);
	if (overlay.target) pen.target(overlay.target);
	for (const handle of handlesOf(desk)) pen.handle(handle.at);
	for (const { at } of gripsOf(desk)) pen.grip(at);
	for (const key of model.selection) if (desk.isLocked(key)) pen.padlock(key);
	if (!desk.dragged) for (const mark of desk.marks) paintMark(screen.context, mark, screen.palette, standingOf(mark, focused));
	if (!desk.dragged) for (const remark of desk.remarks) paintRemark(screen.context, remark, screen.palette);
	screen.context.globalAlpha = 1;
	if (overlay.guides) paintGuides(screen.context, overlay.guides, desk.view, screen.palette);
	if (overlay.box) pen.box(overlay.box);
	if (overlay.tag) pen.tag(overlay.tag);
}

function standingOf({ findings }: Mark, focused: Finding | null): MarkStanding {
	if (!focused) return 'plain';
	return findings.some(({ key }) => key === focused.key) ? 'focused' : 'dimmed';
}

const cornerOf = (box: Box | null): Point | null => box && { x: box.minX, y: box.minY };

class OverlayPen {
	readonly #context: CanvasRenderingContext2D;
	readonly #palette: Palette;

	constructor(
		readonly desk: CanvasDesk,
		readonly screen: OverlayScreen
	) {
		this.#context = screen.context;
		this.#palette = screen.palette;
	}

	/** While something is dragged, its outline goes with it. */
	#item(key: ItemKey): DrawnItem | undefined {
		return this.desk.dragged?.items.get(key) ?? this.desk.scene.items.get(key);
	}

	#stud(key: ItemKey): { at: Point; radiusPx: number } | null {
		const part = `part:${terminalRef(parseItemKey(key).id).part}` as ItemKey;
		const stud = this.#item(part)?.terminals.find((terminal) => terminal.key === key);
		return stud ? { at: toScreen(this.desk.view, stud.at), radiusPx: stud.radiusMm * this.desk.view.zoom } : null;
	}

	#style(stroke: Paint, width: number, alpha = 1, dash: number[] = []): void {
		const context = this.#context;
		context.strokeStyle = this.#palette[stroke];
		context.lineWidth = width;
		context.globalAlpha = alpha;
		context.lineJoin = 'round';
		context.lineCap = 'round';
		context.setLineDash(dash);
	}

	outline(key: ItemKey, paint: Paint, px: number, alpha: number): void {
		const context = this.#context;
		const { view } = this.desk;
		const stud = parseItemKey(key).kind === 'stud' ? this.#stud(key) : null;
		if (stud) {
			this.#style(paint, px, alpha);
			context.beginPath();
			context.arc(stud.at.x, stud.at.y, Math.max(stud.radiusPx * 1.25, 6) + 2, 0, 2 * Math.PI);
			context.stroke();
			return;
		}
		const item = this.#item(key);
		if (item?.route) {
			// Only the rim: the conductor's own colour and tag stay as they are.
			const width = Math.max(item.widthMm * view.zoom, 1);
			this.#style(paint, width + 2 * px, alpha);
			context.lineCap = 'butt';
			context.beginPath();
			tracePolyline(
				context,
				item.route.map((at) => toScreen(view, at)),
				item.widthMm * 1.2 * view.zoom
			);
			context.stroke();
			context.globalCompositeOperation = 'destination-out';
			context.lineWidth = width;
			context.globalAlpha = 1;
			context.stroke();
			context.globalCompositeOperation = 'source-over';
		} else if (item?.body ?? item?.frame) {
			this.#style(paint, Math.min(px, 4) * 0.75, alpha);
			this.#rect((item!.body ?? item!.frame)!, item!.body ? 4 : 2);
			context.stroke();
		}
	}

	#rect(box: Box, grownPx: number): void {
		const from = toScreen(this.desk.view, { x: box.minX, y: box.minY });
		const to = toScreen(this.desk.view, { x: box.maxX, y: box.maxY });
		this.#context.beginPath();
		this.#context.roundRect(from.x - grownPx, from.y - grownPx, to.x - from.x + 2 * grownPx, to.y - from.y + 2 * grownPx, grownPx + 2);
	}

	/** Every stud in view that would do, ringed. */
	rings(seeks: NonNullable<CanvasDesk['overlay']['seeks']>): void {
		const { desk } = this;
		const context = this.#context;
		this.#style('accent', 1.5, 0.8);
		context.beginPath();
		for (const key of desk.index.studs.search(visibleBox(desk.view, this.screen.size, 20))) {
			const { id } = parseItemKey(key);
			const ref = terminalRef(id);
			if (seeks.except && (seeks.what === 'lug' ? id === studKey(seeks.except) : ref.part === seeks.except.part)) continue;
			const facts = studFacts(desk.model.diagram, ref);
			if (!(seeks.what === 'lug' ? facts?.takesLug : facts?.takesBlock)) continue;
			const stud = this.#stud(key);
			if (!stud) continue;
			const radius = Math.max(stud.radiusPx + 2, 3.5);
			context.moveTo(stud.at.x + radius, stud.at.y);
			context.arc(stud.at.x, stud.at.y, radius, 0, 2 * Math.PI);
		}
		context.stroke();
	}

	target(key: ItemKey): void {
		const stud = this.#stud(key);
		if (!stud) return;
		const context = this.#context;
		this.#style('accent', 3);
		context.beginPath();
		context.arc(stud.at.x, stud.at.y, Math.max(stud.radiusPx * 1.3, 8) + 2, 0, 2 * Math.PI);
		context.fillStyle = this.#palette.accent;
		context.globalAlpha = 0.25;
		context.fill();
		context.globalAlpha = 1;
		context.stroke();
	}

	band({ points, lands }: NonNullable<CanvasDesk['overlay']['band']>): void {
		const context = this.#context;
		this.#style('accent', lands ? 3 : 2, 1, lands ? [] : [6, 6]);
		context.beginPath();
		tracePolyline(
			context,
			points.map((at) => toScreen(this.desk.view, at)),
			6
		);
		context.stroke();
	}

	changes(marks: ChangeMarks): void {
		const { view, scene, markPx } = this.desk;
		const context = this.#context;
		context.save();
		context.translate(view.x, view.y);
		context.scale(view.zoom, view.zoom);
		const primitives = changeMarks(scene, marks, markPx / view.zoom);
		this.screen.painter.paint(context, primitives, { palette: this.#palette, zoom: view.zoom });
		context.restore();
		context.globalAlpha = 1;
	}

	ghost({ at, primitives }: NonNullable<CanvasDesk['overlay']['ghost']>): void {
		const context = this.#context;
		const origin = toScreen(this.desk.view, at);
		const { zoom } = this.desk.view;
		context.save();
		context.translate(origin.x, origin.y);
		context.scale(zoom, zoom);
		this.screen.painter.paint(context, primitives, { palette: this.#palette, zoom, opacity: 0.6 });
		context.restore();
	}

	handle({ x, y }: Point): void {
		const context = this.#context;
		this.#style('selection', 2);
		context.beginPath();
		context.arc(x, y, HANDLE_PX, 0, 2 * Math.PI);
		context.fillStyle = this.#palette.paper;
		context.fill();
		context.stroke();
	}

	/** Square, so that it is not taken for the round handle of a conductor's end. */
	grip({ x, y }: Point): void {
		const context = this.#context;
		this.#style('selection', 1.5);
		context.beginPath();
		context.rect(x - 4, y - 4, 8, 8);
		context.fillStyle = this.#palette.paper;
		context.fill();
		context.stroke();
	}

	/** On what is selected and cannot be moved. */
	padlock(key: ItemKey): void {
		const item = this.#item(key);
		const at = item?.route ? pointAtFraction(item.route, 0.5) : cornerOf(item?.body ?? item?.frame ?? null);
		if (!at) return;
		const { x, y } = toScreen(this.desk.view, at);
		const context = this.#context;
		context.globalAlpha = 1;
		context.setLineDash([]);
		context.fillStyle = this.#palette.selection;
		context.beginPath();
		context.arc(x, y, 9, 0, 2 * Math.PI);
		context.fill();
		context.fillStyle = context.strokeStyle = this.#palette.paper;
		context.lineWidth = 1.5;
		context.beginPath();
		context.roundRect(x - 4, y - 1, 8, 6, 1);
		context.fill();
		context.beginPath();
		context.arc(x, y - 1.5, 2.5, Math.PI, 2 * Math.PI);
		context.stroke();
	}

	box(box: Box): void {
		const context = this.#context;
		this.#style('selection', 1, 1, [4, 3]);
		this.#rect(box, 0);
		context.stroke();
		context.fillStyle = this.#palette.selection;
		context.globalAlpha = 0.1;
		context.fill();
	}

	tag({ at, text, tone }: NonNullable<CanvasDesk['overlay']['tag']>): void {
		const context = this.#context;
		const right = this.screen.size.width - (this.desk.host.insets?.().right ?? 0);
		const from = toScreen(this.desk.view, at);
		context.globalAlpha = 1;
		context.font = `500 12px ${FONT}`;
		context.textAlign = 'start';
		context.textBaseline = 'middle';
		const w = context.measureText(text).width + 14;
		const x = Math.max(4, Math.min(from.x + 14, right - w - 4));
		const y = from.y < 40 ? from.y + 18 : from.y - 34;
		context.beginPath();
		context.roundRect(x, y, w, 22, 5);
		context.fillStyle = this.#palette[tone === 'plain' ? 'ink' : tone === 'good' ? 'accent' : 'error'];
		context.fill();
		context.fillStyle = this.#palette.paper;
		context.fillText(text, x + 7, y + 11.5);
	}
}
