import { editConductors, moveParts, studKey, terminalRef, type Conductor, type ConductorId } from '#core/diagram';
import { outward } from '#core/geometry';
import { usedLengthM } from '#core/network';
import { placedTerminal } from '#core/layout';
import { overcurrentFaults } from '#core/rules';
import { metresText } from '#core/units';
import type { RemedyKind } from './types.ts';

const TAIL_M = 0.1;
const BESIDE_MM = 110;

/** The fuse that is there, moved to the source end; the run after it becomes as much longer. */
export const moveFuse: RemedyKind = {
	rules: ['protection-too-far'],

	*propose(study, finding) {
		const { diagram } = study;
		const fault = overcurrentFaults(study).find(({ view }) => view.id === finding.subjects[0]?.id);
		const origin = fault?.device?.branch.origin;
		if (!fault || origin?.kind !== 'link' || fault.run.way.length > 0) return;
		const { part } = origin;
		const landed = Object.entries(diagram.conductors).filter(([, { from, to }]) => from.part === part || to.part === part);
		const before = landed.find(([id]) => id === fault.view.id);
		const after = landed.find(([id]) => id !== fault.view.id);
		const host = placedTerminal(diagram, terminalRef(fault.run.origin));
		// Only a holder with one conductor on either side can wander along the run.
		if (landed.length !== 2 || !before || !after || !host || terminalOn(before[1], part) === terminalOn(after[1], part)) return;
		const lengthM = usedLengthM(after[1]).lengthM + fault.view.lengthM - TAIL_M;
		const { x, y } = outward(host.side);
		const at = diagram.parts[part]!.at;
		const set = (id: ConductorId, lengthM: number, like: Conductor) =>
			editConductors({ conductors: [id], set: { lengthM, gauge: like.gauge, insulationC: like.insulationC } });
		yield {
			title: `Move ${diagram.parts[part]!.label.trim() || part} to ${metresText(TAIL_M)} from ${study.studName(fault.run.origin)}`,
			commands: [
				set(before[0], TAIL_M, before[1]),
				set(after[0], lengthM, before[1]),
				moveParts({ parts: [part], by: { x: host.at.x + x * BESIDE_MM - at.x, y: host.at.y + y * BESIDE_MM - at.y } })
			]
		};
	}
};

const terminalOn = ({ from, to }: Conductor, part: string): string => studKey(from.part === part ? from : to);
