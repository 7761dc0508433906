/** What the user says of the circuits that want a place on a bus. Kept while the window is open. */
import type { PartId } from '#core/diagram';
import type { FullBusRequest, NewCircuit } from '#core/placement';

export interface CircuitDraft {
	readonly id: number;
	readonly name: string;
	readonly currentA: number | null;
	readonly lengthM: number | null;
	readonly critical: boolean;
	readonly continuous: boolean;
	/** It feeds the bus. */
	readonly source: boolean;
	/** Null: chosen by the current. */
	readonly fuseA: number | null;
}

export const MOST_CIRCUITS = 4;

const draft = (id: number): CircuitDraft => ({
	id,
	name: '',
	currentA: null,
	lengthM: null,
	critical: false,
	continuous: true,
	source: false,
	fuseA: null
});

export class FullBusForm {
	/** Null until one is chosen. */
	bus = $state<PartId | null>(null);
	built = $state(true);
	circuits = $state.raw<readonly CircuitDraft[]>([draft(1)]);
	#serial = 1;

	get complete(): boolean {
		return this.circuits.every(({ currentA, lengthM }) => currentA !== null && lengthM !== null);
	}

	add(): void {
		if (this.circuits.length < MOST_CIRCUITS) this.circuits = [...this.circuits, draft((this.#serial += 1))];
	}

	remove(id: number): void {
		this.circuits = this.circuits.filter((circuit) => circuit.id !== id);
	}

	set(id: number, values: Partial<CircuitDraft>): void {
		this.circuits = this.circuits.map((circuit) => (circuit.id === id ? { ...circuit, ...values } : circuit));
	}

	/** Null while something is missing. */
	request(bus: PartId, nameOf: (index: number) => string): FullBusRequest | null {
		if (!this.complete) return null;
		const circuits = this.circuits.map(({ name, currentA, lengthM, critical, continuous, source, fuseA }, index): NewCircuit => ({
			name: name.trim() || nameOf(index),
			currentA: currentA!,
			lengthM: lengthM!,
			critical,
			continuous,
			source,
			...(fuseA === null ? {} : { fuseA })
		}));
		return { bus, circuits, built: this.built };
	}
}
