/** What one run remembers for the next: values kept for as long as what they are made of is the same. */
export { isAlike } from './alike.ts';
export { createMemory, isSame, type Memory } from './memory.ts';
export { Ledger } from './ledger.ts';
export { keptRecord } from './kept-record.ts';
