import type { OperatingCase } from '#core/diagram';
import { formOf, type Network } from '#core/network';
import { levelsOf, type Levels } from './circuit.ts';
import { connect, type Connection } from './connection.ts';

/** What a case switches on and off, and what then hangs together: resistances have no part in it. */
export interface Switching {
	readonly levels: Levels;
	/** @param barred sources that must stay off whatever feeds them */
	connectionWithout(barred: ReadonlySet<number>): Connection;
}

interface Kept extends Switching {
	/** Networks of one form may be tried with other batteries, sources or loads than the drawing's. */
	readonly madeOf: readonly [Network['batteries'], Network['sources'], Network['loads']];
}

const known = new WeakMap<object, WeakMap<OperatingCase, Kept>>();

/** Worked out once for each form and case. */
export function switchingOf(network: Network, operatingCase: OperatingCase): Switching {
	const form = formOf(network);
	let byCase = known.get(form);
	if (!byCase) known.set(form, (byCase = new WeakMap()));
	const kept = byCase.get(operatingCase);
	if (kept && kept.madeOf[0] === network.batteries && kept.madeOf[1] === network.sources && kept.madeOf[2] === network.loads) return kept;
	const made = switching(network, operatingCase);
	// The drawing's own comes first; what is tried on it passes.
	if (!kept) byCase.set(operatingCase, made);
	return made;
}

function switching(network: Network, operatingCase: OperatingCase): Kept {
	const levels = levelsOf(network, operatingCase);
	const connections = new Map<string, Connection>();
	return {
		levels,
		madeOf: [network.batteries, network.sources, network.loads],
		connectionWithout(barred) {
			const key = [...barred].sort((a, b) => a - b).join();
			let connection = connections.get(key);
			if (!connection) connections.set(key, (connection = connect(network, levels, barred)));
			return connection;
		}
	};
}
