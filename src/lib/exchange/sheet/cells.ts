/** The cells of a sheet as they are read, and what is told of those that are wrong. */
import { NIL } from 'uuid';
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import { parseRaw } from '../../case/parse.ts';
import type { Problem } from '../../case/problem.ts';
import { FORMAT, VERSION, type RawChild, type RawVisit } from '../../case/shape.ts';
import type { SheetField } from './columns.ts';
import { readDate } from './dates.ts';
import { cellOf, columnOf, type Line, type Mapping } from './lines.ts';
import { fieldOf, mendedBy, type CellFault, type CellProblem } from './problems.ts';

const MAX_PROBLEMS = 1000;

/** A visit without what was found. */
type Bare = Pick<RawVisit, 'on' | 'examiner' | 'note'>;

export class Cells {
  readonly problems: CellProblem[] = [];
  wrong = 0;
  /** The faults of the cells that the lines of a row share, each of which is told once. */
  readonly #told = new Set<string>();
  #toldRow = 0;
  readonly #alike = new Map<string, CellProblem>();
  /** Dates, children and visits repeat from row to row, and to read them is slow. */
  readonly #dates = new Map<string, CivilDate | undefined>();
  readonly #asked = new Map<string, readonly Problem[]>();
  readonly #mapping: Mapping;
  readonly #atlas: Atlas;

  constructor(mapping: Mapping, atlas: Atlas) {
    this.#mapping = mapping;
    this.#atlas = atlas;
  }

  text(line: Line, field: SheetField): string {
    return cellOf(line, field, this.#mapping);
  }

  date(line: Line, field: 'date' | 'born' | 'due'): CivilDate | undefined {
    const text = this.text(line, field);
    if (text === '') return this.refuse(line, field, { code: 'empty' });
    const { order } = this.#mapping;
    if (!this.#dates.has(text)) this.#dates.set(text, readDate(text, order));
    return (
      this.#dates.get(text) ??
      this.refuse(line, field, { code: 'bad-date', text: text.slice(0, 60), order })
    );
  }

  refuse(line: Line, field: SheetField, fault: CellFault): undefined {
    const row = line.row.number;
    const column = columnOf(line, field, this.#mapping);
    if (line.answers && line.answers.column !== column) {
      if (row !== this.#toldRow) this.#told.clear();
      this.#toldRow = row;
      const key = `${field} ${fault.code} ${'reflex' in fault ? fault.reflex : ''}`;
      if (this.#told.has(key)) return;
      this.#told.add(key);
    }
    this.wrong++;
    const mend = mendedBy(field, column, fault);
    const alike = mend === undefined ? undefined : this.#alike.get(mend);
    if (alike) alike.more++;
    else if (this.problems.length < MAX_PROBLEMS) {
      const problem: CellProblem = { ...fault, row, field, column, more: 0 };
      this.problems.push(problem);
      if (mend !== undefined) this.#alike.set(mend, problem);
    }
  }

  /**
   * Whether a record would take what a row says of a child and a visit. Asked row by row, so that a faulty
   * one is told by its own cells and takes no other along.
   */
  isTaken(line: Line, child: RawChild, visit?: Bare): boolean {
    const problems = this.#against(child, visit);
    // of two things that are wrong in a cell the first is told
    const first = new Map(problems.toReversed().map((problem) => [fieldOf(problem), problem]));
    for (const [field, problem] of first) this.refuse(line, field, { code: 'record', problem });
    return problems.length === 0;
  }

  /** Whether a child could be as it is said; nothing is told. */
  couldBe(child: RawChild): boolean {
    return this.#against(child).length === 0;
  }

  #against(child: RawChild, visit?: Bare): readonly Problem[] {
    const key = JSON.stringify([child, visit]);
    let problems = this.#asked.get(key);
    if (!problems) {
      const visits = visit ? [{ id: NIL, ...visit, findings: [], milestones: [] }] : [];
      const parsed = parseRaw({ format: FORMAT, version: VERSION, child, visits }, this.#atlas);
      this.#asked.set(key, (problems = parsed.ok ? [] : parsed.problems));
    }
    return problems;
  }
}
