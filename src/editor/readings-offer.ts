/** Readings kept in the diagram, held against the model of their case, as plain data with names as on the drawing. */
import { itemKey, studKey, type CaseId, type Diagram, type ItemKey, type StudKey, type TakenReading } from '#core/diagram';
import { studyOf } from '#core/explain';
import { islandsOf, type Branch } from '#core/network';
import { compareReadings, responsesOf, type Reading, type Suspect, type Verdict } from '#core/readings';
import { deviceName, partName, type Study } from '#core/rules';
import { nodeNames, terminalOf } from './node-names.ts';

export interface ReadingsAsk {
	readonly caseId: CaseId;
	/** Standard deviation of one reading, volts. */
	readonly noiseV: number;
}

export interface SuspectOffer extends Pick<Suspect, 'extraOhm' | 'uncertaintyOhm' | 'currentA' | 'heatW' | 'explains'> {
	readonly key: ItemKey;
	/** "W3", "D1 position 3", "B1". */
	readonly name: string;
	readonly kind: Branch['kind'] | 'fuse' | 'breaker' | 'battery';
	/** Ends of a conductor or a bar between them; empty for what has a name of its own. */
	readonly between: readonly string[];
}

export interface ReadingsOffer {
	/** By id of the reading; null where the model has no volts between these two. */
	readonly modelV: Readonly<Record<string, number | null>>;
	readonly verdict: Verdict['kind'];
	/** Likeliest first; the nearest one where none explains. */
	readonly suspects: readonly SuspectOffer[];
	/** Worth reading next, against the first reading's black lead. */
	readonly next: readonly { readonly at: StudKey; readonly name: string }[];
	readonly batteryOffsetV: number;
	readonly drawChange: number;
	/** Left out of the comparison, because no current can tie their two leads together. */
	readonly apart: readonly string[];
}

export function readingsOffer(diagram: Diagram, { caseId, noiseV }: ReadingsAsk): ReadingsOffer {
	const study = studyOf(diagram);
	const { network } = study;
	const operatingCase = diagram.cases[caseId];
	if (!operatingCase) throw new Error(`There is no case "${caseId}".`);
	const mine = Object.entries(diagram.readings).filter(([, reading]) => reading.case === caseId);
	const island = islandsOf(network);
	const node = (ref: TakenReading['at']) => network.nodeOf.get(studKey(ref));
	const measurable = mine.flatMap(([id, { at, to, volts }]) => {
		const [red, black] = [node(at), node(to)];
		return red === undefined || black === undefined || !island.same(red, black) ? [] : [{ id, at: red, to: black, volts }];
	});
	const responses = responsesOf(network, operatingCase);
	const taken = measurable.filter((reading): reading is typeof reading & Reading => reading.volts !== null);
	const { verdict, next, batteryOffsetV, drawChange } = compareReadings(responses, taken, noiseV);
	const stud = terminalOf(study);
	const volts = new Map(measurable.map(({ id, at, to }) => [id, responses ? responses.base.nodeV[at]! - responses.base.nodeV[to]! : null]));
	return {
		modelV: Object.fromEntries(mine.map(([id]) => [id, volts.get(id) ?? null])),
		verdict: verdict.kind,
		suspects: suspectsOf(verdict).map((suspect) => suspectOffer(study, suspect)),
		next: next.flatMap((at) => {
			const key = stud(at);
			return key === undefined ? [] : [{ at: key, name: study.studName(key) }];
		}),
		batteryOffsetV,
		drawChange,
		apart: mine.filter(([id]) => !volts.has(id)).map(([id]) => id)
	};
}

function suspectsOf(verdict: Verdict): readonly Suspect[] {
	if (verdict.kind === 'found') return [verdict.suspect];
	if (verdict.kind === 'several') return verdict.suspects;
	return verdict.kind === 'none-explains' && verdict.nearest ? [verdict.nearest] : [];
}

function suspectOffer(study: Study, { ref, extraOhm, uncertaintyOhm, currentA, heatW, explains }: Suspect): SuspectOffer {
	const figures = { extraOhm, uncertaintyOhm, currentA, heatW, explains };
	if (ref.kind === 'battery') {
		const { part } = study.network.batteries[ref.index]!;
		return { ...figures, key: itemKey('part', part), name: partName(study.part(part)), kind: 'battery', between: [] };
	}
	const { origin, kind, device, a, b } = study.network.branches[ref.index]!;
	if (origin.kind === 'conductor') {
		const { from, to } = study.diagram.conductors[origin.id]!;
		const between = [from, to].map((end) => study.studName(studKey(end)));
		return { ...figures, key: itemKey('conductor', origin.id), name: study.conductorName(origin.id), kind, between };
	}
	const key = itemKey('part', origin.part);
	if (device) return { ...figures, key, name: deviceName(study, origin), kind: device.kind, between: [] };
	const names = nodeNames(study);
	return { ...figures, key, name: partName(study.part(origin.part)), kind, between: kind === 'segment' ? [names(a), names(b)] : [] };
}
