/**
 * Checks a careful surveyor makes that no rule here makes, and why. Shown beside the rules, so that silence is not
 * read as "checked and fine". What becomes a rule is taken off this list.
 */
import type { RuleMeta } from './define.ts';

export interface NotImplemented {
	/** The requirement, as a rule's title would say it. */
	readonly title: string;
	readonly group: RuleMeta['group'];
	readonly reason: string;
}

const NO_DATA = 'The diagram does not hold what it needs: ';

export const NOT_IMPLEMENTED: readonly NotImplemented[] = [
	{
		title: 'No conductors form a ring unless it is meant',
		group: 'topology',
		reason: 'A ring is solved and protected exactly; whether it is meant cannot be told from the drawing.'
	},
	{
		title: 'AC and DC conductors keep apart',
		group: 'conductors',
		reason: `${NO_DATA}ducts and enclosures.`
	},
	{
		title: 'A device’s own leads stand its fuse',
		group: 'protection',
		reason: `${NO_DATA}sizes of built-in leads. The largest fuse by the device’s instructions is checked instead.`
	},
	{
		title: 'The fuse of a motor opens when the motor stalls',
		group: 'protection',
		reason: `${NO_DATA}locked-rotor currents and thermal times of motors.`
	},
	{
		title: 'An insulated system is protected in both poles',
		group: 'protection',
		reason: '“Insulated” is used for small systems without a hull connection too, which need no second pole.'
	},
	{ title: 'A breaker is made for direct current', group: 'protection', reason: `${NO_DATA}whether a breaker has a DC rating.` },
	{
		title: 'A fuse fits its holder’s limits',
		group: 'protection',
		reason: `${NO_DATA}holder ratings and largest conductors of inline holders.`
	},
	{
		title: 'A compressor starts at low battery voltage',
		group: 'conductors',
		reason: `${NO_DATA}the lowest voltage at which a compressor starts.`
	},
	{ title: 'A radio has its voltage while transmitting', group: 'conductors', reason: `${NO_DATA}the voltage range of a transmitter.` },
	{
		title: 'Conductors are stranded copper with insulation for the place',
		group: 'conductors',
		reason: `${NO_DATA}stranding, metal and type of insulation; copper is taken for granted.`
	},
	{
		title: 'Terminals stand the temperature a conductor may reach',
		group: 'conductors',
		reason: `${NO_DATA}temperature ratings of terminals.`
	},
	{
		title: 'Lugs and conductors are of one system of sizes',
		group: 'conductors',
		reason: `${NO_DATA}the lug’s own size; lugs are taken to fit.`
	},
	{
		title: 'A bank is tapped at opposite ends',
		group: 'batteries',
		reason: 'Its effect, unequal currents, is worked out and reported; where to tap is one way among others to put it right.'
	},
	{
		title: 'Links inside a string are as thick as its leads',
		group: 'batteries',
		reason: 'Thin links are found by current and protection; equal size for its own sake is not asked for.'
	},
	{
		title: 'A battery is not charged below its temperature',
		group: 'batteries',
		reason: `${NO_DATA}site temperatures in winter and low-temperature cut-offs.`
	},
	{
		title: 'Chargers act through the battery’s electronics',
		group: 'batteries',
		reason: 'Electronics are taken as part of the battery; no terminal by-passes them on the drawing.'
	},
	{
		title: 'A warning comes before a battery switches off, and what must not go dark has a second source',
		group: 'batteries',
		reason: `${NO_DATA}alarms, and which loads need a second source.`
	},
	{ title: 'Batteries are secured, covered and vented', group: 'batteries', reason: 'To be seen on site, not on a drawing.' },
	{
		title: 'A solar array keeps within its controller’s voltage and current in cold and heat',
		group: 'batteries',
		reason: `${NO_DATA}modules, strings and temperatures of the array.`
	},
	{
		title: 'Array conductors, fuses and disconnects suit the array',
		group: 'protection',
		reason: `${NO_DATA}modules and strings of the array; its side of the controller is drawn, not calculated.`
	},
	{
		title: 'Controllers and converters pass nothing back',
		group: 'batteries',
		reason: 'Back-feeding is counted in what a fault can draw; whether it harms a device is in its instructions.'
	},
	{
		title: 'An alternator is not overloaded by a lithium bank, nor cut off from its battery',
		group: 'batteries',
		reason: `${NO_DATA}hot output and field control of alternators, and battery electronics that open.`
	},
	{
		title: 'Joining two banks does not overload relay or fuses',
		group: 'batteries',
		reason: `${NO_DATA}states of charge at the moment of joining. Currents with both at rest are solved.`
	},
	{
		title: 'An inverter’s ripple current is counted',
		group: 'conductors',
		reason: 'Currents are solved as steady; ripple adds up to 22 % of heating, which depends on the inverter’s make.'
	},
	{ title: 'Large capacitors are charged gently', group: 'conductors', reason: `${NO_DATA}input capacitors and precharge circuits.` },
	{
		title: 'Negatives of devices that share signals are tied together',
		group: 'topology',
		reason: `${NO_DATA}signal and aerial connections.`
	},
	{
		title: 'An insulated return touches the hull nowhere',
		group: 'topology',
		reason: 'A drawn bond may serve protection; leakage is to be measured.'
	},
	{ title: 'Lug holes fit their studs', group: 'studs', reason: `${NO_DATA}holes of lugs; they are taken to fit.` },
	{ title: 'Nuts are tightened to their torque', group: 'studs', reason: 'To be measured on site, not on a drawing.' },
	{
		title: 'Heavy circuits sit next to the feed of a bus',
		group: 'studs',
		reason: 'An overloaded piece of bar is reported with its place; the best order of positions is not searched for.'
	},
	{
		title: 'Extension posts are not stacked or overloaded',
		group: 'studs',
		reason: 'No extension post is among the parts.'
	},
	{
		title: 'Every fused position has a free stud for its return',
		group: 'studs',
		reason: 'Returns may share a stud within its limit, which is checked.'
	},
	{
		title: 'Live studs are covered',
		group: 'studs',
		reason: `${NO_DATA}boots and covers of most parts.`
	},
	{
		title: 'Conductors are supported, bent gently and led through grommets',
		group: 'studs',
		reason: 'The drawing is no map of where conductors run.'
	},
	{ title: 'Metals in contact go together', group: 'studs', reason: `${NO_DATA}plating of lugs, bars and washers.` },
	{
		title: 'Joints in one enclosure do not overheat it',
		group: 'studs',
		reason: `${NO_DATA}which joints share an enclosure, and its size.`
	},
	{
		title: 'What is built is what is drawn',
		group: 'documents',
		reason: 'To be compared on site.'
	},
	{
		title: 'Nothing sparks where petrol or gas may gather',
		group: 'protection',
		reason: `${NO_DATA}zones, and which parts are ignition protected.`
	},
	{ title: 'Parts withstand water where they are', group: 'documents', reason: `${NO_DATA}zones and degrees of protection.` }
];
