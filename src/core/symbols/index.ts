/** Parts as graphical symbols (IEC 60617, drawn from memory), for the symbol view. Fetched when that view is asked for. */
export { SYMBOLS } from './symbol-of.ts';
