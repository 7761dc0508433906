import { catalogue } from '../language/catalogue.ts';
import type { Severity } from '#core/rules';
import { texts } from '../texts.ts';

/** Said when a check brings something new. */
export const voiceTexts = catalogue('voice', {
	one: (severity: Severity, message: string) => `New ${texts.findings.severities[severity].toLowerCase()}: ${message}`,
	more: (n: number) => `And ${n} more new ${n === 1 ? 'finding' : 'findings'}.`,
	gone: (n: number) => `${n} ${n === 1 ? 'finding is' : 'findings are'} gone.`,
	none: 'No finding is left.'
});
