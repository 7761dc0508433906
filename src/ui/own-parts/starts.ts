/** What a new part can begin as: studs, links and figures of the usual sort, all of them to be changed. */
import { ownParams, type OwnParams } from '#core/parts';

const poles = (widthMm: number) => [
	{ id: 's1', name: '+', role: 'positive' as const, leftMm: widthMm * 0.25, topMm: 20 },
	{ id: 's2', name: '−', role: 'negative' as const, leftMm: widthMm * 0.75, topMm: 20 }
];

const between = { id: 'd1', positive: 's1', negative: 's2' };

const row = (names: readonly string[], widthMm: number, topMm: number, side: 'north' | 'south', role: 'positive' | 'either') =>
	names.map((name, index) => ({
		id: `${side === 'north' ? 'a' : 'b'}${index + 1}`,
		name,
		role,
		side,
		leftMm: Math.round((widthMm * (index + 0.5)) / names.length),
		topMm
	}));

const STARTS = {
	plain: () => ({ name: '', letter: 'X' as const }),
	load: () => ({ name: '', letter: 'E' as const, studs: poles(120), devices: [{ does: 'load' as const, ...between }] }),
	source: () => ({ name: '', letter: 'T' as const, studs: poles(120), devices: [{ does: 'source' as const, ...between }] }),
	battery: () => ({
		name: '',
		letter: 'G' as const,
		widthMm: 200,
		heightMm: 120,
		studs: poles(200),
		devices: [{ does: 'battery' as const, ...between }]
	}),
	converter: () => ({
		name: '',
		letter: 'T' as const,
		widthMm: 160,
		heightMm: 100,
		studs: row(['IN +', 'IN −', 'OUT −', 'OUT +'], 160, 80, 'south', 'either').map((stud, index) => ({
			...stud,
			role: index % 3 === 0 ? ('positive' as const) : ('negative' as const)
		})),
		devices: [{ does: 'converter' as const, id: 'd1', positive: 'b1', negative: 'b2', outNegative: 'b3', outPositive: 'b4' }]
	}),
	switch: () => ({
		name: '',
		letter: 'Q' as const,
		widthMm: 100,
		heightMm: 80,
		studs: [
			{ id: 's1', name: '1', side: 'west' as const, leftMm: 20, topMm: 40 },
			{ id: 's2', name: '2', side: 'east' as const, leftMm: 80, topMm: 40 }
		],
		links: [{ kind: 'switch' as const, id: 'l1', from: 's1', to: 's2' }]
	}),
	fuses: () => ({
		name: '',
		letter: 'F' as const,
		widthMm: 160,
		heightMm: 110,
		studs: [...row(['IN'], 160, 22, 'north', 'positive'), ...row(['1', '2', '3', '4'], 160, 88, 'south', 'positive')],
		links: [1, 2, 3, 4].map((n) => ({ kind: 'fuse' as const, id: `l${n}`, from: 'a1', to: `b${n}` }))
	})
};

export type StartId = keyof typeof STARTS;
export const START_IDS = Object.keys(STARTS) as readonly StartId[];

export const startOf = (id: StartId): OwnParams => ownParams.parse(STARTS[id]());
