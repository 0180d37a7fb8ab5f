/** The recording of one visit: its lines, the place one stands at, and what an answer leads to. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Side } from '../atlas/types.ts';
import { MOST_TRIES, type InfantState, type Response } from '../case/finding.ts';
import type { RawVisit } from '../case/shape.ts';
import { planFor } from '../judge/plan.ts';
import type { Judgement } from './judgement.svelte.ts';
import {
  answered,
  isDone,
  lastState,
  linesFor,
  nextOpen,
  placeAfter,
  placeAt,
  recordWithout,
  sheetServing,
  withOne,
  withStateFromHere,
  type Place,
} from '../drafts/recording.ts';
import { findingAt, reflexesIn, variantIn, withTries, withVariant } from '../drafts/visitEdits.ts';
import type { VisitEntry } from '../repository/visitEntry.svelte.ts';

/** What a touch changes, and where one stands after it. */
export interface Touched {
  visit: RawVisit;
  to: Place;
  /** How many lines of the sheet are not done, when this answer ended it. */
  ended: number | undefined;
}

const isRecorded = (visit: RawVisit, id: string): boolean => reflexesIn(visit).includes(id);

const joined = (some: readonly Side[], more: readonly Side[]): readonly Side[] => [
  ...some,
  ...more.filter((side) => !some.includes(side)),
];

export class Recorder {
  readonly #entry: VisitEntry;
  readonly #judgement: Judgement;
  readonly #atlas: Atlas;
  readonly #id: () => string | undefined;
  /** Reflexes added here beyond the sheet, before they are recorded. */
  #added = $state.raw<readonly string[]>([]);
  #at = $state.raw<Place>();
  #chosen = $state<InfantState>();
  /** Which variant is tested of a reflex, said before its first response. */
  #variants = $state.raw<Readonly<Record<string, string | undefined>>>({});
  /** What was not elicited at the last touch. */
  #missed = $state.raw<{ id: string; sides: readonly Side[] }>();

  /** The date the lines are planned for: the visit's, or the birth's while that lies after it. */
  readonly #date = $derived.by(() => {
    const { date, today } = this.#entry;
    const born = this.#judgement.record?.child.birth.born;
    return date && born && date >= born ? date : (born ?? today);
  });
  /** The sheet that was made for this visit, if one was. */
  readonly sheet = $derived.by(
    () => this.#judgement.record && sheetServing(this.#judgement.record.sheet, this.#date),
  );
  readonly #order = $derived.by((): readonly string[] => {
    const { record, options } = this.#judgement;
    if (this.sheet || !record) return this.sheet?.reflexes ?? [];
    const plan = planFor(recordWithout(record, this.#id()), this.#date, options);
    return plan.lines.map(({ reflex }) => reflex.id);
  });
  readonly lines = $derived.by(() => {
    const { visit } = this.#entry;
    return visit ? linesFor(this.#order, visit, this.#added, this.#atlas.reflexes) : [];
  });
  /** The line one stands on; undefined when there is none to stand on. */
  readonly line = $derived.by(() => {
    const { visit } = this.#entry;
    return (
      this.lines.find(({ id }) => id === this.#at?.id) ??
      (visit && nextOpen(this.lines, visit)) ??
      this.lines.find(({ reflex }) => reflex)
    );
  });
  readonly place = $derived.by((): Place | undefined => {
    const { line } = this;
    return line && (this.#at?.id === line.id ? this.#at : placeAt(line));
  });
  /** The infant's state that counts for what is recorded next. */
  readonly state = $derived.by((): InfantState => {
    const { visit } = this.#entry;
    return this.#chosen ?? (visit ? lastState(visit) : 'not-recorded');
  });
  /** Which variant of the line one stands on is tested; undefined: not said, or it has none. */
  readonly variant = $derived.by((): string | undefined => {
    const { visit } = this.#entry;
    const id = this.line?.id;
    if (!visit || id === undefined) return undefined;
    return isRecorded(visit, id) ? variantIn(visit, id) : this.#variants[id];
  });
  readonly #onSheet = $derived.by(() => this.lines.filter(({ onSheet }) => onSheet));
  /** How many lines of the sheet are done, and how many there are. */
  readonly progress = $derived.by(() => ({
    done: this.#onSheet.length - this.#left(this.#entry.visit),
    of: this.#onSheet.length,
  }));

  constructor(entry: VisitEntry, judgement: Judgement, atlas: Atlas, id: () => string | undefined) {
    this.#entry = entry;
    this.#judgement = judgement;
    this.#atlas = atlas;
    this.#id = id;
  }

  #left(visit: RawVisit | undefined): number {
    return this.#onSheet.filter((line) => !visit || !isDone(visit, line)).length;
  }

  stand(at: Place): void {
    this.#at = at;
  }

  /** A response on some sides of the line one stands on; undefined clears them. */
  answer(sides: readonly Side[], response: Response | undefined): Touched | undefined {
    const { line, lines } = this;
    const { visit } = this.#entry;
    const [first] = sides;
    if (!visit || !line || !first) return undefined;
    const next = answered(visit, line, sides, response, this.state, this.variant);
    const isSame = response === 'not-elicited' && this.#missed?.id === line.id;
    this.#missed =
      response === 'not-elicited'
        ? { id: line.id, sides: isSame ? joined(this.#missed!.sides, sides) : sides }
        : undefined;
    const to = response
      ? placeAfter(lines, line, sides.at(-1) ?? first, visit, next)
      : { id: line.id, side: first };
    const isEnd = isDone(next, line) && !isDone(visit, line) && to.id === line.id;
    return { visit: next, to, ended: isEnd ? this.#left(next) : undefined };
  }

  /** How often what was missing last has been tried; undefined where the last answer was none missing. */
  get tried(): { reflex: string; tries: number } | undefined {
    const { visit } = this.#entry;
    const missed = this.#missed;
    const finding = visit && missed && findingAt(visit, missed.id, missed.sides[0]!);
    if (finding?.response !== 'not-elicited') return undefined;
    return { reflex: missed!.id, tries: finding.tries ?? 1 };
  }

  /** What was missing last was tried once more, without an answer. */
  triedAgain(): RawVisit | undefined {
    const { visit } = this.#entry;
    const { tried } = this;
    if (!visit || !tried || tried.tries >= MOST_TRIES) return undefined;
    return withTries(visit, tried.reflex, this.#missed!.sides, tried.tries + 1);
  }

  /** A reason goes with the side one stands on, and with the others where they have none either. */
  reason(text: string): Touched | undefined {
    const { line, place } = this;
    const { visit } = this.#entry;
    if (!visit || !line || !place) return undefined;
    let next = withOne(visit, place, { note: text });
    for (const side of line.sides) {
      const other = findingAt(next, line.id, side);
      if (other?.response === 'not-assessable' && !other.note.trim())
        next = withOne(next, { id: line.id, side }, { note: text });
    }
    const onward = isDone(next, line) ? nextOpen(this.lines, next, line.id) : undefined;
    const open = line.sides.find((side) => !findingAt(next, line.id, side));
    const to = onward ? placeAt(onward) : { id: line.id, side: open ?? place.side };
    return { visit: next, to, ended: undefined };
  }

  /** A state from here on; answers with the visit where findings without one take it. */
  setState(state: InfantState): RawVisit | undefined {
    const { visit } = this.#entry;
    this.#chosen = state;
    return visit?.findings.some((finding) => finding.state === 'not-recorded')
      ? withStateFromHere(visit, state)
      : undefined;
  }

  /** Which variant of the line is tested; answers with the visit where findings that are there take it. */
  setVariant(variant: string | undefined): RawVisit | undefined {
    const { visit } = this.#entry;
    const id = this.line?.id;
    if (!visit || id === undefined) return undefined;
    this.#variants = { ...this.#variants, [id]: variant };
    return isRecorded(visit, id) ? withVariant(visit, id, variant) : undefined;
  }

  /** One more line beyond the sheet; answers with its first place. */
  add(id: string): Place | undefined {
    this.#added = [...this.#added, id];
    const line = this.lines.find((one) => one.id === id);
    return line && placeAt(line);
  }
}
