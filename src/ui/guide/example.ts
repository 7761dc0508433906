import { EXAMPLES } from '#core/examples';
import type { Workbench } from '../context.ts';
import type { StartId } from './guide.svelte.ts';

/** The example each start is made for. */
const EXAMPLE: Readonly<Partial<Record<StartId, string>>> = { bus: 'ridge-post-after', handover: 'ridge-post-before' };

export async function openExampleFor(start: StartId, { files }: Workbench): Promise<void> {
	const example = EXAMPLES.find(({ id }) => id === EXAMPLE[start]);
	if (example) await files.openExample(example);
}
