import type { Diagram } from '#core/diagram';
import { buildStudy, type Study } from '#core/rules';

const studies = new WeakMap<Diagram, Study>();

/** The study of a diagram, kept as long as the diagram is; a study is given back as it is. */
export function studyOf(of: Study | Diagram): Study {
	if ('diagram' in of) return of;
	let study = studies.get(of);
	if (!study) studies.set(of, (study = buildStudy(of)));
	return study;
}
