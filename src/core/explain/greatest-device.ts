/** Where the largest fuse or breaker for a conductor comes from. */
import { greatestDevice } from '#core/profiles';
import type { ConductorView, Study } from '#core/rules';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function explainGreatestDevice({ profile, diagram }: Study, { id, name, ampacity }: ConductorView): Explanation {
	const { currentA, source, reason, factor, unverified } = greatestDevice(profile, ampacity, diagram.system.nominalV);
	const confidence = unverified ? 'memory' : 'verified';
	const amperage = input('Z', 'amperage after all factors', ampacity.currentA, 'A', {
		origin: 'computed',
		source: ampacity.table,
		confidence: ampacity.unverified ? 'memory' : 'derived',
		figure: { of: 'conductor', id, figure: 'amperage' }
	});
	const common = { symbol: 'G', name: `Largest device allowed for ${name}`, value: currentA, unit: 'A', source };
	if (reason === 'factor')
		return explanation({
			...common,
			words: `What ${profile.name} allows over the amperage.`,
			expression: 'k * Z',
			inputs: [input('k', 'times the amperage allowed', factor.value, '', { origin: 'table', source, confidence }), amperage]
		});
	const [what, words] =
		reason === 'size'
			? ['what the table gives for its size', `${profile.name} gives a largest device for the size, whatever the amperage.`]
			: [
					'the next standard rating above its amperage',
					`The amperage falls between standard ratings; ${profile.name} allows the next one up.`
				];
	return explanation({
		...common,
		words,
		expression: 'Gt',
		inputs: [input('Gt', what, currentA, 'A', { origin: 'table', source, confidence })],
		related: [{ figure: { of: 'conductor', id, figure: 'amperage' }, name: `Amperage of ${name}` }]
	});
}
