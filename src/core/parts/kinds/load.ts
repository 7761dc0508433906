import * as z from 'zod';
import { AWG_SIZES } from '#core/diagram';
import { ampsText, ohmsText, wattsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, choice, flag, hoursADay, optionalAmount, share, thread } from '../fields.ts';
import { rect } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox } from '../sketch.ts';
import { clamp, stud } from '../terminals.ts';

const params = z.strictObject({
	drawAs: choice('Draws', 'current', { current: 'a steady current (A)', power: 'a steady power (W)', resistance: 'as a resistance (Ω)' }),
	draw: amount('Rated draw', 'A, W or Ω', 5, {
		max: 50_000,
		unitBy: { param: 'drawAs', units: { current: 'A', power: 'W', resistance: 'Ω' } }
	}),
	critical: flag('Critical circuit', false, {
		hint: 'navigation lights, bilge pump, radio, panel feeder: the tight voltage-drop limit applies'
	}),
	madeForV: optionalAmount('Made for', 'V', { max: 100, whenEmpty: 'the voltage it is fed with', hint: 'nominal voltage on its label' }),
	maxFuseA: optionalAmount('Largest fuse allowed', 'A', { max: 2000, whenEmpty: 'no limit known', hint: 'by its instructions' }),
	startTimes: optionalAmount('Draws at start', '× rated', {
		max: 20,
		whenEmpty: 'no more than rated',
		hint: 'motors 3 to 8, compressors 2 to 3'
	}),
	startS: optionalAmount('Start lasts', 's', { max: 300, whenEmpty: 'not known' }),
	minV: optionalAmount('Works down to', 'V', {
		max: 100,
		whenEmpty: 'not known',
		hint: 'a compressor at its start, a radio while it transmits'
	}),
	stallA: optionalAmount('Draws when stalled', 'A', {
		max: 5000,
		whenEmpty: 'no motor, or not known',
		hint: 'locked rotor, by its data sheet'
	}),
	stallV: optionalAmount('Stalled current given at', 'V', { max: 100, whenEmpty: 'the nominal voltage' }),
	unattended: flag('Runs with nobody there', false, { hint: 'a bilge pump: when it stalls only its fuse ends it' }),
	ownLeads: choice('Own leads', 'not-known', {
		'not-known': 'none, or not known',
		...(Object.fromEntries(AWG_SIZES.slice(0, 9).map((size) => [size, `${size} AWG`])) as Record<(typeof AWG_SIZES)[number], string>)
	}),
	mustNotGoDark: flag('Must not go dark', false, { hint: 'navigation lights, alarm, distress radio: it needs a second source' }),
	signals: flag('Shares signals with other devices', false, { hint: 'data, audio or aerial leads: their negatives must be joined' }),
	hoursPerDay: hoursADay('Hours a day', { hint: 'that it is switched on' }),
	dutyShare: share('Draws for this share of them', 1, {
		hint: 'between 0.1 and 1: a compressor or heater that rests between runs, 0.3 to 0.5',
		daily: true
	}),
	reversible: flag('Works either way round', false, { hint: 'a lamp or heater: reversed polarity does no harm' }),
	connection: choice('Connected by', 'clamps', { clamps: 'clamps', studs: 'studs' }),
	thread: thread('Stud thread', 'M6'),
	...siteFields()
});

type Params = z.output<typeof params>;

const size = ({ connection }: Params) => (connection === 'studs' ? { widthMm: 120, heightMm: 92 } : { widthMm: 96, heightMm: 66 });
const box = (load: Params) => centredBox(size(load).widthMm, size(load).heightMm);

/** Height of the strip with the terminals. */
const stripMm = ({ connection }: Params): number => (connection === 'studs' ? 34 : 17);

const draw = ({ drawAs, draw }: Params) =>
	drawAs === 'power'
		? { kind: 'power' as const, watts: draw }
		: drawAs === 'current'
			? { kind: 'current' as const, amps: draw }
			: { kind: 'resistance' as const, ohms: draw };

/** The same draw at its own voltage in another unit, to four digits: a label says no more. */
function convertedDraw({ draw, drawAs, madeForV }: Params, as: Params['drawAs'], nominalV: number): number {
	const volts = madeForV ?? nominalV;
	const amps = drawAs === 'power' ? draw / volts : drawAs === 'current' ? draw : volts / draw;
	const converted = as === 'power' ? amps * volts : as === 'current' ? amps : volts / amps;
	return Math.min(50_000, Math.max(0.001, Number(converted.toPrecision(4))));
}

const drawText = ({ drawAs, draw }: Params): string =>
	drawAs === 'power' ? wattsText(draw) : drawAs === 'current' ? ampsText(draw) : ohmsText(draw);

export const load = definePart({
	kind: 'load',
	name: 'Load',
	help: 'Anything that uses current: a lamp, a pump, a radio, a fridge. Give what its label says it draws.',
	group: 'loads',
	letter: 'E',
	params,
	terminals(load) {
		const { widthMm, heightMm } = size(load);
		const at = (sign: number) => ({ x: sign * widthMm * 0.25, y: -heightMm / 2 + (load.connection === 'studs' ? 18 : 8) });
		return load.connection === 'studs'
			? [
					stud('pos', '+', at(-1), 'north', { thread: load.thread, role: 'positive', maxTerminals: 2 }),
					stud('neg', '−', at(1), 'north', { thread: load.thread, role: 'negative', maxTerminals: 2 })
				]
			: [clamp('pos', '+', at(-1), 'north', { role: 'positive' }), clamp('neg', '−', at(1), 'north', { role: 'negative' })];
	},
	links: (load) => [
		{
			kind: 'load',
			id: 'load',
			positive: 'pos',
			negative: 'neg',
			draw: draw(load),
			followsSource: null,
			reversible: load.reversible,
			critical: load.critical,
			hoursPerDay: load.hoursPerDay,
			dutyShare: load.dutyShare,
			...(load.startTimes === null ? {} : { starting: { times: Math.max(1, load.startTimes), seconds: load.startS } })
		}
	],
	outline(load) {
		const { minX, minY, maxX, maxY } = box(load);
		return [
			body({ minX, minY, maxX, maxY }, 8),
			rect(minX + 4, minY + stripMm(load), maxX - minX - 8, maxY - minY - stripMm(load) - 4, {
				stroke: 'case-edge',
				width: 0.35,
				r: 5,
				opacity: 0.7
			})
		];
	},
	nameplate(load) {
		const { minX, minY, maxX, maxY } = box(load);
		return { minX: minX + 7, minY: minY + stripMm(load) + 3, maxX: maxX - 7, maxY: maxY - 6 };
	},
	box,
	alongWith({ drawAs }, load, nominalV): Record<string, number> {
		if (drawAs === undefined || drawAs === load.drawAs) return {};
		return { draw: convertedDraw(load, drawAs as Params['drawAs'], nominalV) };
	},
	summary: drawText
});
