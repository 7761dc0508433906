/** Where the figures of a conductor come from. */
import type { ConductorView, Study } from '#core/rules';
import { amperage, loading, surgeCurrent, worstCurrent } from './conductor-current.ts';
import { hotResistance, hotVolts, workingTemperature } from './conductor-heat.ts';
import { dropPercent, resistance, voltsLost } from './conductor-volts.ts';
import type { Explanation } from './explanation.ts';
import { explainFaultAt, worseEnd } from './fault.ts';
import type { ConductorFigure } from './figure-id.ts';
import { explainGreatestDevice } from './greatest-device.ts';
import { letThrough, letThroughAt } from './let-through.ts';
import { nodeName } from './volts-lost.ts';

export const conductorExplanations: Readonly<Record<ConductorFigure, (study: Study, view: ConductorView) => Explanation>> = {
	amperage,
	'worst-current': worstCurrent,
	loading,
	'surge-current': surgeCurrent,
	resistance,
	'volts-lost': voltsLost,
	'drop-percent': dropPercent,
	'let-through': letThrough,
	'let-through-from': (study, view) => letThroughAt(study, view, 'from'),
	'let-through-to': (study, view) => letThroughAt(study, view, 'to'),
	'greatest-device': explainGreatestDevice,
	'working-temperature': workingTemperature,
	'hot-resistance': hotResistance,
	'hot-volts': hotVolts,
	'fault-current': faultCurrent
};

function faultCurrent(study: Study, view: ConductorView): Explanation {
	const node = worseEnd(study, view.branch);
	return explainFaultAt(study, node, `Fault current of ${view.name}, at ${nodeName(study, node)}`);
}
