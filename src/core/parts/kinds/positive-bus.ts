import { busBar } from '../bus-bar.ts';

export const positiveBus = busBar({
	kind: 'positive-bus',
	name: 'Positive bus',
	help: 'Joins positive conductors at one potential. It protects nothing: each smaller conductor leaving it needs its own fuse.',
	role: 'positive',
	exit: 'south'
});
