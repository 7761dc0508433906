/** A part being made: the draft, what is wrong with it, and what can be done to it. */
import { DeviceRow, LinkRow, ownFaults, StudRow, type OwnFault, type OwnParams } from '#core/parts';

export type ListName = 'studs' | 'links' | 'devices';

const PREFIX: Record<ListName, string> = { studs: 's', links: 'l', devices: 'd' };

/** Between new studs. */
const STEP_MM = 30;

/** The prefix with the lowest number that none of them is called by. */
function firstFree(used: readonly string[], prefix: string): string {
	let n = 1;
	while (used.includes(`${prefix}${n}`)) n++;
	return `${prefix}${n}`;
}

export class Maker {
	draft = $state.raw<OwnParams>()!;
	/** Line that was just added or pointed at, "studs.2": it stands open. */
	shown = $state<string | null>(null);
	readonly faults: readonly OwnFault[] = $derived(ownFaults(this.draft));

	constructor(draft: OwnParams) {
		this.draft = draft;
	}

	/** What is wrong with a field, "name" or "studs.2.leftMm"; null when nothing is. */
	fault(path: string): string | null {
		return this.faults.find((fault) => fault.path === path)?.text ?? null;
	}

	set(values: Partial<OwnParams>): void {
		this.draft = { ...this.draft, ...values };
	}

	setRow(list: ListName, index: number, values: Readonly<Record<string, unknown>>): void {
		const rows = this.draft[list].map((row, i) => (i === index ? { ...row, ...values } : row));
		this.draft = { ...this.draft, [list]: rows };
	}

	addStud(): void {
		const { studs, widthMm, heightMm } = this.draft;
		const last = studs.at(-1);
		const right = (last?.leftMm ?? STEP_MM / -2) + STEP_MM;
		const fits = right <= widthMm;
		this.#add('studs', {
			...StudRow.parse({ id: this.#freeId('studs') }),
			...(last && { thread: last.thread, side: last.side, role: last.role }),
			name: this.#freeName(),
			leftMm: fits ? right : Math.min(20, widthMm),
			topMm: Math.min(heightMm, (last?.topMm ?? 20) + (fits ? 0 : STEP_MM))
		});
	}

	addLink(kind: LinkRow['kind']): void {
		this.#add('links', LinkRow.parse({ kind, id: this.#freeId('links'), ...this.#twoEnds('from', 'to') }));
	}

	addDevice(does: DeviceRow['does']): void {
		const { studs } = this.draft;
		const poles = { positive: this.#pole('positive'), negative: this.#pole('negative') };
		const outputs = does === 'converter' ? { outPositive: studs.at(-1)?.id ?? '', outNegative: studs.at(-2)?.id ?? '' } : {};
		this.#add('devices', DeviceRow.parse({ does, id: this.#freeId('devices'), ...poles, ...outputs }));
	}

	remove(list: ListName, index: number): void {
		this.draft = { ...this.draft, [list]: this.draft[list].filter((_, i) => i !== index) };
		this.shown = null;
	}

	#add(list: ListName, row: StudRow | LinkRow | DeviceRow): void {
		this.shown = `${list}.${this.draft[list].length}`;
		this.draft = { ...this.draft, [list]: [...this.draft[list], row] };
	}

	#freeId(list: ListName): string {
		return firstFree(
			this.draft[list].map(({ id }) => id),
			PREFIX[list]
		);
	}

	#freeName(): string {
		return firstFree(
			this.draft.studs.map(({ name }) => name.trim()),
			''
		);
	}

	#pole(role: 'positive' | 'negative'): string {
		return this.draft.studs.find((stud) => stud.role === role)?.id ?? '';
	}

	#twoEnds(from: string, to: string): Record<string, string> {
		const [a, b] = this.draft.studs;
		return { [from]: a?.id ?? '', [to]: b?.id ?? '' };
	}
}
