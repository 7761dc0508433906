/** How tabs call each other. A call carries no work: whoever hears it looks into the cabinet. */
import type { DiagramKey } from './records.ts';

export type Call =
	/** There are more steps of this diagram. */
	| { readonly kind: 'kept'; readonly id: DiagramKey }
	/** The tab `from` would like to edit. */
	| { readonly kind: 'ask'; readonly id: DiagramKey; readonly from: string }
	/** The editing tab holds work that it could not keep, and therefore stays. */
	| { readonly kind: 'stays'; readonly id: DiagramKey }
	/** A tab has begun to edit. */
	| { readonly kind: 'taken'; readonly id: DiagramKey }
	/** Something in the list of diagrams changed. */
	| { readonly kind: 'cards' };

export class Bell {
	#channel: BroadcastChannel | null;
	readonly #heard = new Set<(call: Call) => void>();

	constructor(name = 'wireworthy') {
		this.#channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
		if (this.#channel) this.#channel.onmessage = ({ data }: MessageEvent<Call>) => this.#heard.forEach((hear) => hear(data));
	}

	ring(call: Call): void {
		this.#channel?.postMessage(call);
	}

	/** Calls of other tabs; returns how to stop. */
	listen(hear: (call: Call) => void): () => void {
		this.#heard.add(hear);
		return () => this.#heard.delete(hear);
	}

	close(): void {
		this.#channel?.close();
		this.#channel = null;
	}
}
