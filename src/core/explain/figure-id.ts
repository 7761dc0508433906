import type { CaseId, ConductorId, PartId, StudKey } from '#core/diagram';
import type { Condition } from '#core/faults';
import type { Finding } from '#core/rules';
import type { BandIndex } from './lens-bands.ts';
import type { LimitIndex, MeasuredLens } from './lens-limits.ts';
import type { LensId } from './lens.ts';

export const CONDUCTOR_FIGURES = [
	'amperage',
	'worst-current',
	'loading',
	'surge-current',
	'resistance',
	'volts-lost',
	'drop-percent',
	'let-through',
	'let-through-from',
	'let-through-to',
	'greatest-device',
	'working-temperature',
	'hot-resistance',
	'hot-volts',
	'fault-current'
] as const;
export type ConductorFigure = (typeof CONDUCTOR_FIGURES)[number];

/** Of a fuse, breaker, switch, shunt or piece of bar. The last three are of fuses and breakers only. */
export type DeviceFigure = 'current' | 'loading' | 'fault-current' | 'breaking' | 'opens-from' | 'opens-by';

/** Of a load while it starts, everything else as in the continuous case in which it draws most. */
export type StartFigure = 'current' | 'volts' | 'dip';

/** Of a fuse or breaker while a load behind it starts. */
export type StartDeviceFigure = 'current' | 'opens-from' | 'opens-by';

/** Of two faces under one nut. */
export const JOINT_FIGURES = ['current', 'resistance', 'volts', 'heat'] as const;
export type JointFigure = (typeof JOINT_FIGURES)[number];

export const ENERGY_FIGURES = ['use', 'bring', 'net', 'usable', 'autonomy', 'autonomy-with-sources'] as const;
export type EnergyFigure = (typeof ENERGY_FIGURES)[number];
export type EnergyUnit = 'Wh' | 'Ah';

/** What a case comes to, beside what is set in it. */
export const CASE_FIGURES = ['battery', 'loading', 'volts'] as const;
export type CaseFigure = (typeof CASE_FIGURES)[number];

/** One internal link of a part: a fuse position, a load, a battery. */
export interface LinkRef {
	readonly part: PartId;
	readonly link: string;
}

/** Names a figure on screen. Plain data. */
export type FigureId =
	| { readonly of: 'conductor'; readonly id: ConductorId; readonly figure: ConductorFigure }
	| { readonly of: 'stud'; readonly key: StudKey; readonly figure: 'volts'; readonly caseId: CaseId }
	| { readonly of: 'stud'; readonly key: StudKey; readonly figure: 'fault-current' | 'thread-left' }
	| {
			readonly of: 'joint';
			readonly key: StudKey;
			/** Layer over it, as an index into the stack's layers. */
			readonly above: number;
			readonly figure: JointFigure;
			/** Null: the case in which it is hottest. */
			readonly caseId: CaseId | null;
	  }
	| { readonly of: 'joints'; readonly key: StudKey; readonly caseId: CaseId | null }
	| ({ readonly of: 'device'; readonly figure: DeviceFigure } & LinkRef)
	| ({ readonly of: 'load'; readonly figure: 'current' | 'volts'; readonly caseId: CaseId } & LinkRef)
	| ({ readonly of: 'supply'; readonly figure: 'current' | 'volts'; readonly caseId: CaseId } & LinkRef)
	| ({ readonly of: 'start'; readonly figure: StartFigure } & LinkRef)
	| ({ readonly of: 'start-device'; readonly figure: StartDeviceFigure; readonly device: LinkRef } & LinkRef)
	| { readonly of: 'rung'; readonly load: PartId; readonly caseId: CaseId; readonly rung: number; readonly figure: 'volts' | 'share' }
	| { readonly of: 'ladder'; readonly load: PartId; readonly caseId: CaseId; readonly figure: 'total' | 'percent' }
	| { readonly of: 'case'; readonly id: CaseId; readonly figure: CaseFigure }
	| { readonly of: 'energy'; readonly figure: EnergyFigure; readonly unit: EnergyUnit }
	| { readonly of: 'energy-load' | 'energy-source' | 'energy-battery'; readonly part: PartId; readonly unit: EnergyUnit }
	/** A band of a lens with what is in it, and the value a band begins at. */
	| { readonly of: 'band'; readonly lens: LensId; readonly band: BandIndex }
	| { readonly of: 'band-limit'; readonly lens: MeasuredLens; readonly limit: LimitIndex }
	/** Into a short from one terminal to another, before anything opens. */
	| { readonly of: 'short'; readonly at: StudKey; readonly to: StudKey; readonly shortOhm: number; readonly condition: Condition }
	/** What a meter between two studs ought to read, and how far a reading is from it. */
	| { readonly of: 'between'; readonly at: StudKey; readonly to: StudKey; readonly caseId: CaseId; readonly readV: number | null }
	| { readonly of: 'finding'; readonly finding: Finding };
