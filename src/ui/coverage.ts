/** Which elements lie over the sheet, and how much of it they leave free. */
import type { Attachment } from 'svelte/attachments';
import type { Insets } from '#canvas';

export type Edge = keyof Insets;

export class Coverage {
	readonly #covers = new Map<Element, Edge>();

	/** Marks an element as covering the sheet from one edge. */
	from =
		(edge: Edge): Attachment =>
		(element) => {
			this.#covers.set(element, edge);
			return () => this.#covers.delete(element);
		};

	/** In CSS pixels of a window of this size. */
	insets(width = window.innerWidth, height = window.innerHeight): Insets {
		const insets = { left: 0, top: 0, right: 0, bottom: 0 };
		for (const [element, edge] of this.#covers) {
			const box = element.getBoundingClientRect();
			const reach = { left: box.right, top: box.bottom, right: width - box.left, bottom: height - box.top }[edge];
			insets[edge] = Math.max(insets[edge], reach);
		}
		return insets;
	}

	/** Middle of what is free, in client coordinates. */
	middle(): { x: number; y: number } {
		const { left, top, right, bottom } = this.insets();
		return { x: (left + window.innerWidth - right) / 2, y: (top + window.innerHeight - bottom) / 2 };
	}
}
