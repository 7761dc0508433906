/** The parts library: one definition per file. */
export { definePart, type Link, type LinkEnd, type PartDefinition, type PartGroup, type ProtectiveDevice, type Role, type Terminal } from './define.ts';
