import { checkDiagram } from '#core/check';
import { createMemory, isAlike } from '#core/memory';
import { printFor } from '#core/units';
import { answering, type SentRequest } from './check-link.ts';

let memory = createMemory();
let reader: SentRequest['reader'] | null = null;
const answer = answering((diagram) => checkDiagram(diagram, memory));

self.onmessage = ({ data }: MessageEvent<SentRequest>) => {
	// What is remembered is worded as its reader measures.
	if (reader && !isAlike(reader, data.reader)) memory = createMemory();
	reader = data.reader;
	printFor(() => data.reader);
	self.postMessage(answer(data));
};
