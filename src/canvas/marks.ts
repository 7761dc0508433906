/**
 * Where findings are marked on the screen: at the place of their first subject, one mark per place, with a count
 * where several meet. Marks keep their size, so far out neighbours run together into one.
 */
import { itemKey, type ItemKey } from '#core/diagram';
import { pointAtFraction, type Point } from '#core/geometry';
import type { Finding, Severity, Subject } from '#core/rules';
import type { SceneIndex } from './scene-index.ts';
import { MARK_PX } from './theme.ts';
import { toScreen, type View } from './viewport.ts';

export interface Mark {
	/** On the screen. */
	readonly at: Point;
	readonly radiusPx: number;
	/** Of the worst finding here. */
	readonly severity: Severity;
	/** Worst first. */
	readonly findings: readonly Finding[];
	/** What a click selects: the places marked, that of the worst finding first. A finding's other subjects are for its description. */
	readonly selects: readonly ItemKey[];
}

const WORST_FIRST: readonly Severity[] = ['fatal', 'error', 'warning', 'note'];
/** A stud's mark stands beside it, so that the stud itself can still be seen and pressed. */
const BESIDE_STUD_PX = { x: 12, y: -12 };

export const subjectKey = (subject: Subject): ItemKey | null => (subject.kind === 'diagram' ? null : itemKey(subject.kind, subject.id));

/** Marks in painting order: the worst lie on top. Findings about the diagram as a whole, or about things no longer there, have none. */
export function placeMarks(findings: readonly Finding[], index: SceneIndex, view: View, radiusPx = MARK_PX): Mark[] {
	const sorted = [...findings].sort((a, b) => WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity));
	const groups: { at: Point; findings: Finding[]; places: Set<ItemKey> }[] = [];
	for (const finding of sorted) {
		const key = finding.subjects[0] && subjectKey(finding.subjects[0]);
		const at = key && markPoint(key, index, view);
		if (!key || !at) continue;
		const near = groups.find((group) => group.places.has(key) || Math.hypot(group.at.x - at.x, group.at.y - at.y) < 2 * radiusPx);
		if (near) {
			near.findings.push(finding);
			near.places.add(key);
		} else groups.push({ at, findings: [finding], places: new Set([key]) });
	}
	return groups.reverse().map(({ at, findings, places }) => ({
		at,
		radiusPx,
		severity: findings[0]!.severity,
		findings,
		selects: [...places]
	}));
}

/** The mark whose shape is under the pointer, the topmost first. */
export function markAt(marks: readonly Mark[], screen: Point, slackPx = 2): Mark | null {
	return marks.findLast(({ at, radiusPx }) => Math.hypot(at.x - screen.x, at.y - screen.y) <= radiusPx + slackPx) ?? null;
}

function markPoint(key: ItemKey, index: SceneIndex, view: View): Point | null {
	const stud = index.stud(key);
	if (stud) {
		const at = toScreen(view, stud.at);
		const away = 1 + (stud.radiusMm * view.zoom) / Math.hypot(BESIDE_STUD_PX.x, BESIDE_STUD_PX.y) / 2;
		return { x: at.x + BESIDE_STUD_PX.x * away, y: at.y + BESIDE_STUD_PX.y * away };
	}
	const item = index.scene.items.get(key);
	if (item?.route) return toScreen(view, pointAtFraction(item.route, 0.5));
	if (item?.body) return toScreen(view, { x: item.body.maxX, y: item.body.minY });
	return null;
}
