/**
 * What was recorded only just now. A wrong touch that is corrected is no removal: a finding that is
 * taken out within the hour in which it was recorded here goes to undo alone, every other into the bin.
 */
import type { RawFinding, RawVisit } from '../case/shape.ts';
import { spotOf } from './findingParts.ts';

/** As long as an examination with its interruptions may take, ms. A choice of ours. */
const SITTING_MS = 3_600_000;

/** Where a finding stands. */
type Its = Pick<RawVisit, 'on' | 'examiner'>;

const nameOf = (child: string, { on, examiner }: Its, finding: RawFinding): string =>
  JSON.stringify([child, on, examiner, Object.entries(finding).sort()]);

export class Sitting {
  /** When what stands now was recorded here first, ms since 1970. */
  readonly #since = new Map<string, number>();
  /** What had stood before and was taken out here: put in again just so, it is what it was. */
  readonly #left = new Set<string>();
  readonly #now: () => number;

  constructor(now: () => number = () => Date.now()) {
    this.#now = now;
  }

  isFresh(child: string, its: Its, finding: RawFinding): boolean {
    const since = this.#since.get(nameOf(child, its, finding));
    return since !== undefined && this.#now() - since < SITTING_MS;
  }

  /** A visit was written by hand. A finding that is corrected is as old as before. */
  wrote(child: string, before: RawVisit | undefined, after: RawVisit): void {
    const was = new Map(before?.findings.map((finding) => [spotOf(finding), finding]));
    for (const finding of after.findings) {
      const old = before && was.get(spotOf(finding));
      was.delete(spotOf(finding));
      const name = nameOf(child, after, finding);
      const since = old ? this.#since.get(nameOf(child, before, old)) : this.#now();
      if (since === undefined || (!old && this.#left.has(name))) this.#since.delete(name);
      else this.#since.set(name, since);
    }
    for (const finding of was.values())
      if (before && !this.isFresh(child, before, finding))
        this.#left.add(nameOf(child, before, finding));
  }
}
