/**
 * Version 0 called conductors "wires", wrote sizes as text ("2/0 AWG", "16 mm2") and lengths in millimetres, and
 * knew neither stacks nor the use of a conductor.
 */
import { isRecord, mapValues, type Raw } from './raw.ts';

export function from0({ wires, ...rest }: Raw): Raw {
	return { ...rest, version: 1, conductors: isRecord(wires) ? mapValues(wires, conductor) : wires, stacks: {} };
}

function conductor(wire: unknown): unknown {
	if (!isRecord(wire)) return wire;
	const { size, lengthMm, ...rest } = wire;
	return { ...rest, gauge: gauge(size), lengthM: typeof lengthMm === 'number' ? lengthMm / 1000 : (lengthMm ?? null), use: 'ordinary' };
}

function gauge(size: unknown): unknown {
	const match = typeof size === 'string' ? /^(\S+) (AWG|mm2)$/.exec(size) : null;
	return match ? { system: match[2] === 'AWG' ? 'awg' : 'iec', size: match[1] } : size;
}
