import { checkDiagram } from '#core/check';
import { createMemory } from '#core/memory';
import { answering, type SentRequest } from './check-link.ts';

const memory = createMemory();
const answer = answering((diagram) => checkDiagram(diagram, memory));

self.onmessage = ({ data }: MessageEvent<SentRequest>) => self.postMessage(answer(data));
