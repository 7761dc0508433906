/**
 * Units. Every quantity in the core is a plain number whose unit stands in its name
 * (`lengthM`, `resistanceOhm`, `pitchMm`); this folder converts and prints them.
 */
export {
	celsiusFromFahrenheit,
	fahrenheitFromCelsius,
	feetFromMetres,
	inchesFromMillimetres,
	metresFromFeet,
	metresFromInches,
	millimetresFromInches,
	squareMmFromCircularMils
} from './convert.ts';
export { metresFromText } from './parse-length.ts';
export { PLAIN_READER, printFor, reader, type Reader } from './reader.ts';
export {
	ampsText,
	celsiusText,
	compactNumber,
	decimalText,
	fixedText,
	kelvinText,
	marked,
	metresText,
	millimetresText,
	ohmsText,
	percentText,
	roundedText,
	sizeText,
	tenthsText,
	voltsText,
	wattsText
} from './format.ts';
export { fieldUnit, type FieldUnit } from './field-unit.ts';
export { settled } from './settled.ts';
