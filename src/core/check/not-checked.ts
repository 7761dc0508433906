import { isProfileId, unknownNumbers } from '#core/profiles';
import { derived, listed, type Study } from '#core/rules';

/** What no version of these rules looks at, whatever the diagram. */
const NEVER: readonly string[] = [
	'Mains (AC) side, earthing and residual-current protection.',
	'Crimp quality, bend radius and support of conductors; holes and torques of lugs for which none is entered.',
	'Shorts through an arc or through metalwork, and faults while batteries are nearly empty: shorts are taken to be dead, to the return beside them.',
	'Vibration; and water, vapour and heat around parts whose place is left as it comes.'
];

/** In words, what this check did not look at and why. Silence would be read as "checked and fine". */
export function notChecked(study: Study, heldBack: number): string[] {
	return [
		...heldBackText(heldBack),
		...profileText(study),
		...caseTexts(study),
		...partTexts(study),
		...breakerText(study),
		...coverText(study),
		...NEVER
	];
}

const heldBackText = (count: number): string[] =>
	count === 0
		? []
		: [
				`Currents, protection and voltage drop: held back until the fatal finding is put right (${count} ${count === 1 ? 'finding' : 'findings'}).`
			];

function profileText({ diagram, profile }: Study): string[] {
	const unknown = unknownNumbers(diagram);
	if (unknown.length > 0)
		return [`The custom profile's ${listed(unknown)}: its base has no such ${unknown.length === 1 ? 'number' : 'numbers'}.`];
	return isProfileId(diagram.profile)
		? []
		: [`The rules of profile “${diagram.profile}”: this version does not know it and used “${profile.name}” in its place.`];
}

function caseTexts({ cases, diagram, form }: Study): string[] {
	if (form.batteries.length + form.sources.length === 0) return ['Currents: the diagram has no battery or other source.'];
	if (Object.keys(diagram.cases).length === 0) return ['Currents: the diagram has no operating case.'];
	return cases
		.filter(({ point }) => point.status !== 'solved')
		.map(({ operatingCase, id }) => `Currents in case “${operatingCase.label.trim() || id}”: it has no operating point.`);
}

const partTexts = derived(({ parts, form, diagram }): readonly string[] => {
	const unknown = parts.filter(({ definition }) => definition === null).map(({ label, id }) => label.trim() || id);
	const loose = form.unresolved.filter(({ kind }) => kind === 'conductor').map(({ id }) => diagram.conductors[id]!.label.trim() || id);
	return [
		...(unknown.length > 0 ? [`${listed(unknown)}: of a kind this version does not know.`] : []),
		...(loose.length > 0 ? [`${listed(loose)}: an end is on no terminal.`] : [])
	];
});

const breakerText = derived(({ form, part }): readonly string[] => {
	const names = form.branches.flatMap(({ device, origin }) =>
		device?.family === null && origin.kind === 'link' ? [part(origin.part).label.trim() || origin.part] : []
	);
	return names.length === 0 ? [] : [`When ${listed(names)} would open: the curves of breakers are not known.`];
});

const coverText = derived(({ stacks }): readonly string[] => {
	const studs = stacks.filter(({ terminal }) => terminal.kind === 'stud');
	const bare = studs.filter(({ terminal }) => terminal.coverHeightMm === null && terminal.coverSlotMm === null);
	return bare.length === 0 ? [] : [`Cover clearance on ${bare.length} of ${studs.length} studs: no cover is given for them.`];
});
