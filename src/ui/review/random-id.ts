/** A name that nobody else's remark or revision has: 80 random bits. */
export function randomId(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(10));
	return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
