/** Where a conductor's resistance and the volts lost along it come from. */
import { areaMm2, copperOhmPerM, gaugeText, jointOhm } from '#core/conductors';
import type { ConductorView, Study } from '#core/rules';
import { IACS_OHM_MM2_PER_M, IEC_60228, JOINT_OHM, METRIC_STRANDING } from '#core/tables';
import { caseNameOf, currentInput, figureOf } from './conductor-inputs.ts';
import { gaugeInput, lengthInput } from './drawn.ts';
import type { Explanation, Input } from './explanation.ts';
import { explanation, input } from './write-out.ts';

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

export function resistance(study: Study, view: ConductorView): Explanation {
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

export function voltsLost(study: Study, view: ConductorView): Explanation {
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
		related: [{ figure: figureOf(view, 'resistance'), name: `Resistance of ${view.name}` }]
	});
}

export function dropPercent(study: Study, view: ConductorView): Explanation {
	const { nominalV } = study.diagram.system;
	const lostV = view.continuous.currentA * view.branch.resistanceOhm;
	return explanation({
		symbol: 'p',
		name: `Volts lost along ${view.name}, as a share`,
		value: (100 * lostV) / nominalV,
		unit: '%',
		words: 'Of the nominal voltage, one way: the conductor back to the battery loses its own.',
		expression: '100 * U / Un',
		inputs: [
			input('U', `volts lost along ${view.name}`, lostV, 'V', {
				origin: 'computed',
				source: 'its current times its resistance',
				figure: figureOf(view, 'volts-lost')
			}),
			input('Un', 'nominal voltage of the system', nominalV, 'V', {
				origin: 'diagram',
				source: 'settings of the drawing',
				confidence: 'given'
			})
		],
		caseName: caseNameOf(study, view),
		source: 'trade practice: drops are given in percent of the nominal voltage'
	});
}
