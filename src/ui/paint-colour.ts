import { PALETTES, type Paint } from '#core/graphics';

export const paintColour = (paint: Paint, theme: 'light' | 'dark'): string => PALETTES[theme][paint];
