import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, flag, hoursADay, optionalAmount, thread } from '../fields.ts';
import { circle, line } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, fixingHole } from '../sketch.ts';
import { machineSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	maxA: amount('Rated output', 'A', 100, { max: 1000 }),
	setV: amount('Regulator voltage', 'V', 14.2, { max: 80 }),
	selfLimiting: flag('Self-limiting', true, {
		hint: 'cannot deliver more than its rated output, as usual for an alternator with its own regulator'
	}),
	hotA: optionalAmount('Output when hot', 'A', {
		max: 1000,
		whenEmpty: 'taken as 0.7 of the rated output',
		hint: 'for hours, at its greatest heat'
	}),
	heatSensed: flag('Regulator watches its heat', false, { hint: 'lowers the output before the alternator is damaged' }),
	hoursPerDay: hoursADay('Hours a day', { hint: 'at its rated output' }),
	thread: thread('Output stud thread', 'M8'),
	...siteFields()
});

const BOX = centredBox(150, 150);

export const alternator = definePart({
	kind: 'alternator',
	name: 'Alternator',
	help: 'Driven by the engine; charges the start battery. Its output stud is in the engine space, so its conductor is derated for heat.',
	group: 'sources',
	letter: 'G',
	symbol: 'generator',
	params,
	terminals: (alternator) => [
		stud('pos', 'B+', { x: 34, y: -50 }, 'north', {
			thread: alternator.thread,
			role: 'positive',
			ratedA: alternator.maxA,
			maxTerminals: 2,
			acceptsBlock: false
		}),
		stud('neg', 'B−', { x: -34, y: -50 }, 'north', {
			thread: alternator.thread,
			role: 'negative',
			ratedA: alternator.maxA,
			maxTerminals: 2,
			acceptsBlock: false
		})
	],
	links: (alternator) => [
		{
			kind: 'source',
			id: 'output',
			positive: 'pos',
			negative: 'neg',
			maxA: alternator.maxA,
			setV: alternator.setV,
			fedBy: null,
			efficiency: 1,
			// The rectifier passes no current back.
			blocksReverse: true,
			alwaysOn: false,
			selfLimiting: alternator.selfLimiting,
			daily: { kind: 'hours', hours: alternator.hoursPerDay }
		}
	],
	outline: () => [
		body(BOX, 75),
		...[-1, 1].map((side) => fixingHole(side * 66, 0, 4)),
		circle(0, 0, 58, { stroke: 'case-edge', width: 0.4 }),
		// Cooling slots around the rear bell, on the lower half where no stud is.
		...Array.from({ length: 13 }, (_, slot) => {
			const angle = (Math.PI * (slot + 1)) / 14;
			const [x, y] = [Math.cos(angle), Math.sin(angle)];
			return line(x * 60, y * 60, x * 70, y * 70, { stroke: 'case-edge', width: 1.6, cap: 'round', opacity: 0.5 });
		}),
		...machineSymbol(0, -16, 30, 'G')
	],
	nameplate: () => ({ minX: -44, minY: 4, maxX: 44, maxY: 42 }),
	box: () => BOX,
	summary: (alternator) => ampsText(alternator.maxA)
});
