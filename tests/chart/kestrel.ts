/** An invented child for the chart's pictures and tests: born at 31w2d, seen at 6 weeks and 5 months. */
import { v4 } from 'uuid';
import { NO_FOLLOW_UP } from '../../src/lib/case/followUp.ts';
import {
  agesOn,
  birthFromGestation,
  DEFAULT_LIMITS,
  type Birth,
} from '../../src/lib/age/clocks.ts';
import { parseCivil, type CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case, Visit } from '../../src/lib/case/case.ts';
import { coursesOf } from '../../src/lib/case/course.ts';
import type { Finding, Response } from '../../src/lib/case/finding.ts';
import { chartData, type ChartOptions, type JudgedChild } from '../../src/lib/chart/data.ts';
import type { ChartData } from '../../src/lib/chart/model.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';

export const civil = (text: string): CivilDate => {
  const date = parseCivil(text);
  if (!date) throw new Error(`no such date: ${text}`);
  return date;
};

const refined = birthFromGestation(civil('2026-03-04'), 31 * 7 + 2, 'ultrasound-first-trimester');
if ('code' in refined) throw new Error(refined.code);
export const BIRTH: Birth = refined;

const both = (reflex: string, left: Response, right: Response = left): Finding[] => [
  { reflex, side: 'left', response: left, state: 'quiet-alert', note: '' },
  { reflex, side: 'right', response: right, state: 'quiet-alert', note: '' },
];

const one = (reflex: string, response: Response): Finding[] => [
  { reflex, side: 'midline', response, state: 'quiet-alert', note: '' },
];

const visit = (on: string, ...findings: readonly Finding[][]): Visit => ({
  id: v4(),
  on: civil(on),
  examiner: 'first',
  note: '',
  findings: findings.flat(),
  milestones: [],
});

const EARLY = visit(
  '2026-06-15',
  both('stepping', 'elicited'),
  both('galant', 'elicited', 'not-elicited'),
  both('rooting', 'elicited'),
  both('palmar-grasp', 'elicited'),
  both('moro', 'elicited', 'weak'),
  both('atnr', 'elicited'),
  both('plantar-grasp', 'brisk', 'elicited'),
  one('tlr', 'elicited'),
  one('sucking', 'elicited'),
);

const LATE = visit(
  '2026-10-05',
  both('stepping', 'not-elicited'),
  both('galant', 'not-elicited'),
  both('rooting', 'not-elicited'),
  both('palmar-grasp', 'elicited'),
  both('moro', 'elicited', 'weak'),
  both('atnr', 'obligatory', 'elicited'),
  both('plantar-grasp', 'elicited'),
  one('tlr', 'elicited'),
  one('stnr', 'not-elicited'),
  one('positive-support', 'not-elicited'),
  one('landau', 'elicited'),
  one('acoustic-startle', 'not-assessable'),
  one('protective-forward', 'not-elicited'),
);

export const KESTREL: Case = {
  ...NO_FOLLOW_UP,
  child: { label: 'Kestrel', birth: BIRTH, datedBy: 'gestation', invented: true },
  visits: [EARLY, LATE],
};

/** The same child later, in whom the hands reached backward before they reached sideways. */
export const CROSSED: Case = {
  ...KESTREL,
  visits: [
    EARLY,
    LATE,
    visit(
      '2026-12-01',
      one('protective-forward', 'elicited'),
      both('protective-sideways', 'not-elicited'),
      one('protective-backward', 'not-elicited'),
      both('atnr', 'not-elicited'),
      one('stnr', 'elicited'),
    ),
    visit(
      '2027-01-12',
      both('protective-sideways', 'not-elicited'),
      one('protective-backward', 'elicited'),
      both('palmar-grasp', 'not-elicited'),
    ),
    visit('2027-03-20', both('protective-sideways', 'elicited'), one('stnr', 'not-elicited')),
  ],
};

/** The lanes shown for a child in the pictures. */
export const LANES = [
  'rooting',
  'sucking',
  'palmar-grasp',
  'plantar-grasp',
  'moro',
  'acoustic-startle',
  'atnr',
  'stnr',
  'tlr',
  'galant',
  'positive-support',
  'stepping',
  'labyrinthine-righting',
  'landau',
  'protective-forward',
  'protective-sideways',
  'protective-backward',
  'equilibrium-sitting',
];

export function judged(record: Case): JudgedChild {
  const ages = (on: CivilDate) => agesOn(record.child.birth, on, DEFAULT_LIMITS);
  const judge = new CaseJudge(record, { atlas: ATLAS, sheet: sheetOf(ATLAS) });
  return {
    birth: record.child.birth,
    visits: record.visits.map((visit) => judge.visit(visit)),
    courses: coursesOf(record.visits, ages),
    sequences: judge.sequences,
    reading: judge.reading,
  };
}

export const dataOf = (record?: Case, options: ChartOptions = { reflexes: LANES }): ChartData =>
  chartData(ATLAS, sheetOf(ATLAS), options, record && judged(record));
