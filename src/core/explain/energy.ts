/** Where the figures of a day of use come from. */
import { energyBalance, type EnergyBalance } from '#core/energy';
import { describe } from '#core/parts';
import type { Study } from '#core/rules';
import type { Explanation, Input } from './explanation.ts';
import type { EnergyFigure, EnergyUnit, FigureId } from './figure-id.ts';
import { explanation, input } from './write-out.ts';

const balances = new WeakMap<Study, EnergyBalance>();

/** Kept as long as the study is. */
export function balanceOf(study: Study): EnergyBalance {
	let balance = balances.get(study);
	if (!balance) balances.set(study, (balance = energyBalance(study.diagram, study.network)));
	return balance;
}

const GIVEN = { origin: 'diagram', confidence: 'given' } as const;
const SUMS = 'a day’s hours times what is drawn or brought, common practice';

const bankVolts = ({ bankV }: EnergyBalance): Input =>
	input('Ub', 'volts of the bank, as printed', bankV, 'V', { ...GIVEN, source: 'the batteries on the drawing' });

/** The figure in watt-hours, or the same over the bank's volts. */
function inUnit(
	balance: EnergyBalance,
	unit: EnergyUnit,
	what: Pick<Explanation, 'name' | 'words' | 'expression' | 'inputs'> & { readonly symbol: string; readonly wh: number }
): Explanation {
	const { wh, expression, inputs, ...rest } = what;
	if (unit === 'Wh') return explanation({ ...rest, value: wh, unit, expression, inputs, source: SUMS });
	return explanation({
		...rest,
		value: wh / balance.bankV,
		unit,
		expression: /^[\w.]+$/.test(expression) ? `${expression} / Ub` : `(${expression}) / Ub`,
		inputs: [...inputs, bankVolts(balance)],
		source: SUMS
	});
}

export function explainEnergyLoad(study: Study, part: string, unit: EnergyUnit): Explanation | null {
	const balance = balanceOf(study);
	const row = balance.loads.find((own) => own.part === part);
	const load =
		study.network.loads.find((own) => own.part === part && own.followsSource === null) ??
		study.network.loads.find((own) => own.part === part);
	if (!row || !load) return null;
	const { draw } = load;
	const drawn = { ...GIVEN, source: 'the load on the drawing' };
	const railV = draw.kind === 'current' ? row.watts / draw.amps : draw.kind === 'resistance' ? Math.sqrt(row.watts * draw.ohms) : 0;
	const volts = input('U', 'volts of its rail, as printed on what feeds it', railV, 'V', {
		...GIVEN,
		source: 'the batteries or converter on the drawing'
	});
	const [watts, inputs]: [string, Input[]] =
		draw.kind === 'power'
			? ['P', [input('P', 'rated power', draw.watts, 'W', drawn)]]
			: draw.kind === 'current'
				? ['Ir * U', [input('Ir', 'rated current', draw.amps, 'A', drawn), volts]]
				: ['U ^ 2 / R', [volts, input('R', 'resistance of the load', draw.ohms, 'Ω', drawn)]];
	const factors = [
		input('h', 'hours a day', row.hours, 'h', drawn),
		...(row.dutyShare === 1 ? [] : [input('k', 'share of those hours that it draws', row.dutyShare, '', drawn)])
	];
	const losses =
		row.efficiency === 1
			? []
			: [input('n', 'efficiency of the converters on the way', row.efficiency, '', { ...GIVEN, source: 'the converters on the drawing' })];
	return inUnit(balance, unit, {
		symbol: 'W',
		name: `What ${row.label} uses in a day`,
		wh: row.wh,
		words: `Its rated draw for its hours${losses.length > 0 ? ', and what is lost on the way from the bank' : ''}.`,
		expression: [[watts, ...factors.map(({ symbol }) => symbol)].join(' * '), ...losses.map(({ symbol }) => symbol)].join(' / '),
		inputs: [...inputs, ...factors, ...losses]
	});
}

export function explainEnergySource(study: Study, part: string, unit: EnergyUnit): Explanation | null {
	const balance = balanceOf(study);
	const row = balance.sources.find((own) => own.part === part);
	const link = row && describe(study.diagram.parts[part]!).links.find(({ kind }) => kind === 'source');
	if (!row || link?.kind !== 'source' || !link.daily) return null;
	const drawn = { ...GIVEN, source: 'the part on the drawing' };
	const { daily } = link;
	const [expression, inputs]: [string, Input[]] =
		daily.kind === 'hours'
			? [
					'Ir * h * U',
					[
						input('Ir', 'rated output', link.maxA, 'A', drawn),
						input('h', 'hours a day', daily.hours!, 'h', drawn),
						input('U', 'volts of the bank, as printed', balance.bankV, 'V', { ...GIVEN, source: 'the batteries on the drawing' })
					]
				]
			: [
					'P * h * k',
					[
						input('P', 'peak power of the array', daily.peakW!, 'W', drawn),
						input('h', 'hours of full sun a day', daily.sunHours!, 'h', drawn),
						input('k', 'share of the peak that arrives', daily.yieldShare, '', { ...drawn, confidence: 'common-practice' })
					]
				];
	return inUnit(balance, unit, {
		symbol: 'W',
		name: `What ${row.label} brings in a day`,
		wh: row.wh,
		words:
			daily.kind === 'hours'
				? 'Its rated output for its hours, at the bank’s volts.'
				: 'The array’s peak for the hours of full sun, less heat, dirt and angle.',
		expression,
		inputs
	});
}

export function explainEnergyBattery(study: Study, part: string, unit: EnergyUnit): Explanation | null {
	const balance = balanceOf(study);
	const row = balance.batteries.find((own) => own.part === part);
	if (!row) return null;
	const drawn = { ...GIVEN, source: 'the battery on the drawing' };
	return inUnit(balance, unit, {
		symbol: 'W',
		name: `What ${row.label} may give in a day`,
		wh: row.usableWh,
		words: 'Its capacity at its printed volts, and the share of it that may be used.',
		expression: 'C * U * k',
		inputs: [
			input('C', 'capacity', row.capacityAh, 'Ah', drawn),
			input('U', 'volts, as printed', row.ratedV, 'V', drawn),
			input('k', 'share that may be used', row.usableShare, '', {
				...drawn,
				source: 'the battery on the drawing, or its chemistry (common practice)',
				confidence: 'common-practice'
			})
		]
	});
}

/** A sum of rows that open in turn. */
function sumOf(
	balance: EnergyBalance,
	unit: EnergyUnit,
	rows: readonly { readonly part: string; readonly label: string; readonly wh: number; readonly ah: number }[],
	of: 'energy-load' | 'energy-source' | 'energy-battery',
	what: { readonly symbol: string; readonly name: string; readonly words: string; readonly value: number }
): Explanation {
	const inputs = rows.map(({ part, label, wh, ah }, index) =>
		input(`W${index + 1}`, label, unit === 'Wh' ? wh : ah, unit, { origin: 'computed', source: SUMS, figure: { of, part, unit } })
	);
	return explanation({ ...what, unit, expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0', inputs, source: SUMS });
}

const inputOf = (symbol: string, name: string, value: number, unit: EnergyUnit, figure: EnergyFigure): Input =>
	input(symbol, name, value, unit, { origin: 'computed', source: SUMS, figure: { of: 'energy', figure, unit } satisfies FigureId });

export function explainEnergy(study: Study, figure: EnergyFigure, unit: EnergyUnit): Explanation | null {
	const balance = balanceOf(study);
	const { totals, usableWh, usableAh, autonomyDays, autonomyWithSourcesDays } = balance;
	const of = (wh: number, ah: number): number => (unit === 'Wh' ? wh : ah);
	const use = of(totals.useWh, totals.useAh);
	const bring = of(totals.bringWh, totals.bringAh);
	const net = of(totals.netWh, totals.netAh);
	const usable = of(usableWh, usableAh);
	switch (figure) {
		case 'use':
			return sumOf(balance, unit, balance.loads, 'energy-load', {
				symbol: 'Wu',
				name: 'Used in a day',
				words: 'Every load whose hours are given, added up.',
				value: use
			});
		case 'bring':
			return sumOf(balance, unit, balance.sources, 'energy-source', {
				symbol: 'Wb',
				name: 'Brought in a day',
				words: 'Every source whose day is given, added up.',
				value: bring
			});
		case 'usable': {
			const rows = balance.batteries.map(({ part, label, usableWh, usableAh }) => ({ part, label, wh: usableWh, ah: usableAh }));
			return sumOf(balance, unit, rows, 'energy-battery', {
				symbol: 'W',
				name: 'What the bank may give',
				words: 'The usable share of every battery, added up; those kept to start an engine are left out.',
				value: usable
			});
		}
		case 'net':
			return explanation({
				symbol: 'Wn',
				name: 'Taken from the bank in a day',
				value: net,
				unit,
				words: 'What is used less what the sources bring; negative where they bring more.',
				expression: 'Wu - Wb',
				inputs: [inputOf('Wu', 'used in a day', use, unit, 'use'), inputOf('Wb', 'brought in a day', bring, unit, 'bring')],
				source: SUMS
			});
		case 'autonomy':
			return days(autonomyDays, 'Days the bank lasts alone', 'What it may give over what is used in a day, from full.', [
				inputOf('W', 'what the bank may give', usable, unit, 'usable'),
				inputOf('Wu', 'used in a day', use, unit, 'use')
			]);
		case 'autonomy-with-sources':
			return days(
				autonomyWithSourcesDays,
				'Days the bank lasts with its sources',
				'What it may give over what the sources do not bring, from full.',
				[inputOf('W', 'what the bank may give', usable, unit, 'usable'), inputOf('Wn', 'taken from the bank in a day', net, unit, 'net')]
			);
	}
}

/** Null days: nothing is used, or the sources bring as much. */
function days(value: number | null, name: string, words: string, inputs: readonly Input[]): Explanation {
	const common = { symbol: 'D', name, unit: 'days', source: SUMS };
	if (value === null)
		return explanation({
			...common,
			value: Infinity,
			words: 'Nothing is taken from it on balance.',
			expression: 'Infinity',
			inputs: [],
			text: 'no limit'
		});
	return explanation({ ...common, value, words, expression: inputs.map(({ symbol }) => symbol).join(' / '), inputs });
}
