import * as z from 'zod';
import { chassisLink } from '../chassis.ts';
import { definePart } from '../define.ts';
import { thread } from '../fields.ts';
import { body, centredBox, metal } from '../sketch.ts';
import { chassisSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	thread: thread('Stud thread', 'M8')
});

const BOX = centredBox(48, 60);

export const chassisPoint = definePart({
	kind: 'chassis-point',
	name: 'Chassis point',
	help: 'Where the negative is bonded to chassis, hull or earth. One bond only: it carries current in a fault, not in use. All chassis points are joined by the metalwork.',
	group: 'distribution',
	letter: 'X',
	params,
	terminals: (point) => [
		stud('stud', 'chassis', { x: 0, y: -10 }, 'north', { thread: point.thread, role: 'chassis', acceptsBlock: false })
	],
	links: () => [chassisLink('stud')],
	outline: () => [body(BOX, 2), metal(-18, -24, 36, 28, 2), ...chassisSymbol(0, 18, 20)],
	box: () => BOX,
	summary: (point) => point.thread
});
