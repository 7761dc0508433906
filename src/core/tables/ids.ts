/** Names of the rows in the published tables that parts and diagrams refer to. */
export const THREADS = ['M4', 'M5', 'M6', 'M8', 'M10', 'M12', '#8', '#10', '1/4', '5/16', '3/8', '1/2'] as const;
export type ThreadId = (typeof THREADS)[number];

/** Fuse families by open standard or generic description; see fuse-families.ts for their figures. */
export const FUSE_FAMILIES = [
	'blade-mini',
	'blade-regular',
	'blade-large',
	'strip-sf30',
	'strip-sf51',
	'limiter',
	'cube',
	'class-t',
	'cylindrical'
] as const;
export type FuseFamilyId = (typeof FUSE_FAMILIES)[number];
