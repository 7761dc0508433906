/** Example systems that come with the program; the files are in static/examples. */
export { EXAMPLES, type Example } from './list.ts';
