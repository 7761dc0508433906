/** Why something could not be kept. Data; the sentences are made where they are shown. */
export type FaultKind =
	/** The device, or what the browser grants this site, is full. */
	| 'full'
	/** What is kept here was written by a newer version of this program. */
	| 'newer'
	/** The browser keeps nothing for this page: private window, forbidden by a setting. */
	| 'unavailable'
	/** The connection was closed: a newer version wants the store, or the browser cleared it. */
	| 'closed'
	/** Another tab edits this diagram now. */
	| 'elsewhere'
	/** The diagram is not in the store any more. */
	| 'gone'
	| 'failed';

export interface Fault {
	readonly kind: FaultKind;
	/** In the browser's own words; empty where it said nothing. */
	readonly reason: string;
}

export class KeepingError extends Error implements Fault {
	constructor(
		readonly kind: FaultKind,
		readonly reason = ''
	) {
		super(reason === '' ? kind : `${kind}: ${reason}`);
		this.name = 'KeepingError';
	}
}

const KINDS: Readonly<Record<string, FaultKind>> = {
	QuotaExceededError: 'full',
	VersionError: 'newer',
	SecurityError: 'unavailable',
	InvalidStateError: 'closed'
};

/** Whatever was thrown, as a fault. */
export function faultOf(error: unknown): Fault {
	if (error instanceof KeepingError) return { kind: error.kind, reason: error.reason };
	const name = typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
	return { kind: KINDS[name] ?? 'failed', reason: error instanceof Error ? error.message : String(error) };
}
