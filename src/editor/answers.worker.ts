import type { Diagram } from '#core/diagram';
import { answer } from './answers.ts';
import type { Asked, Told } from './asker.ts';
import { shareUnchanged } from './share-unchanged.ts';

let last: Diagram | null = null;

self.onmessage = ({ data: { serial, diagram, kind, ask } }: MessageEvent<Asked>) => {
	let told: Told;
	try {
		last = shareUnchanged(last, diagram);
		told = { serial, answer: answer(last, kind, ask as never, (done, of) => self.postMessage({ serial, done, of } satisfies Told)) };
	} catch (error) {
		told = { serial, fault: error instanceof Error ? error.message : String(error) };
	}
	self.postMessage(told);
};
