import { protectiveLink } from '../copper.ts';
import type { Link } from '../define.ts';
import type { OwnParams } from './params.ts';
import { endsOfRow, INSIDE, pairsOfRow, type DeviceRow, type LinkRow } from './rows.ts';

/** Lines whose ends are nowhere, or whose id was used before, are left out. */
export function ownLinks({ studs, links, devices }: OwnParams): Link[] {
	const places = new Set<string>([...studs.map(({ id }) => id), ...INSIDE]);
	const isSound = <Row extends LinkRow | DeviceRow>(row: Row, index: number, rows: readonly Row[]): boolean => {
		const isLoop = pairsOfRow(row).some(([[, a], [, b]]) => a === b);
		return endsOfRow(row).every(([, end]) => places.has(end)) && !isLoop && rows.findIndex(({ id }) => id === row.id) === index;
	};
	return [...links.filter(isSound).flatMap(linkOf), ...devices.filter(isSound).flatMap(deviceLinks)];
}

function linkOf(row: LinkRow): Link[] {
	const id = `link-${row.id}`;
	const between = [row.from, row.to] as const;
	switch (row.kind) {
		case 'plain':
			return [{ kind: 'segment', id, between, resistanceOhm: row.milliohm / 1000, ratedA: row.ratedA }];
		case 'switch':
		case 'shunt':
			return [{ kind: row.kind, id, between, resistanceOhm: row.milliohm / 1000, ratedA: row.ratedA }];
		case 'fuse':
		case 'breaker': {
			const { kind, ratingA, ratedV, breakingA } = row;
			const family = row.kind === 'fuse' ? row.family : null;
			return ratingA === null ? [] : [protectiveLink(id, between, { kind, ratingA, family, ratedV, breakingA })];
		}
	}
}

function deviceLinks(row: DeviceRow): Link[] {
	const id = `device-${row.id}`;
	const { positive, negative } = row;
	switch (row.does) {
		case 'load':
			return [
				{
					kind: 'load',
					id,
					positive,
					negative,
					draw: drawOf(row),
					followsSource: null,
					reversible: row.reversible,
					critical: row.critical,
					hoursPerDay: row.hoursPerDay,
					...(row.startTimes === null ? {} : { starting: { times: Math.max(1, row.startTimes), seconds: row.startS } })
				}
			];
		case 'source': {
			const { maxA, setV, blocksReverse, alwaysOn, hoursPerDay } = row;
			const daily = { kind: 'hours' as const, hours: hoursPerDay };
			return [{ kind: 'source', id, positive, negative, maxA, setV, fedBy: null, efficiency: 1, blocksReverse, alwaysOn, daily }];
		}
		case 'battery': {
			const { emfV, milliohm, capacityAh, continuousA } = row;
			const resistanceOhm = milliohm / 1000;
			// A short is fed through the same resistance as use, where nothing else is known.
			return [
				{
					kind: 'battery',
					id,
					positive,
					negative,
					emfV,
					resistanceOhm,
					faultEmfV: emfV,
					faultResistanceOhm: resistanceOhm,
					capacityAh,
					continuousA
				}
			];
		}
		case 'converter': {
			const { maxA, setV, efficiency, blocksReverse, alwaysOn, outPositive, outNegative } = row;
			const input = `${id}-in`;
			return [
				{
					kind: 'load',
					id: input,
					positive,
					negative,
					draw: { kind: 'power', watts: (maxA * setV) / efficiency },
					followsSource: id,
					reversible: false,
					critical: false
				},
				{ kind: 'source', id, positive: outPositive, negative: outNegative, maxA, setV, fedBy: input, efficiency, blocksReverse, alwaysOn }
			];
		}
	}
}

function drawOf({ drawAs, draw }: Extract<DeviceRow, { does: 'load' }>) {
	if (drawAs === 'power') return { kind: 'power' as const, watts: draw };
	return drawAs === 'current' ? { kind: 'current' as const, amps: draw } : { kind: 'resistance' as const, ohms: draw };
}
