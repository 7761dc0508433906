import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { body } from '../sketch.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	crankingA: amount('Cranking current', 'A', 400, { max: 3000 }),
	thread: thread('Stud thread', 'M8')
});

const BOX = { minX: -110, minY: -50, maxX: 110, maxY: 50 };

export const starterMotor = definePart({
	kind: 'starter-motor',
	name: 'Starter motor',
	help: 'Cranks the engine for seconds at hundreds of amps. Mark its conductors as cranking: they may go without a fuse, branches off them may not.',
	group: 'loads',
	letter: 'M',
	params,
	terminals: (motor) => [
		stud('pos', 'B+', { x: -60, y: -30 }, 'north', { thread: motor.thread, role: 'positive', acceptsBlock: false }),
		stud('neg', 'B−', { x: 60, y: -30 }, 'north', { thread: motor.thread, role: 'negative', acceptsBlock: false })
	],
	links: (motor) => [
		{
			kind: 'load',
			id: 'motor',
			positive: 'pos',
			negative: 'neg',
			draw: { kind: 'current', amps: motor.crankingA },
			followsSource: null,
			reversible: false,
			critical: false
		}
	],
	outline: () => [body(BOX, 20)],
	box: () => BOX,
	summary: (motor) => ampsText(motor.crankingA)
});
