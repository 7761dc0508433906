/** The address of this page and what stands behind its "#". */
import { isLink } from '#files';

/** The fragment when it claims to hold a diagram; null otherwise. */
export const fragmentHere = (): string | null => (isLink(location.hash) ? location.hash : null);

/** Takes the diagram out of the address, without another entry in the history of the browser. */
export function clearFragment(): void {
	if (fragmentHere() !== null) history.replaceState(history.state, '', `${location.pathname}${location.search}`);
}

/** A word in the address asks for the small page that is framed by others. */
const EMBED = 'embed';
export const isEmbedded = (): boolean => new URLSearchParams(location.search).has(EMBED);

const page = (): string => `${location.origin}${location.pathname}`;

export const wholeAddress = (fragment: string): string => `${page()}${fragment}`;
export const embedAddress = (fragment: string): string => `${page()}?${EMBED}${fragment}`;
