/** One visit while it is entered: what stands, what is asked of its date, and where it is kept. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { Case } from '../case/case.ts';
import type { RawVisit } from '../case/shape.ts';
import type { Desk } from './cases.svelte.ts';
import { withVisit } from './edits.ts';
import type { Typed, TypedField } from '../drafts/typedField.svelte.ts';
import { blankVisit, isBlank } from '../drafts/visitEdits.ts';
import { dateAsks, followedBy, type DateAsks } from '../drafts/visitDate.ts';

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

/** Where among the visits of a record one is; -1 where it is not there. */
const placeOf = ({ visits }: Case, id: string): number =>
  visits.findIndex((visit) => visit.id === id);

export class VisitEntry {
  readonly #desk: Desk;
  readonly #id: () => string | undefined;
  readonly today: CivilDate;
  /** A date ahead of today that was agreed to. */
  #agreed = $state<string>();
  /** The visit that follows, when this one was sorted in before it. */
  sortedBefore = $state<CivilDate>();

  readonly #typed = $derived.by(() => this.#desk.drafts.typed(this.#id()));
  /** The visit as it was last typed; undefined when there is none with this id. */
  readonly visit = $derived.by(
    () => this.#typed ?? (this.#id() === undefined ? blankVisit(this.today) : undefined),
  );
  /** Names the visit in the record that is shown; undefined for a new one. */
  readonly of = $derived.by(() => {
    const { open } = this.#desk;
    const id = this.#id();
    const kept = open?.record.visits.find((visit) => visit.id === id);
    return id === undefined ? undefined : `${open?.id} ${kept?.id}`;
  });
  readonly date = $derived.by(() => this.visit && parseCivil(this.visit.on));
  readonly problems = $derived.by(() => this.#desk.drafts.problems(this.#id()));
  readonly asks = $derived.by((): DateAsks => {
    const { visit } = this;
    const record = this.#desk.open?.record;
    if (!visit || !record) return NOTHING_ASKED;
    const asks = dateAsks(record, visit, this.today);
    return asks.ahead === this.#agreed ? { ...asks, ahead: undefined } : asks;
  });
  /** Whether something was entered that is not in the record yet. */
  readonly isWaiting = $derived.by(() => {
    const { open } = this.#desk;
    const { now: draft } = this.#desk.drafts;
    return (
      draft !== undefined &&
      draft.childId === open?.id &&
      draft.of === this.#id() &&
      !isBlank(draft.visit)
    );
  });

  /** @param id of the visit in the record; undefined for a new one */
  constructor(desk: Desk, id: () => string | undefined, today: CivilDate) {
    this.#desk = desk;
    this.#id = id;
    this.today = today;
  }

  /** Keeps the visit as far as it has come; answers with its id once it is in the record. */
  write(next: RawVisit, stroke?: number): string | undefined {
    const id = this.#id();
    const record = this.#desk.open?.record;
    if (!record || !this.visit) return id; // it was removed in another window
    const { ahead } = dateAsks(record, next, this.today);
    if (ahead && ahead !== this.#agreed) {
      this.#desk.drafts.hold(id, next);
      return id;
    }
    const kept = this.#desk.drafts.write(id, next, stroke);
    if (kept !== undefined) this.#sorted(record, kept);
    return kept;
  }

  /** Words in this visit, to be tied to the field in which they are typed. */
  field(words: Words, follow: (kept: string | undefined) => void): TypedField {
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
    follow: (kept: string | undefined) => void,
  ): boolean {
    const id = this.#id();
    const { visit } = this;
    const { drafts } = this.#desk;
    if (!visit) return false;
    const next = put(visit, text);
    const canKeep = drafts.canKeep(id, next);
    if (isPause && (this.asks.ahead || !canKeep)) return false;
    if (over === undefined || id === undefined || !canKeep) follow(this.write(next, stroke));
    else
      this.#desk.typedOver(
        (record) => withVisit(record, put(visit, over)),
        (record) => withVisit(record, next),
      );
    return true;
  }

  /** The date ahead of today is taken. */
  agree(): string | undefined {
    const { visit } = this;
    this.#agreed = this.asks.ahead;
    return visit && this.write(visit);
  }

  /** Says where a visit was sorted in, if it has another place than in the record before. */
  #sorted(before: Case, id: string): void {
    const after = this.#desk.open?.record;
    if (!after || placeOf(before, id) === placeOf(after, id)) return;
    this.sortedBefore = followedBy(after, id);
  }
}
