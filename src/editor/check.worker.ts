import { checkDiagram } from '#core/check';
import { createMemory } from '#core/memory';
import { printFor } from '#core/units';
import { answering, type SentRequest } from './check-link.ts';

const memory = createMemory();
const answer = answering((diagram) => checkDiagram(diagram, memory));

self.onmessage = ({ data }: MessageEvent<SentRequest>) => {
	printFor(() => data.reader);
	self.postMessage(answer(data));
};
