import { checkDiagram } from '#core/check';
import type { CheckAnswer, CheckRequest } from './checker.ts';

self.onmessage = ({ data: { serial, diagram } }: MessageEvent<CheckRequest>) => {
	let answer: CheckAnswer;
	try {
		answer = { serial, result: checkDiagram(diagram) };
	} catch (error) {
		answer = { serial, fault: error instanceof Error ? error.message : String(error) };
	}
	self.postMessage(answer);
};
