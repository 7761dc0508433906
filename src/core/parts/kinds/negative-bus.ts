import { busBar } from '../bus-bar.ts';

export const negativeBus = busBar({
	kind: 'negative-bus',
	name: 'Negative bus',
	help: 'Joins all returns. The sum of all loads flows through it; it belongs on the load side of the shunt.',
	role: 'negative',
	exit: 'north'
});
