import { checkDiagram } from '#core/check';
import type { Diagram } from '#core/diagram';
import { createMemory } from '#core/memory';
import type { CheckAnswer, CheckRequest } from './checker.ts';
import { shareUnchanged } from './share-unchanged.ts';

let last: Diagram | null = null;
const memory = createMemory();

self.onmessage = ({ data: { serial, diagram } }: MessageEvent<CheckRequest>) => {
	let answer: CheckAnswer;
	try {
		last = shareUnchanged(last, diagram);
		answer = { serial, result: checkDiagram(last, memory) };
	} catch (error) {
		answer = { serial, fault: error instanceof Error ? error.message : String(error) };
	}
	self.postMessage(answer);
};
