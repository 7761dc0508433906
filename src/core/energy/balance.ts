import type { Diagram } from '#core/diagram';
import { buildNetwork, type LoadBranch, type Form } from '#core/network';
import { describe, type DailyYield, type Link } from '#core/parts';
import { ampsText, compactNumber, wattsText } from '#core/units';
import { railsOf, type Rail } from './rails.ts';
import type { EnergyBalance, LoadRow, NotGiven, SourceRow } from './types.ts';

/**
 * A day of use against a day of charging and the bank's usable share. What is not given is listed and not counted;
 * batteries kept to start an engine, and what they alone feed, are left out.
 */
export function energyBalance(diagram: Diagram, network: Form = buildNetwork(diagram)): EnergyBalance {
	const labelOf = (part: string): string => diagram.parts[part]!.label.trim() || part;
	const linkOf = <Kind extends Link['kind']>(kind: Kind, { part, link }: { part: string; link: string }) =>
		describe(diagram.parts[part]!).links.find((own): own is Extract<Link, { kind: Kind }> => own.kind === kind && own.id === link)!;

	const bank = bankOf(diagram, network, (battery) => linkOf('battery', battery));
	const rails = railsOf(network, { positives: bank.positives, volts: bank.volts });
	const inAh = (wh: number): number => wh / bank.volts;

	const loads: LoadRow[] = [];
	const sources: SourceRow[] = [];
	const notGiven: NotGiven[] = [];
	const elsewhere: string[] = [];

	for (const load of network.loads) {
		const { hoursPerDay: hours, dutyShare = 1 } = linkOf('load', load);
		if (hours === undefined) continue;
		const { part } = load;
		const rail = rails.of(load);
		if (!rail) elsewhere.push(labelOf(part));
		else if (hours === null) notGiven.push({ part, label: labelOf(part), what: 'hours a day' });
		else {
			const watts = wattsOf(load, rail);
			const wh = (watts * hours * dutyShare) / rail.efficiency;
			loads.push({ part, label: labelOf(part), watts, hours, dutyShare, wh, ah: inAh(wh), efficiency: rail.efficiency });
		}
	}
	for (const source of network.sources) {
		const { daily, maxA } = linkOf('source', source);
		if (!daily || !rails.bringsIn(source)) continue;
		const { part } = source;
		const missing = missingFrom(daily);
		if (missing !== null) notGiven.push({ part, label: labelOf(part), what: missing });
		else {
			const { wh, how } = yieldOf(daily, maxA, bank.volts);
			sources.push({ part, label: labelOf(part), wh, ah: inAh(wh), how });
		}
	}

	const useWh = loads.reduce((sum, { wh }) => sum + wh, 0);
	const bringWh = sources.reduce((sum, { wh }) => sum + wh, 0);
	const netWh = useWh - bringWh;
	return {
		loads,
		sources,
		batteries: bank.counted.map(({ battery: { part }, link: { capacityAh, usableShare = 1 }, ratedV, usableWh }) => {
			return { part, label: labelOf(part), capacityAh, ratedV, usableShare, usableWh, usableAh: inAh(usableWh) };
		}),
		totals: { useWh, useAh: inAh(useWh), bringWh, bringAh: inAh(bringWh), netWh, netAh: inAh(netWh) },
		bankV: bank.volts,
		usableWh: bank.usableWh,
		usableAh: inAh(bank.usableWh),
		autonomyDays: useWh > 0 ? bank.usableWh / useWh : null,
		autonomyWithSourcesDays: netWh > 0 ? bank.usableWh / netWh : null,
		notGiven,
		elsewhere
	};
}

type BatteryLink = Extract<Link, { kind: 'battery' }>;

/** The batteries that count. Their voltage together follows from the largest one's and the system's. */
function bankOf({ system: { nominalV } }: Diagram, { batteries }: Form, linkOf: (battery: Form['batteries'][number]) => BatteryLink) {
	const counted = batteries
		.map((battery) => ({ battery, link: linkOf(battery) }))
		.filter(({ link }) => link.keptForEngine !== true)
		.map(({ battery, link }) => {
			const ratedV = link.ratedV ?? link.emfV;
			return { battery, link, ratedV, wh: link.capacityAh * ratedV, usableWh: link.capacityAh * ratedV * (link.usableShare ?? 1) };
		});
	const largest = counted.reduce<(typeof counted)[number] | null>((best, other) => (best && best.wh >= other.wh ? best : other), null);
	return {
		counted,
		positives: counted.map(({ battery }) => battery.positive),
		volts: largest ? largest.ratedV * Math.max(1, Math.round(nominalV / largest.ratedV)) : nominalV,
		usableWh: counted.reduce((sum, { usableWh }) => sum + usableWh, 0)
	};
}

function wattsOf({ draw }: LoadBranch, { volts }: Rail): number {
	if (draw.kind === 'power') return draw.watts;
	return draw.kind === 'current' ? draw.amps * volts : volts ** 2 / draw.ohms;
}

function missingFrom(daily: DailyYield): string | null {
	if (daily.kind === 'hours') return daily.hours === null ? 'hours a day' : null;
	if (daily.peakW === null) return 'peak watts of its array';
	return daily.sunHours === null ? 'hours of full sun a day' : null;
}

function yieldOf(daily: DailyYield, maxA: number, bankV: number): { readonly wh: number; readonly how: string } {
	if (daily.kind === 'hours') {
		const hours = daily.hours!;
		return { wh: maxA * hours * bankV, how: `${ampsText(maxA)} for ${compactNumber(hours)} h` };
	}
	const { peakW, sunHours, yieldShare } = daily;
	return {
		wh: peakW! * sunHours! * yieldShare,
		how: `${wattsText(peakW!)} × ${compactNumber(sunHours!)} h × ${compactNumber(yieldShare)}`
	};
}
