/** The parts library: one definition per file in kinds/, listed in the order of the shelf. */
export {
	definePart,
	type DailyYield,
	type Link,
	type LinkEnd,
	type Mounting,
	type PartDefinition,
	type PartGroup,
	type ProtectiveDevice,
	type Role,
	type SymbolName,
	type Terminal
} from './define.ts';
export { CHASSIS } from './chassis.ts';
export type { Space } from './site.ts';
export { definitionOf, newParams, partDefinitions } from './list.ts';
export { describe, type PartDescription } from './describe.ts';
export { fieldMeta, type FieldMeta } from './fields.ts';
export { usableLengthMm } from './terminals.ts';
export { ownParams, type OwnParams } from './own/params.ts';
export { DEVICE_KINDS, DeviceRow, INSIDE, LINK_KINDS, LinkRow, StudRow } from './own/rows.ts';
export { ownFaults, type OwnFault } from './own/faults.ts';
export { parseParts, partsFile, PARTS_FORMAT, type PartsResult } from './own/file.ts';
