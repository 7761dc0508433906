/** The list of kept diagrams as the dialog shows it, and what can be done with one. Each says how it went. */
import { download, fileName } from '#files';
import {
	binKept,
	duplicateKept,
	emptyBin,
	exportAll,
	faultOf,
	importAll,
	persistence,
	readArchive,
	renameKept,
	restoreKept,
	type Card,
	type Persistence
} from '#keeping';
import { editTitleBlock } from '#core/diagram';
import type { Workbench } from '../context.ts';
import { dayText, keepingTexts as texts } from '../keeping-texts.ts';
import { texts as windowTexts } from '../texts.ts';

/** A problem that is already in words. */
class Said extends Error {}

export class Drawer {
	/** Null until they were read. */
	cards = $state.raw<readonly Card[] | null>(null);
	storage = $state.raw<Persistence | null>(null);
	problem = $state<string | null>(null);

	constructor(private readonly workbench: Workbench) {}

	async refresh(): Promise<void> {
		await this.#try(async () => {
			const cards = await this.workbench.keeping.cabinet.cards();
			this.cards = cards.toSorted((a, b) => b.changedMs - a.changedMs);
			this.storage = await persistence();
			return undefined;
		}, false);
	}

	async duplicate({ id, name }: Card): Promise<void> {
		const { cabinet } = this.workbench.keeping;
		const title = texts.diagrams.copyOf(name || windowTexts.file.untitled);
		await this.#try(async () => {
			await duplicateKept(cabinet, id, title.slice(-200), Date.now());
			return texts.diagrams.duplicated(title);
		});
	}

	async rename({ id }: Card, title: string): Promise<void> {
		const { editor, keeping } = this.workbench;
		await this.#try(async () => {
			if (id === keeping.id) {
				if (editor.run(editTitleBlock({ set: { title } })) === null) await keeping.flush();
			} else await renameKept(keeping.cabinet, keeping.turns, id, title, Date.now());
			return texts.diagrams.renamed(title);
		});
	}

	async bin(card: Card): Promise<void> {
		const { files, keeping } = this.workbench;
		// What is open is left first: in its place comes an empty sheet.
		if (card.id === keeping.id) await files.newDiagram();
		if (card.id === keeping.id) return;
		await this.#try(async () => {
			await binKept(keeping.cabinet, keeping.turns, card.id, Date.now());
			return texts.diagrams.binned(card.name || windowTexts.file.untitled);
		});
	}

	async restore({ id, name }: Card): Promise<void> {
		await this.#try(async () => {
			await restoreKept(this.workbench.keeping.cabinet, id);
			return texts.diagrams.restored(name || windowTexts.file.untitled);
		});
	}

	async emptyBin(): Promise<void> {
		const { keeping } = this.workbench;
		await this.#try(async () => texts.diagrams.emptied(await emptyBin(keeping.cabinet, keeping.turns)));
	}

	async exportAll(): Promise<void> {
		await this.#try(async () => {
			await this.workbench.keeping.flush();
			const { text, diagrams, unreadable } = await exportAll(this.workbench.keeping.cabinet);
			download(text, fileName(texts.diagrams.archiveName(dayText(Date.now()))), 'application/json');
			return texts.diagrams.exported(diagrams, unreadable);
		}, false);
	}

	async importAll(file: File): Promise<void> {
		await this.#try(async () => {
			const read = await readArchive(file);
			if (!read.ok) {
				const { what, why, remedy } = read.problem;
				throw new Said(`${texts.diagrams.notImported}. ${what} ${why} ${remedy}`);
			}
			await importAll(this.workbench.keeping.cabinet, read.diagrams);
			return texts.diagrams.imported(read.diagrams.length, read.refused);
		});
	}

	async #try(work: () => Promise<string | undefined>, changes = true): Promise<void> {
		this.problem = null;
		try {
			const said = await work();
			if (said) this.workbench.editor.announce(said);
			if (!changes) return;
			this.workbench.keeping.bell.ring({ kind: 'cards' });
			await this.refresh();
		} catch (error) {
			this.problem = error instanceof Said ? error.message : texts.fault(faultOf(error));
		}
	}
}
