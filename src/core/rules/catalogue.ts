/** The rules as data: what is checked, on which grounds, and what is not. */
import type { RuleMeta } from './define.ts';
import { RULES } from './list.ts';
import { NOT_IMPLEMENTED, type NotImplemented } from './not-implemented.ts';

export interface RuleCatalogue {
	/** In the order of evaluation. */
	readonly rules: readonly RuleMeta[];
	readonly notImplemented: readonly NotImplemented[];
}

export const ruleCatalogue = (): RuleCatalogue => ({
	rules: RULES.map(({ meta: { id, title, severity, group, why, source } }) => ({ id, title, severity, group, why, source })),
	notImplemented: NOT_IMPLEMENTED
});
