import { addConductor, addPart, freshId, nextLabel, reconnectConductor, type ConductorId } from '#core/diagram';
import { usedLengthM } from '#core/network';
import { placedTerminal } from '#core/layout';
import { pointBetween } from '#core/geometry';
import type { Study } from '#core/rules';
import type { RemedyKind } from './types.ts';

/** From the switch on to where the conductor led, metres. */
const TAIL_M = 0.3;
const MOST_TRIED = 4;
/** Ratings in which switches are made, amps: common practice, no source. */
const RATINGS_A = [100, 150, 200, 250, 300, 350, 400, 500, 600];

/** A battery disconnect in the main conductor: the one that carries most and leaves all loads behind a switch. */
export const addDisconnect: RemedyKind = {
	rules: ['main-disconnect-missing'],

	*propose(study) {
		const { diagram } = study;
		const mains = study.conductors
			.filter(({ id }) => poleOf(study, id) === 'positive')
			.sort((a, b) => b.continuous.currentA - a.continuous.currentA)
			.slice(0, MOST_TRIED);
		for (const { id, continuous, lengthM } of mains) {
			const conductor = diagram.conductors[id]!;
			const [from, to] = [placedTerminal(diagram, conductor.from), placedTerminal(diagram, conductor.to)];
			const ratedA = RATINGS_A.find((amps) => amps >= continuous.currentA);
			if (!from || !to || ratedA === undefined) continue;
			const part = freshId(diagram.parts, 'S');
			const label = nextLabel(diagram, 'S');
			const { gauge, insulationC, environment, sheathed } = conductor;
			yield {
				title: `Put battery disconnect ${label} (${ratedA} A) into ${study.conductorName(id)}`,
				commands: [
					addPart({ id: part, part: { kind: 'battery-disconnect', label, at: pointBetween(from.at, to.at, 0.5), params: { ratedA } } }),
					reconnectConductor({ conductor: id, end: 'to', on: { part, terminal: 'in' } }),
					addConductor({
						id: freshId(diagram.conductors, 'W'),
						conductor: {
							label: nextLabel(diagram, 'W'),
							from: { part, terminal: 'out' },
							to: conductor.to,
							gauge,
							insulationC,
							environment,
							sheathed,
							lengthM: Math.min(TAIL_M, lengthM || usedLengthM(conductor).lengthM)
						}
					})
				],
				group: 'disconnect'
			};
		}
	}
};

/** Pole of a conductor, by its end. */
function poleOf({ network }: Study, id: ConductorId) {
	const nodes = network.nodeOfEnd.get(id);
	return nodes && network.poles[nodes.from];
}
