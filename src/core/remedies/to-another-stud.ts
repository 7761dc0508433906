import {
	mountBlock,
	reconnectConductor,
	studKey,
	terminalRef,
	type Command,
	type StackItem,
	type StudKey,
	type TerminalRef
} from '#core/diagram';
import { describe } from '#core/parts';
import type { Study } from '#core/rules';
import { landings } from '#core/studs';
import type { Proposal, RemedyKind } from './types.ts';

/** Studs of the same part tried, and things on the stud tried, lightest first. */
const MOST_STUDS = 4;
const MOST_THINGS = 3;

/** One of the things on a crowded stud to another stud of the same metal. */
export const toAnotherStud: RemedyKind = {
	rules: ['stud-crowded', 'stud-too-short', 'cover-clearance', 'lugs-clash', 'stack-order'],

	*propose(study, { subjects }) {
		const stud = subjects.find(({ kind }) => kind === 'stud')?.id;
		const stack = stud && study.stack(stud);
		if (!stack) return;
		const things = stack.layers.map(({ item }) => item).filter((item) => isThere(study, item));
		if (things.length < 2) return;
		const lightest = things.toSorted((a, b) => currentOf(study, a) - currentOf(study, b)).slice(0, MOST_THINGS);
		for (const thing of lightest) for (const on of studsBeside(study, stud)) yield moved(study, thing, on);
	}
};

/** A lug or block plate that is drawn; a damaged file may name others. */
const isThere = ({ network, diagram }: Study, item: StackItem): boolean =>
	item.kind === 'lug' ? network.branchOfConductor.has(item.conductor) : item.kind === 'block' && Object.hasOwn(diagram.parts, item.block);

const currentOf = (study: Study, item: StackItem): number =>
	item.kind === 'lug' ? study.conductor(item.conductor).continuous.currentA : 0;

function moved(study: Study, item: StackItem, on: TerminalRef): Proposal {
	const where = study.studName(studKey(on));
	const commands: Command[] =
		item.kind === 'lug'
			? [reconnectConductor({ conductor: item.conductor, end: item.end, on })]
			: item.kind === 'block'
				? [mountBlock({ block: item.block, on })]
				: [];
	const name = item.kind === 'lug' ? study.conductorName(item.conductor) : item.kind === 'block' ? study.part(item.block).label.trim() : '';
	return { title: `Move ${name} to ${where}`, commands, group: 'other stud' };
}

/** Studs of the part joined to this one by its own metal, those with the least on them first. */
function studsBeside({ diagram, network }: Study, stud: StudKey): TerminalRef[] {
	const { part } = terminalRef(stud);
	const landed = landings(diagram);
	const load = (terminal: string) => landed.get(studKey({ part, terminal }))?.length ?? 0;
	const { links, terminals } = describe(diagram.parts[part]!);
	const joined = new Set([terminalRef(stud).terminal]);
	for (const end of joined)
		for (const link of links)
			if (link.kind === 'segment' && link.between.includes(end)) for (const other of link.between) joined.add(other);
	return terminals
		.filter(
			({ id, kind, mountingPlate }) => kind === 'stud' && !mountingPlate && joined.has(id) && studKey({ part, terminal: id }) !== stud
		)
		.filter(({ id, maxTerminals }) => load(id) < maxTerminals && network.nodeOf.has(studKey({ part, terminal: id })))
		.sort((a, b) => load(a.id) - load(b.id))
		.slice(0, MOST_STUDS)
		.map(({ id }) => ({ part, terminal: id }));
}
