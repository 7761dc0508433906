/** Flags a browser needs where the network is closed. */
export const CHROMIUM_FLAGS: string[];
export function findChromium(): string | null;
export function installChromium(): string | null;
