/** What can be done with kept diagrams without opening them. Where another tab edits one, it is left alone. */
import { editTitleBlock, run, start, stepBetween, type Diagram, type History } from '#core/diagram';
import type { Cabinet } from './cabinet.ts';
import { KeepingError } from './fault.ts';
import { newId } from './new-id.ts';
import { recover } from './recover.ts';
import { snapshotRecord, stepRecord, type Card, type DiagramKey } from './records.ts';
import type { Turns } from './turns.ts';

/** Runs while no other tab edits the diagram; rejects with "elsewhere" when one does. */
export async function withTurn<Result>(turns: Turns, id: DiagramKey, work: () => Promise<Result>): Promise<Result> {
	const turn = await turns.take(id);
	if (!turn) throw new KeepingError('elsewhere');
	try {
		return await work();
	} finally {
		turn.release();
	}
}

/** The diagram as it was last kept. Rejects when it cannot be read. */
export async function readKept(cabinet: Cabinet, id: DiagramKey): Promise<{ card: Card; history: History; seq: number }> {
	const { card, snapshots, steps } = await cabinet.read(id);
	const recovered = recover(snapshots, steps);
	if (!recovered.ok) throw new KeepingError('failed', recovered.problems.map(({ what, why }) => `${what} ${why}`).join(' '));
	return { card, history: recovered.history, seq: recovered.seq };
}

/** Puts a diagram into the cabinet; answers with its id. */
export async function addDiagram(cabinet: Cabinet, diagram: Diagram, dates: { createdMs: number; changedMs: number }): Promise<DiagramKey> {
	const id = newId();
	const card: Card = {
		id,
		name: diagram.titleBlock.title,
		...dates,
		binnedMs: null,
		parts: Object.keys(diagram.parts).length,
		conductors: Object.keys(diagram.conductors).length,
		file: null
	};
	await cabinet.create({ card, steps: [], snapshot: snapshotRecord(id, 0, start(diagram)) });
	return id;
}

/** A second diagram like this one, under another name, without its history. */
export async function duplicateKept(cabinet: Cabinet, id: DiagramKey, title: string, nowMs: number): Promise<DiagramKey> {
	const { history } = await readKept(cabinet, id);
	const { diagram } = run(start(history.diagram), editTitleBlock({ set: { title } }));
	return addDiagram(cabinet, diagram, { createdMs: nowMs, changedMs: nowMs });
}

/** Gives a kept diagram another title: one step of it, that can be undone when it is open. */
export const renameKept = (cabinet: Cabinet, turns: Turns, id: DiagramKey, title: string, nowMs: number): Promise<void> =>
	withTurn(turns, id, async () => {
		await cabinet.claim(id, newId());
		const { card, history, seq } = await readKept(cabinet, id);
		const after = run(history, editTitleBlock({ set: { title } }), { nowMs });
		if (after === history) return;
		const steps = [stepRecord(id, seq + 1, stepBetween(history, after))];
		await cabinet.append({ card: { ...card, name: title, changedMs: nowMs }, steps });
	});

export const binKept = (cabinet: Cabinet, turns: Turns, id: DiagramKey, nowMs: number): Promise<void> =>
	withTurn(turns, id, () => cabinet.changeCard(id, { binnedMs: nowMs }));

export const restoreKept = (cabinet: Cabinet, id: DiagramKey): Promise<void> => cabinet.changeCard(id, { binnedMs: null });

/** Throws away for good what is in the bin; answers with how many. One that another tab edits stays. */
export async function emptyBin(cabinet: Cabinet, turns: Turns): Promise<number> {
	let purged = 0;
	for (const { id, binnedMs } of await cabinet.cards()) {
		if (binnedMs === null) continue;
		const turn = await turns.take(id);
		if (!turn) continue;
		await cabinet.purge(id).finally(() => turn.release());
		purged += 1;
	}
	return purged;
}
