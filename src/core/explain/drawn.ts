/** Inputs that stand on the drawing. */
import { gaugeText } from '#core/conductors';
import type { Gauge } from '#core/diagram';
import type { ConductorView } from '#core/rules';
import type { Input } from './explanation.ts';
import { input } from './write-out.ts';

export const lengthInput = ({ lengthM, lengthAssumed, name }: ConductorView): Input =>
	input('L', `one-way length of ${name}`, lengthM, 'm', {
		origin: lengthAssumed ? 'assumed' : 'diagram',
		source: lengthAssumed ? 'assumed: the drawing gives none' : 'the conductor on the drawing',
		confidence: 'given'
	});

export const gaugeInput = (gauge: Gauge, areaMm2: number): Input =>
	input('A', `copper of ${gaugeText(gauge)}`, areaMm2, 'mm²', { origin: 'table', source: 'ASTM B258', confidence: 'verified' });
