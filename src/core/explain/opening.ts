/** Where the time comes from after which a fuse opens: two gates of its family's curve, and a straight line between them. */
import { openingAt } from '#core/faults';
import type { ProtectiveDevice } from '#core/parts';
import { fuseFamily, fuseTimes, type Gate } from '#core/tables';
import { compactNumber } from '#core/units';
import type { Explanation, Input } from './explanation.ts';
import { explanation, input } from './write-out.ts';

/** "0.2 s", "5 min", "never". */
export function timeText(seconds: number): string {
	if (seconds === Infinity) return 'never';
	if (seconds >= 7200) return `${compactNumber(seconds / 3600)} h`;
	if (seconds >= 120) return `${compactNumber(seconds / 60)} min`;
	return seconds < 0.1 ? `${compactNumber(seconds * 1000)} ms` : `${compactNumber(seconds)} s`;
}

/** @param current opens in turn; its symbol is I */
export function explainOpening(device: ProtectiveDevice, current: Input, edge: 'earliest' | 'latest', name: string): Explanation | null {
	const opening = openingAt(device, current.value);
	if (!opening || device.family === null) return null;
	const { value: times, source, confidence } = fuseTimes(device.family);
	const table = { origin: 'table', source, confidence } as const;
	const value = edge === 'earliest' ? opening.earliestS : opening.latestS;
	const rating = input('F', 'rating of the fuse', device.ratingA, 'A', {
		origin: 'diagram',
		source: 'its rating on the drawing',
		confidence: 'given'
	});
	const common = {
		symbol: 't',
		name: `${edge === 'earliest' ? 'Earliest' : 'Latest'} opening of ${name}`,
		value,
		unit: 's',
		text: timeText(value),
		table: source,
		row: fuseFamily(device.family).name,
		source
	};
	const multiple = Math.abs(current.value) / device.ratingA;
	if (value === Infinity)
		return {
			...explanation({
				...common,
				words:
					multiple <= times.holds
						? `It carries ${compactNumber(times.holds)} times its rating for good, and this is ${compactNumber(multiple)} times.`
						: `At ${compactNumber(multiple)} times its rating the curve does not say that it must open.`,
				expression: 'Infinity',
				inputs: []
			}),
			confidence
		};
	const curve = times[edge];
	const gate = (number: 0 | 1, [multiple, timeS]: Gate): readonly [Input, Input] => [
		input(`m${number}`, 'times the rating, at a gate of the curve', multiple, '', table),
		input(`t${number}`, 'time at that gate', timeS, 's', table)
	];
	const above = curve.findIndex(([m]) => m >= multiple);
	if (above < 0) {
		const [m1, t1] = gate(1, curve.at(-1)!);
		return explanation({
			...common,
			words: 'Beyond the last gate of the curve, with the same I²t as there.',
			expression: 't1 * (m1 / (I / F)) ^ 2',
			inputs: [t1, m1, current, rating]
		});
	}
	const [m1, t1] = gate(1, curve[above]!);
	if (above === 0 || curve[above]![0] === multiple)
		return explanation({
			...common,
			words: above === 0 ? 'Before the first gate of the curve it may open as early as there.' : 'At a gate of the curve.',
			expression: 't1',
			inputs: [t1]
		});
	const [m0, t0] = gate(0, curve[above - 1]!);
	return explanation({
		...common,
		words: 'Between two gates of the curve, which is straight there on logarithmic scales.',
		expression: 't0 * (t1 / t0) ^ (log(I / F / m0) / log(m1 / m0))',
		inputs: [t0, t1, current, rating, m0, m1]
	});
}
