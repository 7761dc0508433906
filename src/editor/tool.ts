import type { Tool } from '#canvas';

export const SELECT: Tool = { kind: 'select' };
