/** Errands of handing over: one at a time, each ends with a sentence. */
import type { Diagram } from '#core/diagram';
import type { Scene } from '#core/drawing';
import { csvOf, type Section } from '#core/reports';
import type { Asker } from '#editor';
import { download, fileName } from '#files';
import { drawingPng, drawingSvg, loadFonts, measureBy, packetPages, packetPdf, printPages, type PacketInput } from '#handoff';
import { handoffTexts as words } from '../handoff-texts.ts';
import type { Choices } from './choices.svelte.ts';

interface Job {
	readonly text: string;
	/** From 0 to 1; null while it cannot be told. */
	readonly share: number | null;
}

class Stopped extends Error {}

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error)).replace(/\.$/, '');

/** Lets the window draw before work goes on. */
const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

const ISSUE = { csv: 'text/csv;charset=utf-8', pdf: 'application/pdf', svg: 'image/svg+xml', png: 'image/png' } as const;

export class Handoff {
	job = $state.raw<Job | null>(null);
	problem = $state<string | null>(null);
	done = $state('');
	/** Null until the tables are worked out. */
	sections = $state.raw<readonly Section[] | null>(null);
	/** As it is put on paper. */
	scene = $state.raw<Scene>()!;
	#verdict = '';
	#run = 0;
	#drop: () => void = () => undefined;

	constructor(
		private readonly diagram: Diagram,
		scene: Scene,
		private readonly choices: Choices,
		asker: Asker
	) {
		this.scene = scene;
		this.#drop = asker.ask(diagram, 'reports', null, {
			told: ({ sections, verdict }) => {
				this.sections = sections;
				this.#verdict = verdict;
			},
			failed: (reason) => (this.problem = words.failed.tables(reason))
		});
	}

	/** Stops what is running; nothing is saved then. */
	stop(): void {
		this.#run += 1;
		this.job = null;
	}

	close(): void {
		this.stop();
		this.#drop();
	}

	pdf(): Promise<void> {
		return this.#do(words.working.pdf, words.failed.pdf, async (go) => {
			const { bytes, sheets, missing } = await packetPdf(this.#packet(), this.choices, await loadFonts(), async (share) => {
				await breathe();
				go(share);
			});
			const name = this.#save(bytes, 'packet', 'pdf');
			return [words.savedPdf(name, sheets), ...(missing.length > 0 ? [words.missing(missing)] : [])].join(' ');
		});
	}

	print(): Promise<void> {
		return this.#do(words.working.print, words.failed.print, async (go) => {
			const pages = packetPages(this.#packet(), this.choices, measureBy(await loadFonts()));
			go(null);
			await printPages(pages, this.diagram.titleBlock.title);
			return words.printed;
		});
	}

	svg(): Promise<void> {
		return this.#do(words.working.png, words.failed.save, async () => {
			const svg = drawingSvg(this.scene, this.diagram.titleBlock.title);
			return words.saved(this.#save(svg!, 'drawing', 'svg'));
		});
	}

	png(): Promise<void> {
		return this.#do(words.working.png, words.failed.png, async (go) => {
			const blob = await drawingPng(this.scene, this.diagram.titleBlock.title, this.choices.scale);
			go(null);
			return words.saved(this.#save(blob!, 'drawing', 'png'));
		});
	}

	csv(): Promise<void> {
		return this.#do(words.working.tables, words.failed.save, async () => {
			const tables = this.sections!.flatMap((section) => section.tables);
			const chosen = tables.filter(({ id }) => id === this.choices.table);
			const name = chosen[0]?.title ?? 'tables';
			return words.saved(this.#save(csvOf(chosen.length > 0 ? chosen : tables), name, 'csv'));
		});
	}

	#packet(): PacketInput {
		const sections = this.sections!.filter(({ id }) => this.choices.sections.includes(id));
		return { diagram: this.diagram, scene: this.scene, sections, verdict: this.#verdict };
	}

	#save(data: BlobPart, what: string, ending: keyof typeof ISSUE): string {
		const name = fileName(`${this.diagram.titleBlock.title} ${what}`.trim(), ending);
		download(data, name, ISSUE[ending]);
		return name;
	}

	async #do(
		text: string,
		failed: (reason: string) => string,
		errand: (go: (share: number | null) => void) => Promise<string>
	): Promise<void> {
		if (this.job) return;
		const run = (this.#run += 1);
		const isStopped = () => run !== this.#run;
		this.problem = null;
		this.done = '';
		this.job = { text, share: null };
		try {
			await breathe();
			const said = await errand((share) => {
				if (isStopped()) throw new Stopped();
				this.job = { text, share };
			});
			if (!isStopped()) this.done = said;
		} catch (error) {
			if (!(error instanceof Stopped) && !isStopped()) this.problem = failed(reasonOf(error));
		} finally {
			if (!isStopped()) this.job = null;
		}
	}
}
