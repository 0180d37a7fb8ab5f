/** Which child each row of a sheet is of: the open one, one here by its label, or a new one. */
import type { CivilDate } from '../../age/civil.ts';
import { parseGestation } from '../../age/gestation.ts';
import { rawOf } from '../../case/raw.ts';
import { FORMAT, MAX_VISITS, VERSION, type RawCase, type RawChild } from '../../case/shape.ts';
import type { Kept } from '../../store/store.ts';
import type { Cells } from './cells.ts';
import type { Draft } from './applyPlan.ts';
import type { Line } from './lines.ts';

const BIRTH = ['born', 'gestation', 'due'] as const;
/** What a row says of a birth; a field that it leaves empty is not in it. */
type Birth = Partial<Record<(typeof BIRTH)[number], string>>;

/** Labels are one whatever the case of their letters. */
const plain = (label: string): string => label.toLowerCase();

/** Whether two rows say the same, in whatever words: 33 weeks are 33w0d. */
const isSame = (field: keyof Birth, one: string, other: string): boolean =>
  one === other || (field === 'gestation' && parseGestation(one) === parseGestation(other));

export class Children {
  /** Every child that a row is of, by the child here or by the label of a new one. */
  readonly drafts = new Map<Kept | string, Draft>();
  readonly #called = new Map<string, Kept[]>();
  readonly #cells: Cells;
  readonly #isNamed: boolean;
  readonly #open: Kept | undefined;

  /**
   * @param isNamed whether a column names the child
   * @param open whose the rows are where none does
   */
  constructor(cells: Cells, shelf: readonly Kept[], isNamed: boolean, open: Kept | undefined) {
    this.#cells = cells;
    this.#isNamed = isNamed;
    this.#open = open;
    for (const kept of shelf) {
      const label = plain(kept.record.child.label);
      const alike = this.#called.get(label);
      if (alike) alike.push(kept);
      else this.#called.set(label, [kept]);
    }
  }

  of(line: Line): Draft | undefined {
    const open = this.#isNamed ? undefined : this.#open;
    if (open) return this.#one(line, [open]);
    const label = this.#cells.text(line, 'child');
    // a row that leaves the child out is not the open one's: whose it is nobody knows
    if (label === '')
      return this.#cells.refuse(
        line,
        'child',
        this.#isNamed ? { code: 'unnamed' } : { code: 'no-child', text: '' },
      );
    const alike = this.#called.get(plain(label));
    return alike ? this.#one(line, alike) : this.#fresh(line, label);
  }

  /** The one of the children here with a label that is meant; the birth date parts them. */
  #one(line: Line, alike: readonly Kept[]): Draft | undefined {
    const isGiven = this.#cells.text(line, 'born') !== '';
    const born = isGiven ? this.#cells.date(line, 'born') : undefined;
    if (isGiven && !born) return undefined;
    const fit = born ? alike.filter(({ record }) => record.child.birth.born === born) : alike;
    const [here] = fit;
    if (here && fit.length === 1)
      return this.#draft(here, line, () => ({
        label: here.record.child.label,
        here,
        raw: rawOf(here.record),
      }));
    return this.#noneOf(line, alike, fit.length, born);
  }

  #noneOf(line: Line, alike: readonly Kept[], fit: number, born: CivilDate | undefined): undefined {
    const text = this.#cells.text(line, 'child').slice(0, 60);
    const [only] = alike;
    if (fit > 0 || !born)
      return this.#cells.refuse(line, 'child', { code: 'several', text, count: fit, born });
    if (only && alike.length === 1) {
      const { born: here } = only.record.child.birth;
      return this.#cells.refuse(line, 'born', { code: 'other-birth', text: born, here });
    }
    const count = alike.length;
    return this.#cells.refuse(line, 'born', { code: 'none-of-several', text, count, born });
  }

  /** A child that is not here: as an earlier row said it, or by this one. */
  #fresh(line: Line, label: string): Draft | undefined {
    const key = plain(label);
    const said = this.#birth(line);
    const known = this.drafts.get(key);
    if (known) return said && this.#agrees(line, said, known) ? known : undefined;
    if (!said) return undefined;
    const { born } = said;
    if (born === undefined || (said.gestation ?? said.due) === undefined)
      return this.#cells.refuse(line, 'child', { code: 'no-child', text: label.slice(0, 60) });
    const child: RawChild = { label, ...said, born, dating: 'unknown', invented: false };
    if (!this.#cells.isTaken(line, child)) return undefined;
    const raw: RawCase = { format: FORMAT, version: VERSION, child, visits: [] };
    return this.#draft(key, line, () => ({ label, here: undefined, raw }));
  }

  /** What a row says of a birth; undefined where a cell of it cannot be read. */
  #birth(line: Line): Birth | undefined {
    const before = this.#cells.wrong;
    const date = (field: 'born' | 'due'): string | undefined =>
      this.#cells.text(line, field) === '' ? undefined : this.#cells.date(line, field);
    const [born, due] = [date('born'), date('due')];
    // weeks with a comma or point could be a fraction of a week or days: only a whole one is certain
    const gestation = this.#cells.text(line, 'gestation').replace(/[.,]0+$/, '');
    if (gestation !== '' && parseGestation(gestation) === undefined)
      this.#cells.refuse(line, 'gestation', { code: 'gestation', text: gestation.slice(0, 60) });
    if (this.#cells.wrong > before) return undefined;
    return {
      ...(born ? { born } : {}),
      ...(gestation ? { gestation } : {}),
      ...(due ? { due } : {}),
    };
  }

  /** Whether a later row of a new child says of its birth what the first one did. */
  #agrees(line: Line, now: Birth, { raw: { child }, line: { row } }: Draft): boolean {
    const first = row.number;
    for (const field of BIRTH) {
      const [before, said] = [child[field], now[field]];
      if (before === undefined || said === undefined || isSame(field, before, said)) continue;
      this.#cells.refuse(line, field, { code: 'other-row', first, of: field, before, now: said });
      return false;
    }
    // a gestation beside a due date, or the other way round: both must mean one birth
    const of = child.gestation === undefined ? 'due' : 'gestation';
    const field = of === 'due' ? 'gestation' : 'due';
    const [before, said] = [child[of], now[field]];
    if (before === undefined || said === undefined || child[field] !== undefined) return true;
    if (this.#cells.couldBe({ ...child, [field]: said })) return true;
    this.#cells.refuse(line, field, { code: 'other-row', first, of, before, now: said });
    return false;
  }

  #draft(key: Kept | string, line: Line, make: () => Pick<Draft, 'label' | 'here' | 'raw'>): Draft {
    const known = this.drafts.get(key);
    if (known) return known;
    const child = make();
    const room = MAX_VISITS - child.raw.visits.length;
    const draft: Draft = { ...child, room, line, visits: new Map(), lineOf: new Map() };
    this.drafts.set(key, draft);
    return draft;
  }
}
