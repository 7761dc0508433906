import type { CheckResult } from '#core/check';
import { lensValues, type LensId, type LensView } from '#core/explain';
import type { Editor } from '#editor';
import type { View } from '../view.svelte.ts';

const views = new WeakMap<CheckResult, Map<LensId, LensView>>();

/** The drawing through the chosen lens; null without a lens or before the first check. Canvas and legend get the same one. */
export function lensOf({ check, diagram }: Pick<Editor, 'check' | 'diagram'>, { lens }: Pick<View, 'lens'>): LensView | null {
	if (lens === null || check === null) return null;
	const known = views.get(check) ?? new Map<LensId, LensView>();
	views.set(check, known);
	const view = known.get(lens) ?? lensValues(diagram, check, lens);
	known.set(lens, view);
	return view;
}
