/**
 * Units. Every quantity in the core is a plain number whose unit stands in its name
 * (`lengthM`, `resistanceOhm`, `pitchMm`); this folder converts and prints them.
 */
export { metresFromFeet, metresFromInches, millimetresFromInches, squareMmFromCircularMils } from './convert.ts';
export { metresFromText } from './parse-length.ts';
export { ohmsText, ampsText, voltsText, metresText, percentText, wattsText, compactNumber } from './format.ts';
export { settled } from './settled.ts';
