/** A name nobody else has: 80 random bits. */
export function newId(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(10));
	return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
