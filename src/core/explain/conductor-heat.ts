/** Where a conductor's working temperature comes from. */
import { workingTemperatureC } from '#core/conductors';
import type { ConductorView, Study } from '#core/rules';
import { WORKING_TEMPERATURE_SOURCE } from '#core/tables';
import { amperageInput, caseNameOf, currentInput } from './conductor-inputs.ts';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function workingTemperature(study: Study, view: ConductorView): Explanation {
	const { conductor, around, ampacity, continuous } = view;
	const { environment, ambientC, area } = around;
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
