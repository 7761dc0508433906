import { ampsText, compactNumber, ohmsText, voltsText, wattsText } from '#core/units';
import type { OwnParams } from './params.ts';
import type { DeviceRow } from './rows.ts';

/** What it draws or delivers, or of a part that only passes current on, what it opens at. */
export const ownSummary = ({ devices, links }: OwnParams): string =>
	[...devices.slice(0, 2).map(deviceText), ...(devices.length === 0 ? protectionText(links) : [])].join(', ');

function deviceText(row: DeviceRow): string {
	switch (row.does) {
		case 'load':
			return row.drawAs === 'power' ? wattsText(row.draw) : row.drawAs === 'current' ? ampsText(row.draw) : ohmsText(row.draw);
		case 'battery':
			return `${compactNumber(row.emfV)} V ${compactNumber(row.capacityAh)} Ah`;
		case 'source':
		case 'converter':
			return `${voltsText(row.setV)} ${ampsText(row.maxA)}`;
	}
}

/** More would not be read on a nameplate. */
const MOST = 4;

function protectionText(links: OwnParams['links']): string[] {
	const ratings = links.flatMap((row) => ((row.kind === 'fuse' || row.kind === 'breaker') && row.ratingA !== null ? [row.ratingA] : []));
	const texts = ratings.map(ampsText);
	if (new Set(texts).size === 1 && texts.length > 1) return [`${texts.length} × ${texts[0]}`];
	return texts.length === 0 ? [] : [texts.length > MOST ? `${texts.slice(0, MOST).join(' + ')} …` : texts.join(' + ')];
}
