/** Small pictures of diagrams: kept ones from the cabinet, missing or old ones drawn by the worker. */
import type { Diagram } from '#core/diagram';
import type { Asker } from '#editor';
import { readKept, type Cabinet, type Card, type Thumbnail } from '#keeping';

const SIZE_PX = 160;

export type Picture = Pick<Thumbnail, 'light' | 'dark'>;

/** An image from elsewhere than the page's own elements runs no script, whatever is in it. */
export const pictureUrl = (svg: string): string => `data:image/svg+xml,${encodeURIComponent(svg)}`;

export function draw(asker: Asker, diagram: Diagram, sizePx: number): Promise<Picture | null> {
	return new Promise((resolve) => asker.ask(diagram, 'thumbnail', { sizePx }, { told: resolve, failed: () => resolve(null) }));
}

export class Pictures {
	#of = $state.raw<Readonly<Record<string, Picture | null>>>({});
	#known: readonly Thumbnail[] = [];
	#busy = false;
	#wanted: readonly Card[] = [];
	#loaded = false;

	constructor(
		private readonly cabinet: Cabinet,
		private readonly asker: Asker
	) {}

	/** Null where there is nothing to see, undefined while it is being drawn. */
	of(card: Card): Picture | null | undefined {
		return this.#of[`${card.id} ${card.changedMs}`];
	}

	/** Brings the pictures of these diagrams, one after the other. */
	async want(cards: readonly Card[]): Promise<void> {
		this.#wanted = cards;
		if (this.#busy) return;
		this.#busy = true;
		try {
			await this.#load();
			for (let next = this.#next(); next; next = this.#next()) this.#put(next, await this.#picture(next));
		} finally {
			this.#busy = false;
		}
	}

	#next(): Card | undefined {
		return this.#wanted.find((card) => this.of(card) === undefined);
	}

	async #load(): Promise<void> {
		if (this.#loaded) return;
		this.#loaded = true;
		this.#known = await this.cabinet.thumbnails().catch(() => []);
	}

	async #picture(card: Card): Promise<Picture | null> {
		const known = this.#known.find(({ id }) => id === card.id);
		if (known?.of === card.changedMs) return known;
		try {
			const { history } = await readKept(this.cabinet, card.id);
			const picture = await draw(this.asker, history.diagram, SIZE_PX);
			if (picture) await this.cabinet.putThumbnail({ id: card.id, of: card.changedMs, ...picture });
			return picture;
		} catch {
			return null;
		}
	}

	#put(card: Card, picture: Picture | null): void {
		this.#of = { ...this.#of, [`${card.id} ${card.changedMs}`]: picture };
	}
}
