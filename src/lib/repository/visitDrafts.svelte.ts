/** What is typed in: a visit is kept in the record as soon as it can be, and nothing is lost before. */
import type { Atlas } from '../atlas/atlas.ts';
import { parseRaw } from '../case/parse.ts';
import type { Problem } from '../case/problem.ts';
import type { RawVisit } from '../case/shape.ts';
import type { Desk } from './cases.svelte.ts';
import { rawVisit, withVisit } from './edits.ts';
import { isBlank } from '../drafts/visitEdits.ts';

/** A visit typed in that cannot be kept yet: nothing of it is lost by looking elsewhere. */
export interface Draft {
  childId: string;
  /** The id of the visit in the record that it belongs to; undefined for a new one. */
  of: string | undefined;
  visit: RawVisit;
}

/** Details of a child as they stand in the form, not saved yet. */
export interface FormDraft {
  /** Undefined for a child that is not there yet. */
  childId: string | undefined;
  by: 'gestation' | 'due';
  label: string;
  born: string;
  gestation: string;
  due: string;
  dating: string;
}

/** A decision of a conference as it stands in the form, not added yet. */
export interface DecisionDraft {
  childId: string;
  text: string;
  who: string;
  by: string;
}

export class Drafts {
  now = $state.raw<Draft | undefined>(undefined);
  forms = $state.raw<readonly FormDraft[]>([]);
  decisions = $state.raw<readonly DecisionDraft[]>([]);
  readonly #desk: Pick<Desk, 'open' | 'putVisit'>;
  readonly #atlas: Atlas;

  constructor(desk: Pick<Desk, 'open' | 'putVisit'>, atlas: Atlas) {
    this.#desk = desk;
    this.#atlas = atlas;
  }

  /**
   * Keeps a visit as far as it has come: in the record when it can be kept, else as a draft of which
   * nothing is lost. Answers with the visit's id once it is in the record.
   * @param of the visit's id where it is in the record; undefined for a new one
   */
  write(of: string | undefined, visit: RawVisit, stroke?: number): string | undefined {
    const { open } = this.#desk;
    if (!open) return undefined;
    if (of === undefined && isBlank(visit)) this.now = { childId: open.id, of, visit };
    else {
      const parsed = this.#desk.putVisit(visit, stroke);
      this.now = parsed.ok ? undefined : { childId: open.id, of, visit };
      if (parsed.ok) return visit.id;
    }
    return of;
  }

  /** Whether a visit could be kept in the record as it is. */
  canKeep(of: string | undefined, visit: RawVisit): boolean {
    const { open } = this.#desk;
    if (!open || (of === undefined && isBlank(visit))) return false;
    return parseRaw(withVisit(open.record, visit), this.#atlas).ok;
  }

  /** Holds a visit back as a draft, though it could be kept: something is asked first. */
  hold(of: string | undefined, visit: RawVisit): void {
    if (this.#desk.open) this.now = { childId: this.#desk.open.id, of, visit };
  }

  /** A visit as it was last typed in: the draft of it, else what the record has. */
  typed(of: string | undefined): RawVisit | undefined {
    const { now: draft } = this;
    const { open } = this.#desk;
    if (!open) return undefined;
    if (draft?.childId === open.id && draft.of === of) return draft.visit;
    return of === undefined ? undefined : rawVisit(open.record, of);
  }

  /** What keeps the draft of a visit from being kept. */
  problems(of: string | undefined): readonly Problem[] {
    const { now: draft } = this;
    const { open } = this.#desk;
    if (!open || draft?.childId !== open.id || draft.of !== of) return [];
    if (of === undefined && isBlank(draft.visit)) return [];
    const parsed = parseRaw(withVisit(open.record, draft.visit), this.#atlas);
    return parsed.ok ? [] : parsed.problems;
  }

  discard(): void {
    this.now = undefined;
  }

  /** What was typed of a decision on a child, and not added. */
  decision(childId: string): DecisionDraft {
    const found = this.decisions.find((one) => one.childId === childId);
    return found ?? { childId, text: '', who: '', by: '' };
  }

  /** Holds a decision as far as it is typed; one of nothing goes. */
  holdDecision(decision: DecisionDraft): void {
    const others = this.decisions.filter(({ childId }) => childId !== decision.childId);
    const isBlank = !decision.text && !decision.who && !decision.by;
    this.decisions = isBlank ? others : [...others, decision];
  }

  /** What was typed of a child's details, or of a new child's, and not saved. */
  form(childId: string | undefined): FormDraft | undefined {
    return this.forms.find((form) => form.childId === childId);
  }

  holdForm(form: FormDraft): void {
    this.forms = [...this.forms.filter(({ childId }) => childId !== form.childId), form];
  }

  /** The form was saved, or what was typed in it is given up. */
  dropForm(childId: string | undefined): void {
    if (this.form(childId)) this.forms = this.forms.filter((form) => form.childId !== childId);
  }
}
