/**
 * Children drawn by chance: each event from the window of one source, each finding with the error rates.
 * They test the rules, and are no infants.
 */
import { v4 } from 'uuid';
import { addDays, type CivilDate } from '../../src/lib/age/civil.ts';
import type { Case, Visit } from '../../src/lib/case/case.ts';
import type { Finding } from '../../src/lib/case/finding.ts';
import { IMAGINED } from '../../src/lib/judge/reading/constants.ts';
import type { eventsOf, EventPrior } from '../../src/lib/judge/reading/prior.ts';

export type Events = ReturnType<typeof eventsOf>;

/** The true course of one reflex in axis days; Infinity is never. */
export interface Truth {
  a: number;
  i: number;
}

function draw({ pieces }: EventPrior, chance: () => number): number {
  let left = chance();
  for (const { from, to, weight } of pieces) {
    if (left < weight) return from === Infinity ? Infinity : from + (to - from) * chance();
    left -= weight;
  }
  return Infinity;
}

/** A course, drawn anew until it appears before it integrates, or never appears. */
export function drawTruth(events: Events, chance: () => number): Truth {
  for (;;) {
    const [a, i] = [draw(events.appears, chance), draw(events.integrates, chance)];
    if (a === Infinity) return { a, i: Infinity };
    if (a < i) return { a, i };
  }
}

/** What an examiner notes of one reflex on a day, both sides taken as one. */
export const answerOf = (
  { a, i }: Truth,
  day: number,
  missed: number,
  chance: () => number,
): boolean => chance() < (a <= day && day < i ? 1 - missed : IMAGINED);

export const finding = (reflex: string, there: boolean): Finding => ({
  reflex,
  side: 'midline',
  response: there ? 'elicited' : 'not-elicited',
  state: 'quiet-alert',
  note: '',
});

const BORN = '2026-01-01' as CivilDate;

/** A visit of a child born at term. @param day on the axis, from 280 on */
export const visitAt = (day: number, findings: readonly Finding[]): Visit => ({
  id: v4(),
  on: addDays(BORN, Math.round(day) - 280),
  examiner: '',
  note: '',
  findings,
  milestones: [],
});

export const bornAtTerm = (visits: readonly Visit[]): Case => ({
  child: {
    label: 'Drawn',
    birth: { born: BORN, due: BORN, gestationalDays: 280, dating: 'ultrasound-first-trimester' },
    datedBy: 'gestation',
    invented: true,
  },
  visits,
  tags: [],
  archived: false,
  question: '',
  decisions: [],
  agreed: [],
  sheet: null,
  family: null,
});
