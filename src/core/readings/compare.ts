/**
 * Readings against the model: which one joint, conductor or battery, if its resistance were higher than drawn, explains
 * the difference. Batteries may stand higher or lower than the model and loads may draw more or less than their plate
 * says, so both are fitted along; what those can explain is blamed on no joint.
 */
import type { NodeIndex } from '#core/network';
import { fixedPoint } from './fixed-point.ts';
import { fitter, type Fitter, type Nuisance } from './least-squares.ts';
import type { Responses } from './responses.ts';
import type { Comparison, Reading, Suspect, SuspectRef, Verdict } from './types.ts';

/** How far a real battery's volts stray from the model, and real loads from their plates: common practice, no source. */
const BATTERY_SPREAD_V = 0.5;
const DRAW_SPREAD = 0.05;
/** A suspect must take away this much more than chance would by trying all of them (natural units of χ²). */
const LEAST_GAIN = 9;
/** Two suspects nearer than this are not told apart: odds of about 20 to 1 (e³). */
const TELLS_APART = 6;
/** Where more than this share stays unexplained, and it is beyond the meter's error, no single suspect is named. */
const LEAST_EXPLAINED = 0.8;
/** So many spreads away, batteries and loads are not what was drawn. */
const ABSURD = 5;
/** Suspects worth more than a straight line. */
const LOOKED_AT = 6;

/** @param noiseV standard deviation of one reading, volts */
export function compareReadings(responses: Responses | null, readings: readonly Reading[], noiseV: number): Comparison {
	if (!responses) return nothing(readings, { kind: 'collapsed' });
	const at = (nodeV: Float64Array): number[] => readings.map(({ at: red, to }) => nodeV[red]! - nodeV[to]!);
	const modelV = at(responses.base.nodeV);
	const nuisances: Nuisance[] = [
		{ response: at(responses.perBatteryV), spread: BATTERY_SPREAD_V },
		{ response: at(responses.perDraw), spread: DRAW_SPREAD }
	];
	const fitting = fitter(
		readings.map(({ volts }, i) => volts - modelV[i]!),
		noiseV,
		nuisances
	);

	const ranked = rank(responses, fitting, at);
	const judged: Verdict = readings.length < 2 ? { kind: 'too-few' } : judge(ranked, fitting, readings.length, responses.suspects.length);
	const suspect = blamedBy(judged);
	const response = suspect ? secant(responses, suspect.ref, suspect.extraOhm, at) : modelV.map(() => 0);
	const amount = suspect?.extraOhm ?? 0;
	const [batteryOffsetV, drawChange] = fitting.nuisances(response, amount) as [number, number];
	// An explanation that needs batteries or loads as there are none is no explanation.
	const isAbsurd = Math.abs(batteryOffsetV) > ABSURD * BATTERY_SPREAD_V || Math.abs(drawChange) > ABSURD * DRAW_SPREAD;
	const verdict: Verdict = isAbsurd && judged.kind !== 'too-few' ? { kind: 'none-explains', nearest: null } : judged;
	return {
		modelV,
		fittedV: modelV.map(
			(volts, i) => volts + amount * response[i]! + batteryOffsetV * nuisances[0]!.response[i]! + drawChange * nuisances[1]!.response[i]!
		),
		batteryOffsetV,
		drawChange,
		verdict,
		next: verdict.kind === 'several' ? nextReadings(responses, verdict.suspects, readings, noiseV) : []
	};
}

function blamedBy(verdict: Verdict): Suspect | null {
	if (verdict.kind === 'found') return verdict.suspect;
	return verdict.kind === 'several' ? verdict.suspects[0]! : null;
}

const nothing = (readings: readonly Reading[], verdict: Verdict): Comparison => ({
	modelV: readings.map(() => NaN),
	fittedV: readings.map(() => NaN),
	batteryOffsetV: 0,
	drawChange: 0,
	verdict,
	next: []
});

type AtReadings = (nodeV: Float64Array) => number[];

/** The suspects that gain most, each with its true response instead of the straight line. */
function rank(responses: Responses, fitting: Fitter, at: AtReadings): Suspect[] {
	const rough = responses.suspects
		.map((ref) => ({ ref, ...fitting.fit(at(responses.perOhm(ref))) }))
		.filter(({ gain }) => gain > 0)
		.sort((a, b) => b.gain - a.gain)
		.slice(0, LOOKED_AT);
	return rough
		.map(({ ref, amount, uncertainty, gain }) => {
			// The response bends: what is added to a joint changes the current through it.
			const settled = fixedPoint((ohms) => fitting.fit(secant(responses, ref, ohms, at)).amount, amount);
			const fit = settled > 0 ? fitting.fit(secant(responses, ref, settled, at)) : { amount, uncertainty, gain };
			const point = responses.withExtra(ref, fit.amount) ?? responses.base;
			const currentA = Math.abs(ref.kind === 'branch' ? point.branchA[ref.index]! : point.batteryA[ref.index]!);
			return {
				ref,
				extraOhm: fit.amount,
				uncertaintyOhm: fit.uncertainty,
				currentA,
				heatW: currentA ** 2 * fit.amount,
				explains: fitting.misfit > 0 ? Math.min(1, fit.gain / fitting.misfit) : 0,
				gain: fit.gain
			};
		})
		.sort((a, b) => b.gain - a.gain);
}

/**
 * Volts by reading for each ohm of a suspect, between none and `ohms`. A first, straight guess may be more than the
 * system stands; then the span is halved until there is a solution.
 */
function secant(responses: Responses, ref: SuspectRef, ohms: number, at: AtReadings): number[] {
	for (let span = ohms; span > ohms / 100; span /= 2) {
		const point = responses.withExtra(ref, span);
		if (point) return at(Float64Array.from(point.nodeV, (volts, i) => (volts - responses.base.nodeV[i]!) / span));
	}
	return at(responses.perOhm(ref));
}

function judge(ranked: readonly Suspect[], { misfit }: Fitter, readingCount: number, suspectCount: number): Verdict {
	const [best] = ranked;
	const spare = Math.max(1, readingCount - 2);
	// Mean and three standard deviations of χ²: more than that is not the meter.
	const chanceMisfit = spare + 3 * Math.sqrt(2 * spare);
	if (!best || best.gain < LEAST_GAIN + 2 * Math.log(Math.max(1, suspectCount))) {
		return misfit <= chanceMisfit ? { kind: 'agrees' } : { kind: 'none-explains', nearest: best ?? null };
	}
	if (best.explains < LEAST_EXPLAINED && misfit - best.gain > chanceMisfit) return { kind: 'none-explains', nearest: best };
	const alike = ranked.filter(({ gain }) => best.gain - gain < TELLS_APART);
	return alike.length > 1 ? { kind: 'several', suspects: alike } : { kind: 'found', suspect: best };
}

const NEXT_COUNT = 3;

/** Nodes at which the suspects, each as large as its estimate, would read most apart. */
function nextReadings(responses: Responses, suspects: readonly Suspect[], readings: readonly Reading[], noiseV: number): NodeIndex[] {
	const [first] = readings;
	if (!first) return [];
	const responsesV = suspects.map(({ ref, extraOhm }) => responses.perOhm(ref).map((perOhm) => perOhm * extraOhm));
	const apartV = (node: NodeIndex): number => {
		const volts = responsesV.map((response) => response[node]! - response[first.to]!);
		return Math.max(...volts) - Math.min(...volts);
	};
	return Array.from(responses.base.nodeV, (_, node) => ({ node, apartV: apartV(node) }))
		.filter(({ apartV: volts }) => volts > 2 * noiseV)
		.sort((a, b) => b.apartV - a.apartV)
		.slice(0, NEXT_COUNT)
		.map(({ node }) => node);
}
