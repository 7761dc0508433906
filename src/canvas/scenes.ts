/**
 * Scenes of the diagram as it is, and of what a drag would make of it. A preview composes only what the command
 * touches (the parts, the blocks on them, their conductors), so its cost does not grow with the drawing.
 */
import {
	change,
	itemKey,
	withBlocks,
	type Command,
	type ConductorId,
	type Diagram,
	type ItemKey,
	type ItemKind,
	type PartId
} from '#core/diagram';
import {
	composeScene,
	conductorPoles,
	routeRequests,
	sceneComposer,
	type ComposeOptions,
	type PartSymbols,
	type Scene
} from '#core/drawing';
import { buildNetwork } from '#core/network';
import { previewRoute } from '#core/routing';
import { standingNear } from './obstacles.ts';
import type { SceneIndex } from './scene-index.ts';

export interface Preview {
	/** Only what would be drawn differently. */
	readonly scene: Scene;
	/** Items of the still scene that the preview stands for, or that would be gone. */
	readonly moved: ReadonlySet<ItemKey>;
}

export interface Scenes {
	/** Items that did not change keep their identity. */
	compose(diagram: Diagram, symbols?: PartSymbols | null): Scene;
	/** What a command that is not refused would make of the diagram composed last. */
	preview(diagram: Diagram, command: Command, index: SceneIndex): Preview;
}

export function createScenes(): Scenes {
	const compose = sceneComposer();
	let poles: ComposeOptions['poles'] = new Map();
	let symbols: PartSymbols | null = null;
	return {
		compose(diagram, asSymbols = null) {
			symbols = asSymbols;
			poles = conductorPoles(diagram, buildNetwork(diagram));
			return compose(diagram, { poles, symbols });
		},
		preview(diagram, command, index) {
			const after = change(diagram, command).diagram;
			const parts = touchedParts(diagram, after);
			const conductors = touchedConductors(diagram, after, parts);
			const excerpt = excerptOf(after, parts, conductors);
			const { requests } = routeRequests(excerpt);
			const obstacles = routeRequests({ ...excerpt, parts: pickOf(after.parts, parts), conductors: {} }).obstacles;
			const routes = new Map(
				requests.map((request) => [request.id, previewRoute(request, [...obstacles, ...standingNear(request, index, parts)])] as const)
			);
			const frames = touchedFrames(diagram, after, parts, conductors);
			const scene = composeScene(withFrames(excerpt, frames), { routes, poles, symbols }, index.scene);
			const moved = new Set([
				...[...parts].map((id) => itemKey('part', id)),
				...[...conductors].map((id) => itemKey('conductor', id)),
				...frames
			]);
			return { scene, moved };
		}
	};
}

/** Parts that are drawn elsewhere or otherwise: those that changed, and every block that sits on one of them. */
function touchedParts(before: Diagram, after: Diagram): Set<PartId> {
	const changed = new Set<PartId>();
	for (const [a, b] of [
		[before, after],
		[after, before]
	] as const) {
		for (const id in a.parts) if (a.parts[id] !== b.parts[id]) changed.add(id);
		for (const id in a.mounts) if (a.mounts[id] !== b.mounts[id]) changed.add(id);
	}
	return withBlocks(after, withBlocks(before, changed));
}

function touchedConductors(before: Diagram, after: Diagram, parts: ReadonlySet<PartId>): Set<ConductorId> {
	const touched = new Set<ConductorId>();
	for (const id in after.conductors) {
		const conductor = after.conductors[id]!;
		if (conductor !== before.conductors[id] || parts.has(conductor.from.part) || parts.has(conductor.to.part)) touched.add(id);
	}
	for (const id in before.conductors) if (!after.conductors[id]) touched.add(id);
	return touched;
}

/** Areas, notes and pictures that are drawn elsewhere or otherwise: those that changed, and notes that lead to what did. */
function touchedFrames(before: Diagram, after: Diagram, parts: ReadonlySet<PartId>, conductors: ReadonlySet<ConductorId>): Set<ItemKey> {
	const touched = new Set<ItemKey>();
	for (const kind of ['area', 'note', 'underlay'] as const) {
		const [a, b]: readonly Readonly<Record<string, unknown>>[] = [before[`${kind}s`], after[`${kind}s`]];
		if (a === b) continue;
		for (const id of new Set([...Object.keys(a!), ...Object.keys(b!)])) if (a![id] !== b![id]) touched.add(itemKey(kind, id));
	}
	for (const [id, { to }] of Object.entries(after.notes))
		if (to && (to.kind === 'part' ? parts : conductors).has(to.id)) touched.add(itemKey('note', id));
	return touched;
}

/** Of the frames only these. */
function withFrames(diagram: Diagram, frames: ReadonlySet<ItemKey>): Diagram {
	const only = <Value>(kind: ItemKind, record: Readonly<Record<string, Value>>): Record<string, Value> =>
		pickOf(
			record,
			Object.keys(record).filter((id) => frames.has(itemKey(kind, id)))
		);
	return {
		...diagram,
		areas: only('area', diagram.areas),
		notes: only('note', diagram.notes),
		underlays: only('underlay', diagram.underlays)
	};
}

/** The touched things, with the parts their conductors end on and the hosts their places depend on. */
function excerptOf(diagram: Diagram, parts: ReadonlySet<PartId>, conductors: ReadonlySet<ConductorId>): Diagram {
	const needed = new Set(parts);
	for (const id of conductors) {
		const conductor = diagram.conductors[id];
		if (conductor) needed.add(conductor.from.part).add(conductor.to.part);
	}
	for (const id of needed) {
		const host = diagram.mounts[id]?.part;
		if (host !== undefined) needed.add(host);
	}
	return {
		...diagram,
		parts: pickOf(diagram.parts, needed),
		conductors: pickOf(diagram.conductors, conductors),
		mounts: pickOf(diagram.mounts, needed),
		stacks: {}
	};
}

function pickOf<Value>(record: Readonly<Record<string, Value>>, ids: Iterable<string>): Record<string, Value> {
	const picked: Record<string, Value> = {};
	for (const id of ids) if (Object.hasOwn(record, id)) picked[id] = record[id]!;
	return picked;
}
