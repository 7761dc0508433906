/**
 * What was worked out about one state of a subject, with what was read for it, so that the next state costs only what
 * differs. Nothing has to be declared: reading is written down while it happens. An answer stands while all that was
 * read for it is the same by identity, and is looked into again only when somebody asks.
 */
import { isAlike } from './alike.ts';
import { isSame } from './memory.ts';

/** Asked of the subject itself, or about one thing of it; the question is the function. */
type Question<Subject, Answer> = (subject: Subject) => Answer;
type QuestionAbout<Subject, About, Answer> = (subject: Subject, about: About) => Answer;

type Key = string | number;

/** Of whatever types: what it is asked of, and the thing it is about where there is one. */
type Work = (of: unknown, about: unknown) => unknown;

/** @typeParam View what works are given in the subject's place: it asks the ledger for all that it answers */
export class Ledger<Subject extends object, View> {
	readonly #viewOf: (subject: Subject) => View;
	readonly #entries = new Map<unknown, Entry>();
	readonly #entriesAbout = new Map<unknown, Map<Key, Entry>>();
	#subject: Subject | null = null;
	#view: View | null = null;
	#reader: Reader | null = null;
	/** Counts the states entered. */
	#now = 0;
	#shifts = new Map<readonly object[], Shift>();

	constructor(viewOf: (subject: Subject) => View) {
		this.#viewOf = viewOf;
	}

	get subject(): Subject | null {
		return this.#subject;
	}

	/** The state that is asked about from now on. */
	enter(subject: Subject): void {
		if (subject === this.#subject) return;
		this.#subject = subject;
		this.#view = this.#viewOf(subject);
		this.#shifts = new Map();
		this.#now++;
		if (this.#now % KEPT_STATES === 0) this.#forget();
	}

	/** Entries nobody has looked into for long: what they are about has gone. Who still holds one can go on with it. */
	#forget(): void {
		for (const entries of this.#entriesAbout.values()) {
			for (const [about, { checkedAt }] of entries) if (checkedAt < this.#now - KEPT_STATES) entries.delete(about);
		}
	}

	ask<Answer>(question: Question<Subject, Answer>): Answer {
		return this.#read(
			this.#entry(question, () => new Asked(question as Work, undefined)),
			WHOLE
		) as Answer;
	}

	/** What depends on it is noted about the thing at hand alone. */
	askAbout<About extends Key, Answer>(question: QuestionAbout<Subject, About, Answer>, about: About): Answer {
		return this.#read(
			this.#entryAbout(question, about, () => new Asked(question as Work, about)),
			ABOUT
		) as Answer;
	}

	/** Works something out; who asks for it has read the answer and not what it is made of. */
	derive<Answer>(work: Question<View, Answer>): Answer {
		return this.#read(
			this.#entry(work, () => new Derived(work as Work, undefined)),
			WHOLE
		) as Answer;
	}

	/** The same about one thing. Plain data that says the same is the answer before. */
	deriveAbout<About extends Key, Answer>(work: QuestionAbout<View, About, Answer>, about: About): Answer {
		return this.#read(
			this.#entryAbout(work, about, () => new DerivedAlike(work as Work, about)),
			ABOUT
		) as Answer;
	}

	/**
	 * What is said about each of many things, in the list's order. After a change only those are asked about again that
	 * are other things, or about which something that was read for them alone has changed.
	 *
	 * @param say the key as well
	 */
	gather<Thing extends object, Said>(
		things: Question<View, readonly Thing[]>,
		say: (view: View, thing: Thing) => readonly Said[]
	): readonly Said[] {
		const make = (): Entry => new Gathered(things as Work, say as Work);
		return this.#read(this.#entry(say, make), WHOLE) as readonly Said[];
	}

	/** Asks the subject itself: what that is made of is nobody's read. */
	asked(question: Work, about: unknown): unknown {
		return this.#noting(null, question, this.#subject, about);
	}

	/** Works something out; what is read meanwhile is noted for the reader. */
	worked(work: Work, about: unknown, reader: Reader | null): unknown {
		return this.#noting(reader, work, this.#view, about);
	}

	#noting(reader: Reader | null, work: Work, of: unknown, about: unknown): unknown {
		const outer = this.#reader;
		this.#reader = reader;
		try {
			return work(of, about);
		} finally {
			this.#reader = outer;
		}
	}

	/** Whether something read by a time is another now. In the order of reading: what was read later may hang on it. */
	isOutdated(sources: Iterable<Entry>, since: number): boolean {
		for (const source of sources) {
			if (source.checkedAt !== this.#now) {
				try {
					this.#check(source);
				} catch {
					// It may fail only because what it is about has gone; who still asks for it will hear.
					return true;
				}
			}
			if (source.changedAt > since) return true;
		}
		return false;
	}

	/** Where the members of one list stand in another: many are gathered over the same two. */
	shift(before: readonly object[], after: readonly object[]): Shift {
		let shift = this.#shifts.get(after);
		if (shift?.before !== before) this.#shifts.set(after, (shift = shiftBetween(before, after)));
		return shift;
	}

	#read(entry: Entry, kind: typeof WHOLE | typeof ABOUT): unknown {
		this.#check(entry);
		if (this.#reader) note(this.#reader, entry, kind);
		return entry.answer;
	}

	#check(entry: Entry): void {
		if (entry.checkedAt === this.#now) return;
		const answer = entry.renewed(this);
		if (!Object.is(answer, entry.answer)) {
			entry.answer = answer;
			entry.changedAt = this.#now;
		}
		entry.checkedAt = this.#now;
	}

	#entry(key: unknown, make: () => Entry): Entry {
		let entry = this.#entries.get(key);
		if (!entry) this.#entries.set(key, (entry = make()));
		return entry;
	}

	#entryAbout(question: unknown, about: Key, make: () => Entry): Entry {
		let entries = this.#entriesAbout.get(question);
		if (!entries) this.#entriesAbout.set(question, (entries = new Map()));
		let entry = entries.get(about);
		if (!entry) entries.set(about, (entry = make()));
		return entry;
	}
}

const WHOLE = 'whole';
const ABOUT = 'about';

/** States after which what was not asked for is forgotten. */
const KEPT_STATES = 32;

/** What is read while something is worked out: of the subject as a whole, and about single things. */
interface Reader {
	readonly whole: Set<Entry> | null;
	/** The whole as well where there is no set of its own for it. Some may be there twice. */
	readonly about: Entry[];
}

type FullReader = Reader & { readonly whole: Set<Entry> };

function note({ whole, about }: Reader, entry: Entry, kind: typeof WHOLE | typeof ABOUT): void {
	if (kind === WHOLE && whole) whole.add(entry);
	else if (entry.notedIn !== about) {
		entry.notedIn = about;
		about.push(entry);
	}
}

type Checking = Pick<Ledger<object, unknown>, 'asked' | 'worked' | 'isOutdated' | 'shift'>;

const NEVER = -1;
const NOTHING_YET = Symbol('nothing yet');

/** An answer: when it was last looked into, and when it was last another. */
abstract class Entry {
	answer: unknown = NOTHING_YET;
	checkedAt = NEVER;
	changedAt = NEVER;
	/** The last list of reads it was put in. */
	notedIn: readonly Entry[] | null = null;
	abstract renewed(ledger: Checking): unknown;
}

/** There may be hundreds of thousands of these: they hold no functions of their own. */
class Asked extends Entry {
	readonly #question: Work;
	readonly #about: unknown;
	constructor(question: Work, about: unknown) {
		super();
		this.#question = question;
		this.#about = about;
	}
	renewed(ledger: Checking): unknown {
		return ledger.asked(this.#question, this.#about);
	}
}

class Derived extends Entry {
	readonly #work: Work;
	readonly #about: unknown;
	/** Null when there is nothing that could stand. */
	#sources: readonly Entry[] | null = null;
	constructor(work: Work, about: unknown) {
		super();
		this.#work = work;
		this.#about = about;
	}
	renewed(ledger: Checking): unknown {
		if (this.#sources && !ledger.isOutdated(this.#sources, this.checkedAt)) return this.answer;
		this.#sources = null;
		const about: Entry[] = [];
		const answer = ledger.worked(this.#work, this.#about, { whole: null, about });
		this.#sources = about;
		return this.same(answer);
	}
	/** The answer before, if it is the same. */
	protected same(answer: unknown): unknown {
		return sameList(this.answer, answer);
	}
}

class DerivedAlike extends Derived {
	protected override same(answer: unknown): unknown {
		return isAlike(this.answer, answer) ? this.answer : answer;
	}
}

/** Said of one thing, and what was read for it alone. */
interface Said {
	readonly values: readonly unknown[];
	readonly sources: readonly Entry[];
}

/** There is nothing to be said of most things. */
const NOTHING: Said = { values: [], sources: [] };

class Gathered extends Entry {
	readonly #list: Work;
	readonly #say: Work;
	#things: readonly object[] = [];
	#said: readonly Said[] = [];
	/** Read of the subject as a whole, for whichever thing; null when there is nothing that could stand. */
	#whole: Set<Entry> | null = null;

	constructor(list: Work, say: Work) {
		super();
		this.#list = list;
		this.#say = say;
	}

	renewed(ledger: Checking): unknown {
		const things = ledger.worked(this.#list, undefined, null) as readonly object[];
		const holds = this.#whole !== null && !ledger.isOutdated(this.#whole, this.checkedAt);
		const whole = holds ? this.#whole! : new Set<Entry>();
		const said = holds ? this.#saidBefore(ledger, things) : new Array<Said | undefined>(things.length);
		this.#whole = null;
		let isOther = things !== this.#things || !holds;
		let reader: FullReader = { whole, about: [] };
		for (let i = 0; i < things.length; i++) {
			const known = said[i];
			if (known !== undefined && (known === NOTHING || !ledger.isOutdated(known.sources, this.checkedAt))) continue;
			const values = ledger.worked(this.#say, things[i]!, reader) as readonly unknown[];
			said[i] = values.length === 0 && reader.about.length === 0 ? NOTHING : { values, sources: reader.about };
			// Of most things nothing is read: then the same list will do for the next one.
			if (said[i] !== NOTHING) reader = { whole, about: [] };
			isOther = true;
		}
		this.#things = things;
		this.#said = said as readonly Said[];
		this.#whole = whole;
		return isOther
			? sameList(
					this.answer,
					this.#said.flatMap(({ values }) => values)
				)
			: this.answer;
	}

	#saidBefore(ledger: Checking, things: readonly object[]): (Said | undefined)[] {
		if (things === this.#things) return this.#said as (Said | undefined)[];
		const { placeBefore } = ledger.shift(this.#things, things);
		return things.map((_, place) => this.#said[placeBefore(place)]);
	}
}

interface Shift {
	readonly before: readonly object[];
	/** Place that the thing now at a place had before; −1 for a new one. */
	placeBefore(place: number): number;
}

/** Nearly always all stand where they stood, but for one; or stand one place further. */
function shiftBetween(before: readonly object[], after: readonly object[]): Shift {
	const most = Math.min(before.length, after.length);
	let head = 0;
	while (head < most && before[head] === after[head]) head++;
	let tail = 0;
	while (tail < most - head && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
	const between = new Map<object, number>();
	for (let place = head; place < before.length - tail; place++) between.set(before[place]!, place);
	return {
		before,
		placeBefore(place) {
			if (place < head) return place;
			if (place >= after.length - tail) return place - after.length + before.length;
			return between.get(after[place]!) ?? -1;
		}
	};
}

/** The list before, if it has the same members. */
const sameList = (before: unknown, now: unknown): unknown =>
	Array.isArray(before) && Array.isArray(now) && isSame(before, now) ? before : now;
