/**
 * A large system, as a fleet of small ones joined up: sections of about 250 conductors, each with a battery, a fuse
 * on its post, a main and a negative bus, and blade-fuse panels that feed loads, one in four by way of a link post.
 * Sections hang on one another as a tree, through a fuse. Of all conductors, 5 % close loops: second feeders, and
 * second returns between panels and sections. One panel in twenty has a fuse too large for what it feeds.
 */
import { DiagramSchema, emptyDiagram, newConductor, terminalRef, type Conductor, type Diagram, type Param } from '#core/diagram';
import { numbersFrom } from '../core/routing/cases.ts';

const SECTION = 250;
const LOOPS = 0.05;
const WAYS = 10;
/** Conductors a panel takes with its loads: two feeders, a fuse's tail, and about 2.25 for each way. */
const PANEL = 3 + Math.round(2.25 * WAYS);

export function largeDiagram(conductors: number, seed = 1): Diagram {
	const random = numbersFrom(seed);
	const any = (below: number): number => Math.floor(random() * below);
	const parts: Diagram['parts'] = {};
	const record: Diagram['conductors'] = {};
	const mounts: Diagram['mounts'] = {};
	let made = 0;

	const part = (id: string, kind: string, params: Record<string, Param> = {}): string => {
		const at = { x: (Object.keys(parts).length % 100) * 300, y: Math.floor(Object.keys(parts).length / 100) * 300 };
		parts[id] = { kind, label: id, at, rotation: 0, params, note: '' };
		return id;
	};
	const join = (from: string, to: string, size: Conductor['gauge']['size'], lengthM = 0.5 + Math.round(random() * 20) / 10): void => {
		const id = `W${(made += 1)}`;
		record[id] = {
			...newConductor(terminalRef(from), terminalRef(to)),
			label: id,
			lengthM,
			gauge: { system: 'awg', size } as Conductor['gauge']
		};
	};

	const tree = Math.round(conductors * (1 - LOOPS));
	const sections: { id: string; panels: string[] }[] = [];
	while (made < tree - PANEL) {
		const id = `S${sections.length}`;
		const panels: string[] = [];
		part(`${id}B`, 'battery', { capacityAh: 200 });
		part(`${id}F`, 'fuse-block', { fuseA: 200 });
		mounts[`${id}F`] = { part: `${id}B`, terminal: 'pos' };
		const studs = 16;
		part(`${id}P`, 'positive-bus', { studs });
		part(`${id}N`, 'negative-bus', { studs });
		join(`${id}F.post`, `${id}P.1`, '2/0', 0.5);
		join(`${id}N.1`, `${id}B.neg`, '2/0', 0.5);
		const parent = sections[any(sections.length)];
		if (parent) {
			part(`${id}J`, 'inline-fuse', { family: 'strip-sf30', fuseA: 100, connection: 'studs' });
			join(`${parent.id}P.${1 + any(studs)}`, `${id}J.in`, '2', 0.15);
			join(`${id}J.out`, `${id}P.2`, '2');
			join(`${parent.id}N.${1 + any(studs)}`, `${id}N.2`, '2');
		}
		const end = Math.min(tree, made + SECTION);
		while (made < end - PANEL / 2) {
			const panel = `${id}D${panels.length}`;
			const ratings = Array.from({ length: WAYS }, () => (random() < 0.05 ? 40 : 10));
			part(panel, 'blade-panel', { ways: WAYS, fuseA: ratings });
			const stud = 3 + (panels.length % (studs - 2));
			part(`${panel}F`, 'inline-fuse', { family: 'strip-sf30', fuseA: 60, connection: 'studs' });
			join(`${id}P.${stud}`, `${panel}F.in`, '6', 0.15);
			join(`${panel}F.out`, `${panel}.feed`, '6');
			join(`${panel}.neg`, `${id}N.${stud}`, '6');
			for (let way = 1; way <= WAYS && made < end; way++) {
				const load = part(`${panel}L${way}`, 'load', { draw: 0.5 });
				if (random() < 0.25) {
					part(`${load}X`, 'link-post');
					join(`${panel}.${way}`, `${load}X.stud`, '14');
					join(`${load}X.stud`, `${load}.pos`, '14');
				} else join(`${panel}.${way}`, `${load}.pos`, '14');
				join(`${load}.neg`, `${panel}.n${way}`, '14');
			}
			panels.push(panel);
		}
		sections.push({ id, panels });
	}
	while (made < conductors) {
		const { id, panels } = sections[any(sections.length)]!;
		const panel = panels[any(panels.length)]!;
		const other = panels[any(panels.length)]!;
		const far = sections[any(sections.length)]!;
		const kind = any(4);
		if (kind === 0) join(`${panel}F.out`, `${panel}.feed`, '6');
		else if (kind === 1) join(`${panel}.neg`, `${id}N.${1 + any(16)}`, '6');
		else if (kind === 2) join(`${panel}.neg`, `${other}.neg`, '6');
		else join(`${id}N.${1 + any(16)}`, `${far.id}N.${1 + any(16)}`, '2');
	}
	return DiagramSchema.parse({ ...emptyDiagram(), parts, conductors: record, mounts });
}
