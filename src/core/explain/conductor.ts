/** Where the figures of a conductor come from. */
import { areaMm2, copperOhmPerM, gaugeText, jointOhm, workingTemperatureC } from '#core/conductors';
import { deviceName, listed, type ConductorView, type Study } from '#core/rules';
import { IACS_OHM_MM2_PER_M, IEC_60228, JOINT_OHM, METRIC_STRANDING, WORKING_TEMPERATURE_SOURCE, type Confidence } from '#core/tables';
import { gaugeInput, lengthInput } from './drawn.ts';
import type { ConductorFigure, Explanation, FigureId, Input } from './explanation.ts';
import { explainFaultAt, worseEnd } from './fault.ts';
import { nodeName } from './volts-lost.ts';
import { explanation, input } from './write-out.ts';

const SOLVED = 'worked out by the solver: Kirchhoff’s laws over the whole drawing';

export const conductorExplanations: Readonly<Record<ConductorFigure, (study: Study, view: ConductorView) => Explanation>> = {
	amperage,
	'worst-current': worstCurrent,
	resistance,
	'volts-lost': voltsLost,
	'let-through': letThrough,
	'working-temperature': workingTemperature,
	'fault-current': faultCurrent
};

const figureOf = ({ id }: ConductorView, figure: ConductorFigure): FigureId => ({ of: 'conductor', id, figure });

function amperage(_: Study, view: ConductorView): Explanation {
	const { ampacity, name, conductor } = view;
	const confidence: Confidence = ampacity.unverified ? 'memory' : 'verified';
	const factors = ampacity.factors.map((factor, index) =>
		input(`k${index + 1}`, `factor for ${factor.name}`, factor.factor, '', { origin: 'table', source: factor.source, confidence })
	);
	return explanation({
		symbol: 'Z',
		name: `Amperage of ${name}`,
		value: ampacity.currentA,
		unit: 'A',
		words: 'What the table gives for this size and insulation, times every factor that applies.',
		expression: ['T', ...factors.map(({ symbol }) => symbol)].join(' * '),
		inputs: [
			input('T', 'amperage in the table', ampacity.tableA, 'A', { origin: 'table', source: ampacity.table, confidence }),
			...factors
		],
		table: ampacity.table,
		row: `${gaugeText(conductor.gauge)}, ${conductor.insulationC} °C insulation`,
		source: ampacity.table
	});
}

function worstCurrent(study: Study, view: ConductorView): Explanation {
	const { branch, continuous } = view;
	const common = {
		symbol: 'I',
		name: `Greatest continuous current in ${view.name}`,
		value: continuous.currentA,
		unit: 'A',
		source: SOLVED
	};
	const result = study.cases.find(({ id }) => id === continuous.caseId);
	if (!result) return explanation({ ...common, words: 'No continuous case sends current through it.', expression: '0', inputs: [] });
	const volts = (symbol: string, node: number) =>
		input(symbol, `volts at ${nodeName(study, node)}`, result.point.nodeV[node]!, 'V', { origin: 'computed', source: SOLVED });
	const label = result.operatingCase.label.trim() || result.id;
	return explanation({
		...common,
		words: `The volts between its ends over its resistance, in "${label}", the continuous case in which it carries most.`,
		expression: 'abs(U1 - U2) / R',
		inputs: [volts('U1', branch.a), volts('U2', branch.b), resistanceInput(view)],
		caseName: label
	});
}

const resistanceInput = (view: ConductorView): Input =>
	input('R', `resistance of ${view.name}, lugs included`, view.branch.resistanceOhm, 'Ω', {
		origin: 'computed',
		source: 'copper over its length and a joint at each end',
		figure: figureOf(view, 'resistance')
	});

/** Resistivity over area for AWG; the greatest resistance IEC 60228 allows, at another temperature, for metric sizes. */
function copper({ profile }: Study, view: ConductorView): { expression: string; inputs: Input[]; source: string; row: string } {
	const { gauge } = view.conductor;
	const rho = profile.dropResistivity;
	const joint = input('Rj', 'joint and crimp at one end', jointOhm(gauge), 'Ω', {
		origin: 'table',
		source: JOINT_OHM.source,
		confidence: JOINT_OHM.confidence
	});
	const resistivity = input('rho', 'resistivity of copper in service', rho.value, 'Ω·mm²/m', {
		origin: 'table',
		source: rho.source,
		confidence: rho.confidence
	});
	if (gauge.system === 'awg')
		return {
			expression: 'rho * L / A + 2 * Rj',
			inputs: [resistivity, lengthInput(view), gaugeInput(gauge, areaMm2(gauge)), joint],
			source: 'ASTM B258 (areas of AWG sizes)',
			row: gaugeText(gauge)
		};
	const at20 = input('r', `resistance at 20 °C of ${gaugeText(gauge)}`, copperOhmPerM(gauge, IACS_OHM_MM2_PER_M.value), 'Ω/m', {
		origin: 'table',
		source: `${IEC_60228.source}, ${METRIC_STRANDING.value}`,
		confidence: IEC_60228.confidence
	});
	const rho20 = input('rho20', 'resistivity of copper at 20 °C', IACS_OHM_MM2_PER_M.value, 'Ω·mm²/m', {
		origin: 'table',
		source: IACS_OHM_MM2_PER_M.source,
		confidence: IACS_OHM_MM2_PER_M.confidence
	});
	return {
		expression: 'r * rho / rho20 * L + 2 * Rj',
		inputs: [at20, resistivity, rho20, lengthInput(view), joint],
		source: IEC_60228.source,
		row: gaugeText(gauge)
	};
}

function resistance(study: Study, view: ConductorView): Explanation {
	const { expression, inputs, source, row } = copper(study, view);
	return explanation({
		symbol: 'R',
		name: `Resistance of ${view.name}`,
		value: view.branch.resistanceOhm,
		unit: 'Ω',
		words: 'Copper over its one-way length, and a joint with its crimp at each end.',
		expression,
		inputs,
		table: source,
		row,
		source
	});
}

const currentInput = (study: Study, view: ConductorView): Input =>
	input('I', 'current in its worst continuous case', view.continuous.currentA, 'A', {
		origin: 'computed',
		source: SOLVED,
		figure: figureOf(view, 'worst-current')
	});

const caseNameOf = (study: Study, { continuous: { caseId } }: ConductorView): string | null =>
	caseId === null ? null : study.diagram.cases[caseId]!.label.trim() || caseId;

function voltsLost(study: Study, view: ConductorView): Explanation {
	const { expression, inputs, source, row } = copper(study, view);
	return explanation({
		symbol: 'U',
		name: `Volts lost along ${view.name}`,
		value: view.continuous.currentA * view.branch.resistanceOhm,
		unit: 'V',
		words: 'Its current in the worst continuous case times its resistance, one way, lugs included.',
		expression: `I * (${expression})`,
		inputs: [currentInput(study, view), ...inputs],
		caseName: caseNameOf(study, view),
		table: source,
		row,
		source,
		related: [figureOf(view, 'resistance')]
	});
}

function letThrough(study: Study, view: ConductorView): Explanation {
	const { from, to, currentA } = study.protection(view.id);
	const [worse, end] = from.currentA >= to.currentA ? [from, 'from' as const] : [to, 'to' as const];
	const common = {
		symbol: 'L',
		name: `Let-through of ${view.name}`,
		value: currentA,
		unit: 'A',
		source: 'maximum flow, minimum cut of device ratings'
	};
	const at = nodeName(study, study.network.nodeOfEnd.get(view.id)![end]);
	if (currentA === Infinity) {
		const way = worse.unprotectedPath.map((id) => study.conductorName(id));
		const words = `Nothing limits what reaches it at ${at}${way.length > 0 ? `: from the battery it comes over ${listed(way)}` : ''}.`;
		return explanation({
			...common,
			words,
			expression: 'Infinity',
			inputs: [],
			related: worse.unprotectedPath.map((id) => ({ of: 'conductor', id, figure: 'let-through' }))
		});
	}
	const inputs = worse.limitedBy.map((device, index) =>
		input(`F${index + 1}`, deviceName(study, device), device.currentA, 'A', {
			origin: 'diagram',
			source: 'its rating on the drawing',
			confidence: 'given'
		})
	);
	return explanation({
		...common,
		words:
			inputs.length === 0
				? 'No source reaches it.'
				: `The most that can flow into a fault at ${at} for long: the devices and self-limited sources that stand in every way there, added up. The worse end counts.`,
		expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0',
		inputs
	});
}

function workingTemperature(study: Study, view: ConductorView): Explanation {
	const { conductor, ampacity, continuous } = view;
	const { outsideC, engineSpaceC } = study.diagram.ambient;
	const ambientC = conductor.environment === 'engine-space' ? engineSpaceC : outsideC;
	const { insulationC } = conductor;
	const drawn = { origin: 'diagram', confidence: 'given' } as const;
	return explanation({
		symbol: 'Tw',
		name: `Working temperature of ${view.name}`,
		value: workingTemperatureC({ ambientC, insulationC, currentA: continuous.currentA, ampacityA: ampacity.currentA }),
		unit: '°C',
		words: 'Its amperage brings it to the temperature its insulation is made for; the rise goes with the heat, the square of the current.',
		expression: continuous.currentA === 0 ? 'Ta' : 'Ta + max(0, Ti - Ta) * (I / Z) ^ 2',
		inputs: [
			input('Ta', `around it (${conductor.environment === 'engine-space' ? 'engine space' : 'outside'})`, ambientC, '°C', {
				...drawn,
				source: 'settings of the drawing'
			}),
			...(continuous.currentA === 0
				? []
				: [
						input('Ti', 'temperature its insulation is made for', insulationC, '°C', { ...drawn, source: 'the conductor on the drawing' }),
						currentInput(study, view),
						input('Z', 'amperage after all factors', ampacity.currentA, 'A', {
							origin: 'computed',
							source: ampacity.table,
							confidence: ampacity.unverified ? 'memory' : 'common-practice',
							figure: figureOf(view, 'amperage')
						})
					])
		],
		caseName: caseNameOf(study, view),
		source: WORKING_TEMPERATURE_SOURCE
	});
}

function faultCurrent(study: Study, view: ConductorView): Explanation {
	const node = worseEnd(study, view.branch);
	return explainFaultAt(study, node, `Fault current of ${view.name}, at ${nodeName(study, node)}`);
}
