export interface Example {
	readonly id: string;
	/** Name and state, for a menu. */
	readonly title: string;
	/** What the system is and what the drawing shows, in a sentence or two. */
	readonly summary: string;
	/** File name in static/examples. */
	readonly file: string;
	/** "before" has faults to be found; "after" is the same system repaired. */
	readonly state: 'before' | 'after';
}

const example = (system: string, state: Example['state'], title: string, summary: string): Example => ({
	id: `${system}-${state}`,
	title,
	summary,
	file: `${system}-${state}.json`,
	state
});

/** In the order of the menu; the first is what a newcomer sees. */
export const EXAMPLES: readonly Example[] = [
	example(
		'ridge-post',
		'before',
		'Ridge Post 3, as found',
		'Rescue trailer, 12 V lithium. A charger lead without a fuse at the battery end, a panel feeder tapped off the bus under the heavy lug, a charger that by-passes the shunt, a negative bus too small for its sum.'
	),
	example(
		'ridge-post',
		'after',
		'Ridge Post 3, repaired',
		'The same trailer with its faults put right: every circuit fused at the bus, returns in order on a larger negative bus.'
	),
	example(
		'pagemoor',
		'before',
		'Pagemoor, as found',
		'Mobile library, 24 V lead-acid. One string hung on the other behind a single fuse, a radio tapped from half a string, the lift returning through the chassis, thin lamp tails behind a large fuse.'
	),
	example(
		'pagemoor',
		'after',
		'Pagemoor, repaired',
		'The same library with a fuse for each string, the switch in the positive, and 12 V from a converter.'
	),
	example(
		'otters-reach',
		'before',
		'Otter’s Reach, as found',
		'River workboat, 12 V with start and house banks. A bilge pump on wire too thin for its fuse to open, a horn without a fuse off the starter stud, five terminals on one battery post, an alternator cable too hot for its insulation.'
	),
	example(
		'otters-reach',
		'after',
		'Otter’s Reach, repaired',
		'The same boat with both ends of the charging link fused, the returns on the negative bus and conductors to suit the engine space.'
	),
	example(
		'skarv-fell',
		'before',
		'Skarv Fell, as found',
		'Weather station, 48 V lithium. Fuses made for 32 V on a 48 V bus, battery leads of unequal length, a sense wire without a fuse, a radio link on wire too thin for its length.'
	),
	example(
		'skarv-fell',
		'after',
		'Skarv Fell, repaired',
		'The same station with fuses that can break its voltage, equal battery leads and one bond to earth.'
	)
];
