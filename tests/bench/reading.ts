/**
 * How long it takes to read a child over visits: 6 visits of 40 findings, every order of every sequence,
 * where each course is at the last visit, its dates and what is to change, each visit's best-fitting ages
 * and what was seen before and is not now. On one core, with the sources' own priors kept between children.
 */
import { v4 } from 'uuid';
import { addDays, type CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case, Visit } from '../../src/lib/case/case.ts';
import type { Finding, Response } from '../../src/lib/case/finding.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../src/lib/judge/reading/child.ts';
import { fitsOf } from '../../src/lib/judge/reading/fit.ts';
import { notNowOf } from '../../src/lib/judge/reading/lost.ts';

const VISITS = 6;
const FINDINGS = 40;
const EVERY_DAYS = 60;
const BORN = '2026-01-01' as CivilDate;
const RESPONSES: readonly Response[] = ['not-elicited', 'elicited', 'weak', 'elicited'];

/** Reflexes in turn, a side each, with answers that differ from child to child. */
function findingsAt(visit: number, child: number): Finding[] {
  const reflexes = [...ATLAS.reflexes.keys()];
  return Array.from({ length: FINDINGS }, (_, k) => ({
    reflex: reflexes[k % reflexes.length]!,
    side: k < reflexes.length ? 'left' : 'right',
    response: RESPONSES[(k * 7 + visit * 3 + child) % RESPONSES.length]!,
    state: 'quiet-alert',
    note: '',
  }));
}

function childOf(child: number, gestationalDays: number): Case {
  const visits = Array.from({ length: VISITS }, (_, k): Visit => {
    const on = addDays(BORN, 30 + k * EVERY_DAYS + (child % 7));
    const milestones = [...ATLAS.milestones.keys()].map((milestone, index) => ({
      milestone,
      seen: k > index,
    }));
    return { id: v4(), on, examiner: '', note: '', findings: findingsAt(k, child), milestones };
  });
  const due = addDays(BORN, 280 - gestationalDays);
  return {
    child: {
      label: `Child ${child}`,
      birth: { born: BORN, due, gestationalDays, dating: 'ultrasound-14w0d-21w6d' },
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
  };
}

/** Everything that is inferred of one child; a sum, so that nothing is left out by the engine. */
function readAll(record: Case, priors: Priors): number {
  const reading = new ChildReading(record, priors);
  let sum = 0;
  for (const pairs of reading.orders().values())
    for (const { probability } of pairs) sum += probability || 0;
  const last = reading.clock.dayOn(record.visits.at(-1)!.on);
  for (const reflex of reading.days.keys()) {
    const course = reading.course(reflex)!;
    sum += course.states(last).there;
    sum += course.dates('appears').median + course.dates('integrates').low;
    sum += course.change(last)?.halfBy ?? 0;
  }
  for (const visit of record.visits)
    for (const fit of fitsOf(visit, priors, reading.clock.sdDays)) sum += fit.takingPart;
  return sum + notNowOf(reading).length;
}

/** Milliseconds that each of some children takes, ascending. @param now tells milliseconds */
export function readChildren(
  children: number,
  gestationalDays: number,
  now: () => number,
): number[] {
  const priors = new Priors(ATLAS, sheetOf(ATLAS, 'default'));
  const records = Array.from({ length: children }, (_, k) => childOf(k, gestationalDays));
  const times = records.map((record) => {
    const start = now();
    if (readAll(record, priors) === 0) throw new Error('nothing was read');
    return now() - start;
  });
  return times.sort((a, b) => a - b);
}
