/** Words of rules about conductors and their protection. */
import { compareGauges, gaugeText, thinnestGauge } from '#core/conductors';
import type { Gauge, PartId } from '#core/diagram';
import { greatestDevice, type Ampacity, type GreatestDevice } from '#core/profiles';
import type { LetThrough } from '#core/protection';
import { STANDARD_RATINGS } from '#core/tables';
import { ampsText, compactNumber, metresText } from '#core/units';
import { amperageAs } from './amperage.ts';
import type { ConductorView, Study } from './study.ts';
import { listed, partName } from './words.ts';

/** More than a limit, and not by the last digits of a solved current or a product of factors. */
export const exceeds = (value: number, limit: number): boolean => value > limit * (1 + 1e-6);

/** "F3"; where a part has several fuses, "D1 position 3". Sources that limit themselves go by their part's name. */
export function deviceName(study: Study, { part, link }: { readonly part: PartId; readonly link: string }): string {
	const view = study.part(part);
	const devices = view.links.filter(({ kind }) => kind === 'protective');
	const device = devices.find(({ id }) => id === link);
	if (!device || devices.length < 2 || !('between' in device)) return partName(view);
	const end = device.between.findLast((id) => view.terminals.some((terminal) => terminal.id === id));
	return `${partName(view)} ${view.terminals.find(({ id }) => id === end)?.label ?? link}`;
}

/** "F1 (225 A)"; several that feed in parallel show their sum: "F1 and F2 (225 A + 225 A = 450 A)". */
export function limitedByText(study: Study, { currentA, limitedBy }: LetThrough): string {
	const names = listed(limitedBy.map((device) => deviceName(study, device)));
	const sum = limitedBy.map((device) => ampsText(device.currentA)).join(' + ');
	return `${names} (${limitedBy.length > 1 && limitedBy.length <= 6 ? `${sum} = ${ampsText(currentA)}` : ampsText(currentA)})`;
}

/** "160 A", or with its factors "160 A × 0.85 (engine space) = 136 A". */
export function amperageText({ tableA, currentA, factors }: Ampacity): string {
	if (factors.length === 0) return ampsText(currentA);
	const steps = factors.map(({ name, factor }) => ` × ${compactNumber(factor, 2)} (${name})`).join('');
	return `${ampsText(tableA)}${steps} = ${ampsText(currentA)}`;
}

/** Table and factors behind an amperage, for a finding's source. */
export const amperageSource = ({ table, factors }: Ampacity): string =>
	[table, ...new Set(factors.map(({ name, source }) => `${name}: ${source}`))].join('; ');

/** Sources of one finding, each once. */
export const sources = (...texts: readonly string[]): string => [...new Set(texts)].join('; ');

/** "the next standard rating above 445 A", "1.5 × 45 A", "its amperage", "what the table gives for its size". */
export function limitText({ reason, factor }: GreatestDevice, ampacityA: number): string {
	if (reason === 'size') return 'what the table gives for its size';
	if (reason === 'next-standard') return `the next standard rating above ${ampsText(ampacityA)}`;
	return factor.value === 1 ? 'its amperage' : `${compactNumber(factor.value)} × ${ampsText(ampacityA)}`;
}

/** The largest standard rating within a limit; below the smallest one, the limit itself. */
export function largestRatingA(limitA: number): number {
	return STANDARD_RATINGS.value.findLast((ratingA) => ratingA <= limitA) ?? limitA;
}

const ampacityOf = (study: Study, view: ConductorView, gauge: Gauge): Ampacity => amperageAs(study, view, { gauge });

/** "8 AWG (80 A)": the thinnest size that satisfies, under the conductor's own conditions; null when none is thick enough. */
function thickEnough(study: Study, view: ConductorView, satisfies: (ampacity: Ampacity) => boolean): string | null {
	const { gauge } = view.conductor;
	const thicker = thinnestGauge(gauge, (other) => compareGauges(other, gauge) > 0 && satisfies(ampacityOf(study, view, other)));
	return thicker && `${gaugeText(thicker)} (${ampsText(ampacityOf(study, view, thicker).currentA)})`;
}

export const gaugeForCurrent = (study: Study, view: ConductorView, currentA: number): string | null =>
	thickEnough(study, view, (ampacity) => ampacity.currentA >= currentA);

export const gaugeForDevice = (study: Study, view: ConductorView, deviceA: number): string | null =>
	thickEnough(study, view, (ampacity) => greatestDevice(study.profile, ampacity, study.diagram.system.nominalV).currentA >= deviceA);

/** What had to be assumed about these conductors. */
export const lengthAssumptions = (views: readonly ConductorView[]): string[] =>
	views.filter(({ lengthAssumed }) => lengthAssumed).map(({ name, lengthM }) => `Length of ${name} taken as ${metresText(lengthM)}.`);

/** " The same goes for W2 and W3.", or nothing. */
export const alsoText = (study: Study, ids: readonly string[]): string =>
	ids.length === 0 ? '' : ` The same goes for ${listed(ids.map((id) => study.conductor(id).name))}.`;
