/** Asks ELK (elkjs, EPL-2.0) for places. Loaded when it is first asked for: it is larger than all the rest. */
import Elk from 'elkjs/lib/elk-api.js';
import type { ElkNode } from 'elkjs/lib/elk-api.js';
import type { ArrangeGraph, Places } from './arrange.ts';

/** Rejects with the reason when no places could be worked out. */
export async function elkPlaces(graph: ArrangeGraph): Promise<Places> {
	const worker = new Worker(new URL('./elk.worker.ts', import.meta.url), { type: 'module' });
	const fault = new Promise<never>((_, reject) => {
		worker.onerror = (event) => reject(new Error(event.message || 'its worker did not start'));
	});
	try {
		const elk = new Elk({ workerFactory: () => worker });
		return placesIn(await Promise.race([elk.layout(structuredClone(graph) as unknown as ElkNode), fault]));
	} finally {
		worker.terminate();
	}
}

export const placesIn = ({ children = [] }: ElkNode): Places => new Map(children.map(({ id, x = 0, y = 0 }) => [id, { x, y }]));
