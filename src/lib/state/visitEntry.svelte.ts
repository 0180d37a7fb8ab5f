/** One visit while it is entered: what stands, what is asked of its date, and where it is kept. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { RawVisit } from '../case/shape.ts';
import type { Desk } from './desk.svelte.ts';
import { rawVisit, withVisit } from './edits.ts';
import type { Typed, TypedField } from './typedIn.svelte.ts';
import { blankVisit, isBlank } from './visit.ts';
import { dateAsks, followedBy, type DateAsks } from './visitDate.ts';

const NOTHING_ASKED: DateAsks = {
  beforeBirth: undefined,
  ahead: undefined,
  sameDay: undefined,
};

/** Where in a visit words stand, and how they are put there. */
export interface Words {
  in: (visit: RawVisit) => string;
  put: (visit: RawVisit, text: string) => RawVisit;
}

export class VisitEntry {
  readonly #desk: Desk;
  readonly #number: () => number | undefined;
  readonly today: CivilDate;
  /** A date ahead of today that was agreed to. */
  #agreed = $state<string>();
  /** The visit that follows, when this one was sorted in before it. */
  sortedBefore = $state<CivilDate>();

  readonly #typed = $derived.by(() => this.#desk.drafts.typed(this.#number()));
  /** The visit as it was last typed; undefined when there is none with this number. */
  readonly visit = $derived.by(
    () => this.#typed ?? (this.#number() === undefined ? blankVisit(this.today) : undefined),
  );
  /** The visit in the record that is shown, whatever its number comes to be; undefined for a new one. */
  readonly of = $derived.by(() => {
    const { open } = this.#desk;
    const number = this.#number();
    const kept = number === undefined ? undefined : open && rawVisit(open.record, number);
    return number === undefined ? undefined : `${open?.id} ${kept?.on} ${kept?.examiner}`;
  });
  readonly date = $derived.by(() => this.visit && parseCivil(this.visit.on));
  readonly problems = $derived.by(() => this.#desk.drafts.problems(this.#number()));
  readonly asks = $derived.by((): DateAsks => {
    const { visit } = this;
    const record = this.#desk.open?.record;
    if (!visit || !record) return NOTHING_ASKED;
    const asks = dateAsks(record, this.#number(), visit, this.today);
    return asks.ahead === this.#agreed ? { ...asks, ahead: undefined } : asks;
  });
  /** Whether something was entered that is not in the record yet. */
  readonly isWaiting = $derived.by(() => {
    const { open } = this.#desk;
    const { now: draft } = this.#desk.drafts;
    return (
      draft !== undefined &&
      draft.childId === open?.id &&
      draft.number === this.#number() &&
      !isBlank(draft.visit)
    );
  });

  constructor(desk: Desk, number: () => number | undefined, today: CivilDate) {
    this.#desk = desk;
    this.#number = number;
    this.today = today;
  }

  /** Keeps the visit as far as it has come; answers with its number once it stands in the record. */
  write(next: RawVisit, stroke?: number): number | undefined {
    const number = this.#number();
    const record = this.#desk.open?.record;
    if (!record || !this.visit) return number; // it was removed in another window
    const { ahead } = dateAsks(record, number, next, this.today);
    if (ahead && ahead !== this.#agreed) {
      this.#desk.drafts.hold(number, next);
      return number;
    }
    const kept = this.#desk.drafts.write(number, next, stroke);
    if (kept !== undefined && kept !== number) this.#sorted(kept);
    return kept;
  }

  /** Words in this visit, to be tied to the field in which they are typed. */
  field(words: Words, follow: (kept: number | undefined) => void): TypedField {
    return {
      value: () => (this.visit ? words.in(this.visit) : ''),
      of: () => this.of,
      take: (text, typed) => this.#take(words, text, typed, follow),
    };
  }

  #take(
    { put }: Words,
    text: string,
    { isPause, over, stroke }: Typed,
    follow: (kept: number | undefined) => void,
  ): boolean {
    const number = this.#number();
    const { visit } = this;
    const { drafts } = this.#desk;
    if (!visit) return false;
    const next = put(visit, text);
    const canKeep = drafts.canKeep(number, next);
    if (isPause && (this.asks.ahead || !canKeep)) return false;
    if (over === undefined || number === undefined || !canKeep) follow(this.write(next, stroke));
    else
      this.#desk.typedOver(
        (record) => withVisit(record, number, put(visit, over)),
        (record) => withVisit(record, number, next),
      );
    return true;
  }

  /** The date ahead of today is taken. */
  agree(): number | undefined {
    const { visit } = this;
    this.#agreed = this.asks.ahead;
    return visit && this.write(visit);
  }

  /** Says where a visit was sorted in. */
  #sorted(number: number): void {
    const { open } = this.#desk;
    this.sortedBefore = open && followedBy(open.record, number);
  }
}
