/** Where a conductor's amperage, its currents and its loading come from. */
import { gaugeText } from '#core/conductors';
import type { ConductorView, Study, WorstCurrent } from '#core/rules';
import type { Confidence } from '#core/tables';
import { explainBranchCurrent } from './branch.ts';
import { amperageInput, caseNameOf, currentInput, resistanceInput } from './conductor-inputs.ts';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';
import { celsiusText } from '#core/units';

export function amperage(_: Study, view: ConductorView): Explanation {
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
		row: `${gaugeText(conductor.gauge)}, ${celsiusText(conductor.insulationC)} insulation`,
		source: ampacity.table
	});
}

export function worstCurrent(study: Study, view: ConductorView): Explanation {
	return currentThrough(
		study,
		view,
		view.continuous,
		`Greatest continuous current in ${view.name}`,
		'the continuous case in which it carries most'
	);
}

export function surgeCurrent(study: Study, view: ConductorView): Explanation {
	return currentThrough(
		study,
		view,
		view.surge,
		`Greatest current in ${view.name}, short loads counted`,
		'the case of all in which it carries most'
	);
}

function currentThrough(study: Study, view: ConductorView, worst: WorstCurrent, name: string, which: string): Explanation {
	return explainBranchCurrent(study, view.branch, worst, { name, which, resistance: resistanceInput(view) });
}

/** A share of the amperage, as the lens of loading shows it. */
export function loading(study: Study, view: ConductorView): Explanation {
	const { continuous, ampacity } = view;
	const isIdle = continuous.currentA === 0;
	return explanation({
		symbol: 'p',
		name: `Loading of ${view.name}`,
		value: isIdle ? 0 : (100 * continuous.currentA) / ampacity.currentA,
		unit: '%',
		words: isIdle ? 'No continuous case sends current through it.' : 'Current in the worst continuous case, as a share of the amperage.',
		expression: isIdle ? '0' : '100 * I / Z',
		inputs: isIdle ? [] : [currentInput(study, view), amperageInput(view)],
		caseName: caseNameOf(study, view),
		source: ampacity.table
	});
}
