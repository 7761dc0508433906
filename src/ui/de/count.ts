/** "1 Leiter", "3 Leiter". */
export const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
