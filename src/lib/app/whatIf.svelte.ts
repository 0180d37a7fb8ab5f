/**
 * What if: another gestation at birth, dating, choice of sources or correction limits, tried on the
 * open child. Nothing of it is kept, and nothing in the record changes.
 */
import { birthFromGestation, type Birth, type CorrectionLimits } from '../age/clocks.ts';
import type { DatingMethod } from '../age/doubt.ts';
import type { Case } from '../case/case.ts';
import type { SourceChoice } from '../present/sourceChoice.ts';

export interface Tried {
  gestationalDays?: number | undefined;
  dating?: DatingMethod | undefined;
  sources?: SourceChoice | undefined;
  limits?: CorrectionLimits | undefined;
}

/** A birth with another gestation (the date of birth stands) or dating; itself where none is tried. */
export function triedBirth(birth: Birth, { gestationalDays, dating }: Tried): Birth {
  const days = gestationalDays ?? birth.gestationalDays;
  const method = dating ?? birth.dating;
  if (days === birth.gestationalDays && method === birth.dating) return birth;
  const other = birthFromGestation(birth.born, days, method);
  return 'code' in other ? birth : other;
}

const NOTHING: Tried = {};

export class Trial {
  #set = $state.raw<{ child: string | undefined; tried: Tried }>();
  readonly #child: () => string | undefined;
  /** Whether the controls are in sight. */
  isOpen = $state(false);

  /** `child` names the open child: what is tried on one is not tried on the next. */
  constructor(child: () => string | undefined) {
    this.#child = child;
  }

  get tried(): Tried {
    return this.#set && this.#set.child === this.#child() ? this.#set.tried : NOTHING;
  }

  /** Whether anything differs from the record and the settings. */
  get isOn(): boolean {
    return Object.values(this.tried).some((value) => value !== undefined);
  }

  set(part: Tried): void {
    this.#set = { child: this.#child(), tried: { ...this.tried, ...part } };
  }

  /** Back to the record, in one step. */
  clear(): void {
    this.#set = undefined;
  }

  applyTo(record: Case): Case {
    const birth = triedBirth(record.child.birth, this.tried);
    return birth === record.child.birth ? record : { ...record, child: { ...record.child, birth } };
  }
}
