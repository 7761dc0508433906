/** Where a conductor's working temperature comes from, and what its copper loses at that. */
import { areaMm2, copperOhmPerM, gaugeText, jointOhm } from '#core/conductors';
import { warmOhm, workingC, type ConductorView, type Study } from '#core/rules';
import { COPPER_PER_K, IACS_OHM_MM2_PER_M, IEC_60228, JOINT_OHM, METRIC_STRANDING, WORKING_TEMPERATURE_SOURCE } from '#core/tables';
import { amperageInput, caseNameOf, currentInput, figureOf } from './conductor-inputs.ts';
import { gaugeInput, lengthInput } from './drawn.ts';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function hotResistance(study: Study, view: ConductorView): Explanation {
	const { gauge } = view.conductor;
	const isAwg = gauge.system === 'awg';
	const source = isAwg ? 'ASTM B258 (areas of AWG sizes)' : IEC_60228.source;
	const [copper, perK] = [IACS_OHM_MM2_PER_M, COPPER_PER_K];
	return explanation({
		symbol: 'Rh',
		name: `Resistance of ${view.name} at its working temperature`,
		value: warmOhm(view),
		unit: 'Ω',
		words: 'Copper over its one-way length as hot as its current makes it, and a joint with its crimp at each end.',
		expression: `${isAwg ? 'rho20 / A' : 'r20'} * (1 + a * (Tw - 20)) * L + 2 * Rj`,
		inputs: [
			...(isAwg
				? [
						input('rho20', 'resistivity of copper at 20 °C', copper.value, 'Ω·mm²/m', {
							origin: 'table',
							source: copper.source,
							confidence: copper.confidence
						}),
						gaugeInput(gauge, areaMm2(gauge))
					]
				: [
						input('r20', `resistance at 20 °C of ${gaugeText(gauge)}`, copperOhmPerM(gauge, IACS_OHM_MM2_PER_M.value), 'Ω/m', {
							origin: 'table',
							source: `${IEC_60228.source}, ${METRIC_STRANDING.value}`,
							confidence: IEC_60228.confidence
						})
					]),
			input('a', 'rise of copper’s resistance for each kelvin, at 20 °C', perK.value, '1/K', {
				origin: 'table',
				source: perK.source,
				confidence: perK.confidence
			}),
			input('Tw', 'its working temperature', workingC(view), '°C', {
				origin: 'computed',
				source: WORKING_TEMPERATURE_SOURCE,
				confidence: 'common-practice',
				figure: figureOf(view, 'working-temperature')
			}),
			lengthInput(view),
			input('Rj', 'joint and crimp at one end', jointOhm(gauge), 'Ω', {
				origin: 'table',
				source: JOINT_OHM.source,
				confidence: JOINT_OHM.confidence
			})
		],
		caseName: caseNameOf(study, view),
		table: source,
		row: gaugeText(gauge),
		source
	});
}

export const hotVolts = (study: Study, view: ConductorView): Explanation =>
	explanation({
		symbol: 'Uh',
		name: `Volts lost along ${view.name} at its working temperature`,
		value: view.continuous.currentA * warmOhm(view),
		unit: 'V',
		words: 'Its current in the worst continuous case times its resistance when that has run for hours, one way, lugs included.',
		expression: 'I * Rh',
		inputs: [
			currentInput(study, view),
			input('Rh', 'resistance at its working temperature', warmOhm(view), 'Ω', {
				origin: 'computed',
				source: 'copper as hot as its current makes it, and a joint at each end',
				confidence: 'common-practice',
				figure: figureOf(view, 'hot-resistance')
			})
		],
		caseName: caseNameOf(study, view),
		source: WORKING_TEMPERATURE_SOURCE
	});

export function workingTemperature(study: Study, view: ConductorView): Explanation {
	const { conductor, around, continuous } = view;
	const { environment, ambientC, area } = around;
	const { insulationC } = conductor;
	const drawn = { origin: 'diagram', confidence: 'given' } as const;
	return explanation({
		symbol: 'Tw',
		name: `Working temperature of ${view.name}`,
		value: workingC(view),
		unit: '°C',
		words: 'Its amperage brings it to the temperature its insulation is made for; the rise goes with the heat, the square of the current.',
		expression: continuous.currentA === 0 ? 'Ta' : 'Ta + max(0, Ti - Ta) * (I / Z) ^ 2',
		inputs: [
			input('Ta', `around it (${environment === 'engine-space' ? 'engine space' : 'outside'})`, ambientC, '°C', {
				...drawn,
				source: area ? `the area ${area} on the drawing` : 'settings of the drawing'
			}),
			...(continuous.currentA === 0
				? []
				: [
						input('Ti', 'temperature its insulation is made for', insulationC, '°C', { ...drawn, source: 'the conductor on the drawing' }),
						currentInput(study, view),
						amperageInput(view)
					])
		],
		caseName: caseNameOf(study, view),
		source: WORKING_TEMPERATURE_SOURCE
	});
}
