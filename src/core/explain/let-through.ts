/** Where the let-through of a conductor comes from, at each of its ends. */
import { limitsItself } from '#core/check';
import type { ConductorEnd } from '#core/diagram';
import { deviceName, listed, type ConductorView, type Study } from '#core/rules';
import type { Explanation } from './explanation.ts';
import { nodeName } from './volts-lost.ts';
import { explanation, input } from './write-out.ts';

export function letThrough(study: Study, view: ConductorView): Explanation {
	const { from, to } = study.protection(view.id);
	return letThroughAt(study, view, from.currentA >= to.currentA ? 'from' : 'to', 'The worse end counts.');
}

/** Into a fault at one end, over every way but the conductor itself where that is the shorter word. */
export function letThroughAt(study: Study, view: ConductorView, end: ConductorEnd, addition = ''): Explanation {
	const through = study.protection(view.id)[end];
	const { currentA, limitedBy, unprotectedPath } = through;
	const at = nodeName(study, study.network.nodeOfEnd.get(view.id)![end]);
	const common = {
		symbol: 'L',
		name: addition === '' ? `Let-through of ${view.name} at ${at}` : `Let-through of ${view.name}`,
		value: currentA,
		unit: 'A',
		source: 'maximum flow, minimum cut of device ratings'
	};
	if (currentA === Infinity) {
		const way = unprotectedPath.map((id) => study.conductorName(id));
		const words = `Nothing limits what reaches it at ${at}${way.length > 0 ? `: from the battery it comes over ${listed(way)}` : ''}.`;
		return explanation({
			...common,
			words,
			expression: 'Infinity',
			inputs: [],
			related: unprotectedPath
				.filter((id) => id !== view.id)
				.map((id) => ({ figure: { of: 'conductor', id, figure: 'let-through' }, name: `Let-through of ${study.conductorName(id)}` }))
		});
	}
	const inputs = limitedBy.map((device, index) => {
		const isSource = limitsItself(study, device);
		return input(`F${index + 1}`, `${deviceName(study, device)}${isSource ? ', which limits itself' : ''}`, device.currentA, 'A', {
			origin: 'diagram',
			source: isSource ? 'its rated output on the drawing' : 'its rating on the drawing',
			confidence: 'given'
		});
	});
	return explanation({
		...common,
		words:
			inputs.length === 0
				? `No source reaches it at ${at}.`
				: `The most that can flow into a fault at ${at} for long: the devices and self-limited sources that stand in every way there, added up. ${addition}`.trim(),
		expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0',
		inputs
	});
}
