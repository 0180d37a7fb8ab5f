/**
 * How fast findings are judged: the verdict of every finding of many children's visits under every
 * source of the atlas, each age in doubt, on one core.
 */
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { TERM_DAYS } from '../../src/lib/age/axis.ts';
import type { Response } from '../../src/lib/case/finding.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';

const SHEET = [...sheetOf(ATLAS).values()];
const RESPONSES: readonly Response[] = ['not-elicited', 'weak', 'elicited', 'brisk'];
const SD_DAYS = [3.6, 5.1, 8, 13.6];

export interface Judging {
  findings: number;
  seconds: number;
  perSecond: number;
  /** Sources whose windows were read, in all. */
  windows: number;
}

/** Judges two sides of every reflex at each of a number of ages; `now` tells milliseconds. */
export function judge(ages: number, now: () => number): Judging {
  let findings = 0;
  let windows = 0;
  let firm = 0;
  const start = now();
  for (let i = 0; i < ages; i++) {
    const age = TERM_DAYS - 60 + ((i * 137.5) % 500);
    const sd = SD_DAYS[i % SD_DAYS.length] ?? 0;
    SHEET.forEach((compiled, index) => {
      const reading = readAt(compiled, age, sd);
      const totals = totalsOf(reading);
      windows += compiled.windows.length;
      for (let side = 0; side < 2; side++) {
        const response = RESPONSES[(i + index + side) % RESPONSES.length] ?? 'elicited';
        const judged = verdictOf({ response, state: 'quiet-alert' }, reading, totals);
        if (judged.verdict !== 'not-judged' && judged.firm) firm++;
        findings++;
      }
    });
  }
  const seconds = (now() - start) / 1000;
  if (firm === 0) throw new Error('no finding was firm: nothing was judged');
  return { findings, seconds, perSecond: findings / seconds, windows };
}
