/** The window in German: fetched only where it is read. */
import type { Catalogues } from '../language/language.svelte.ts';
import { drawingDe, drawingKeyDe } from './drawing.ts';
import { fullBusDe, positionDe, sizingDe } from './full-bus.ts';
import { guideDe } from './guide.ts';
import { handoffDe } from './handoff.ts';
import { insightDe } from './insight.ts';
import { keepingDe } from './keeping.ts';
import { languageDe } from './language.ts';
import { offlineDe } from './offline.ts';
import { shortDe, readingDe, assemblyDe, onSiteDe, timeDe } from './on-site.ts';
import { ownPartsDe } from './own-parts.ts';
import { shareDe, reviewDe, revisionDe } from './review.ts';
import { siteDe } from './site.ts';
import { studDe } from './stud.ts';
import { useDe } from './use.ts';
import { drawnAsDe, findDe, outlineDe, viewsDe, voiceDe } from './views.ts';
import { windowDe } from './window.ts';

export { PHRASES } from './phrases.ts';
export { RULE_WORDS } from './rules.ts';

export const CATALOGUES: Catalogues = {
	assembly: assemblyDe,
	drawing: drawingDe,
	'drawn-as': drawnAsDe,
	'drawing-keys': drawingKeyDe,
	find: findDe,
	'full-bus': fullBusDe,
	guide: guideDe,
	handoff: handoffDe,
	insight: insightDe,
	keeping: keepingDe,
	language: languageDe,
	offline: offlineDe,
	'on-site': onSiteDe,
	outline: outlineDe,
	'own-parts': ownPartsDe,
	positions: positionDe,
	reading: readingDe,
	review: reviewDe,
	revision: revisionDe,
	share: shareDe,
	short: shortDe,
	site: siteDe,
	sizing: sizingDe,
	stud: studDe,
	time: timeDe,
	use: useDe,
	views: viewsDe,
	voice: voiceDe,
	window: windowDe
};
