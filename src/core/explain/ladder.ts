/** Where the figures of the volts-lost ladder come from. */
import type { PartId } from '#core/diagram';
import type { Study } from '#core/rules';
import { wattsText } from '#core/units';
import type { Explanation, Input } from './explanation.ts';
import type { FigureId } from './figure-id.ts';
import { voltsLost, type Rung, type VoltsLost } from './volts-lost.ts';
import { explanation, input } from './write-out.ts';

type Ladder = { readonly load: PartId; readonly caseId: string };

const ladders = new WeakMap<Study, Map<string, VoltsLost | null>>();

/** Kept: every rung of it may be asked for. */
function ladderOf(study: Study, { load, caseId }: Ladder): VoltsLost | null {
	let known = ladders.get(study);
	if (!known) ladders.set(study, (known = new Map()));
	const key = `${load} ${caseId}`;
	if (!known.has(key)) {
		const found = voltsLost(study, load, null, caseId);
		known.set(key, found.ok ? found : null);
	}
	return known.get(key)!;
}

const rungFigure = (of: Ladder, rung: number): FigureId => ({ of: 'rung', load: of.load, caseId: of.caseId, rung, figure: 'volts' });
const totalFigure = ({ load, caseId }: Ladder): FigureId => ({ of: 'ladder', load, caseId, figure: 'total' });

export function explainRung(study: Study, of: Ladder, at: number, figure: 'volts' | 'share'): Explanation | null {
	const ladder = ladderOf(study, of);
	const rung = ladder?.rungs[at];
	if (!ladder || !rung) return null;
	const common = { caseName: ladder.caseName, source: SOURCES[rung.what] };
	if (figure === 'volts')
		return explanation({
			...common,
			symbol: 'U',
			name: `Volts lost in ${rung.name}`,
			value: rung.volts,
			unit: 'V',
			words: `The current through it times its resistance, with everything else that flows there; it turns into ${wattsText(rung.heatW)} of heat.`,
			expression: 'I * R',
			inputs: [
				input('I', 'current through it', rung.amps, 'A', { origin: 'computed', source: 'worked out by the solver' }),
				input('R', 'resistance', rung.ohms, 'Ω', { origin: 'computed', source: SOURCES[rung.what], confidence: 'common-practice' })
			],
			related: [
				{ figure: { of: 'rung', load: of.load, caseId: of.caseId, rung: at, figure: 'share' }, name: `Share of ${rung.name}` },
				...(rung.subject.kind === 'conductor'
					? [
							{
								figure: { of: 'conductor', id: rung.subject.id, figure: 'resistance' } as const,
								name: `Resistance of ${rung.name}`
							}
						]
					: [])
			]
		});
	return explanation({
		...common,
		symbol: 'p',
		name: `Share of ${rung.name}`,
		value: rung.sharePercent,
		unit: '%',
		words: 'Of all that is lost there and back.',
		expression: ladder.totalV > 0 ? '100 * U / Ut' : '0',
		inputs:
			ladder.totalV > 0
				? [
						input('U', `lost in ${rung.name}`, rung.volts, 'V', {
							origin: 'computed',
							source: 'current times resistance',
							figure: rungFigure(of, at)
						}),
						totalInput(ladder, of)
					]
				: []
	});
}

const SOURCES: Readonly<Record<Rung['what'], string>> = {
	conductor: 'copper over its length',
	joint: 'a lug with its crimp: common practice, no source',
	fuse: 'about 80 mV at its rating: common practice, no source',
	breaker: 'about 80 mV at its rating: common practice, no source',
	switch: 'its contacts: common practice, no source',
	shunt: 'its 50 mV at its rating, and its connections: common practice, no source',
	bar: 'copper of its section: common practice, no source'
};

const totalInput = (ladder: VoltsLost, of: Ladder): Input =>
	input('Ut', 'lost there and back', ladder.totalV, 'V', { origin: 'computed', source: 'all elements added up', figure: totalFigure(of) });

export function explainLadder(study: Study, of: Ladder, figure: 'total' | 'percent'): Explanation | null {
	const ladder = ladderOf(study, of);
	if (!ladder) return null;
	const common = { caseName: ladder.caseName, source: 'Ohm’s law, element by element, from the supply to the load and back' };
	if (figure === 'percent')
		return explanation({
			...common,
			symbol: 'p',
			name: `Volts lost to ${ladder.load}, as a share`,
			value: ladder.percentOfNominal,
			unit: '%',
			words: 'Of the nominal voltage of what feeds it.',
			expression: '100 * Ut / Un',
			inputs: [
				totalInput(ladder, of),
				input('Un', 'nominal voltage', ladder.nominalV, 'V', {
					origin: 'computed',
					source: 'of 12, 24 and 48 V the nearest to the volts of its supply',
					confidence: 'common-practice'
				})
			]
		});
	const inputs = ladder.rungs.map(({ name, volts }, index) =>
		input(`U${index + 1}`, `lost in ${name}`, volts, 'V', {
			origin: 'computed',
			source: 'current times resistance',
			figure: rungFigure(of, index)
		})
	);
	return explanation({
		...common,
		symbol: 'Ut',
		name: `Volts lost to ${ladder.load}, there and back`,
		value: ladder.totalV,
		unit: 'V',
		words: 'Every element on the way of the greatest current, added up.',
		expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0',
		inputs
	});
}
