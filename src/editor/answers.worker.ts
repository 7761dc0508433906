import type { Diagram } from '#core/diagram';
import { printFor } from '#core/units';
import { answer } from './answers.ts';
import type { Asked, Told } from './asker.ts';
import { shareUnchanged } from './share-unchanged.ts';

let last: Diagram | null = null;

self.onmessage = ({ data: { serial, diagram, kind, ask, reader } }: MessageEvent<Asked>) => {
	let told: Told;
	try {
		printFor(() => reader);
		last = shareUnchanged(last, diagram);
		told = { serial, answer: answer(last, kind, ask as never, (done, of) => self.postMessage({ serial, done, of } satisfies Told)) };
	} catch (error) {
		told = { serial, fault: error instanceof Error ? error.message : String(error) };
	}
	self.postMessage(told);
};
