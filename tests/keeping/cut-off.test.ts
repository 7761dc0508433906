/**
 * A page that dies leaves in the store what it had handed over, up to some transaction. At every such moment the store
 * leads back to the history as it was then: the same diagram, the same steps to undo and to redo, none of them lost.
 */
import { isDeepStrictEqual } from 'node:util';
import { beforeEach, expect, test } from 'vitest';
import { fragmentOf, insertFragment, redo, run, start, undo, type Diagram, type History } from '#core/diagram';
import { Bell, Cabinet, Session, Turns } from '#keeping';
import { recover } from '../../src/keeping/recover.ts';
import type { Kept } from '../../src/keeping/cabinet.ts';
import { commandOf, PLAN_KINDS } from '../support/arbitrary-command.ts';
import { below, oneOf, randomFrom, type Random } from '../support/random.ts';
import { smallDiagram } from '../support/small-diagram.ts';
import { emptyDisk, FakeLocks, plain } from './support.ts';

beforeEach(emptyDisk);

/** Looks into the store right behind each transaction, before the next. */
class Watched extends Cabinet {
	readonly moments: { readonly what: string; readonly steps: number; readonly kept: Promise<Kept> }[] = [];
	/** Steps taken so far. */
	steps = 0;
	every = 1;
	#count = 0;

	#look(what: string, id: string): void {
		this.#count += 1;
		if (what === 'append' && this.#count % this.every !== 0) return;
		this.moments.push({ what, steps: this.steps, kept: this.read(id) });
	}
	override create(...args: Parameters<Cabinet['create']>): Promise<void> {
		const done = super.create(...args);
		this.#look('create', args[0].card.id);
		return done;
	}
	override append(...args: Parameters<Cabinet['append']>): Promise<void> {
		const done = super.append(...args);
		this.#look('append', args[0].card.id);
		return done;
	}
	override renew(...args: Parameters<Cabinet['renew']>): Promise<void> {
		const done = super.renew(...args);
		this.#look('renew', args[0].card.id);
		return done;
	}
}

function opened(every: number, first = start(smallDiagram())) {
	const cabinet = new Watched();
	cabinet.every = every;
	const session = new Session({
		cabinet,
		turns: new Turns(new FakeLocks()),
		bell: new Bell(),
		host: { show: () => undefined, changed: () => undefined, tell: () => undefined }
	});
	/** After none, one, two … steps. */
	const states = [first];
	session.begin(states[0]!);
	return {
		cabinet,
		session,
		states,
		become(next: History) {
			const before = states.at(-1)!;
			if (next === before) return;
			states.push(next);
			cabinet.steps += 1;
			session.step(before, next);
		}
	};
}

async function expectEachMomentLeadsBack({ cabinet, states }: ReturnType<typeof opened>): Promise<void> {
	for (const { what, steps, kept } of cabinet.moments) {
		const { snapshots, steps: journal } = await kept;
		const recovered = recover(snapshots, journal);
		if (!recovered.ok) throw new Error(`Nothing was recovered after ${what} of step ${steps}.`);
		const { seq, lost, notes, history } = recovered;
		expect({ seq, lost, notes }, what).toEqual({ seq: steps, lost: 0, notes: [] });
		if (!isDeepStrictEqual(history, plain(states[steps]))) throw new Error(`Another history after ${what} of step ${steps}.`);
	}
}

const doubled = (diagram: Diagram) =>
	insertFragment({ fragment: fragmentOf(diagram, Object.keys(diagram.parts)), by: { x: 30, y: 30 * Object.keys(diagram.parts).length } });

function anyStep(history: History, random: Random, nowMs: number): History {
	const chance = random();
	if (chance < 0.2) return undo(history);
	if (chance < 0.3) return redo(history);
	const command = commandOf(history.diagram, {
		kind: oneOf(random, PLAN_KINDS),
		a: below(random, 60),
		b: below(random, 60),
		c: below(random, 60)
	});
	if (!command || command.refuse(history.diagram) !== null) return history;
	return run(history, command, {
		nowMs,
		group: random() < 0.4 ? 'typing' : null,
		selection: Object.keys(history.diagram.parts).slice(0, 3)
	});
}

test('many steps, more than undo goes back, over several snapshots', { timeout: 120_000 }, async () => {
	const random = randomFrom(5);
	let worked = start(smallDiagram());
	while (worked.done.length < 450) worked = anyStep(worked, random, 0);
	const open = opened(29, worked);
	for (let n = 0; n < 650; n += 1) {
		open.become(anyStep(open.states.at(-1)!, random, n * 200));
		// Sometimes the disk catches up, sometimes it lags behind.
		if (random() < 0.05) await open.session.flush();
	}
	await open.session.flush();
	expect(open.cabinet.moments.filter(({ what }) => what === 'renew').length).toBeGreaterThan(1);
	await expectEachMomentLeadsBack(open);
});

test('a drawing doubled until its journal is cut by its length, then undone and redone across the cut', { timeout: 120_000 }, async () => {
	const open = opened(4);
	const random = randomFrom(8);
	const now = () => open.states.at(-1)!;
	while (Object.keys(now().diagram.parts).length < 250) open.become(run(now(), doubled(now().diagram)));
	const once = doubled(now().diagram);
	for (const flush of [true, false, true]) {
		if (flush) await open.session.flush();
		for (const step of [undo, undo, redo, undo, redo, redo]) open.become(step(now()));
		for (let n = 0; n < 9; n += 1) {
			open.become(run(now(), once));
			if (n < 8) open.become(undo(now()));
		}
		for (let n = 0; n < 4; n += 1) open.become(anyStep(now(), random, n));
	}
	await open.session.flush();
	expect(open.cabinet.moments.some(({ what }) => what === 'renew')).toBe(true);
	await expectEachMomentLeadsBack(open);
});
