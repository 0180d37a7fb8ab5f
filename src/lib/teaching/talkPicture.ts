/** A step of a talk made into what the chart is given: under its own sources, with its child if any. */
import type { Atlas } from '../atlas/atlas.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { agesAt, type Case } from '../case/case.ts';
import { coursesOf } from '../case/course.ts';
import { chartData } from '../chart/data.ts';
import type { ChartData, ChartView } from '../chart/model.ts';
import { CaseJudge, sheetOf, type Sheet } from '../judge/judge.ts';
import type { StepView, TalkSources } from '../lecture/talk.ts';
import { DEMO_ID, demoCase } from '../examples/demo.ts';
import { entriesOf, type Entry } from '../present/verdictEntries.ts';

export interface StepPicture {
  data: ChartData;
  view: ChartView;
  /** The record whose clocks the age line tells; undefined without a child. */
  record: Case | undefined;
  /** What the sources say of the last visit shown; empty where the hall judges first. */
  entries: readonly Entry[];
  /** Short names of the sources the step is read by, where it names any that are at hand. */
  sources: TalkSources;
}

/** The invented child with its visits up to a number of them. */
function childOf(step: StepView, atlas: Atlas): Case | undefined {
  if (step.child?.id !== DEMO_ID) return undefined;
  const record = demoCase(atlas);
  return { ...record, visits: record.visits.slice(0, step.child.visits) };
}

/** The step's sources that are at hand; all where it names none of those. */
function knownOf({ sources }: StepView, atlas: Atlas): TalkSources {
  if (typeof sources === 'string') return sources;
  const known = sources.filter((id) => atlas.sources.has(id));
  return known.length > 0 ? known : 'all';
}

function sheetFor(step: StepView, atlas: Atlas): Sheet {
  const known = knownOf(step, atlas);
  return sheetOf(atlas, typeof known === 'string' ? known : new Set(known));
}

/**
 * What a step shows of an atlas. What it names that is not at hand is left out.
 * @param lanes the part of the step's lanes that is in sight
 */
export function pictureOf(
  step: StepView,
  atlas: Atlas,
  lanes: readonly string[] = lanesOf(step, atlas),
): StepPicture {
  const sheet = sheetFor(step, atlas);
  const record = childOf(step, atlas);
  const ages = (on: Case['child']['birth']['born']) => agesAt(record!, on, DEFAULT_LIMITS);
  const judge = record && new CaseJudge(record, { atlas, sheet, limits: DEFAULT_LIMITS });
  const visits = record?.visits.map((visit) => judge!.visit(visit)) ?? [];
  const last = visits.at(-1);
  const known = knownOf(step, atlas);
  return {
    data: chartData(
      atlas,
      sheet,
      { reflexes: lanes, sequences: step.orders },
      record && {
        birth: record.child.birth,
        visits,
        courses: coursesOf(record.visits, ages),
        sequences: judge!.sequences,
        reading: judge!.reading,
      },
    ),
    view: {
      range: step.range,
      age: step.age,
      order: lanes,
      opened: new Set(step.opened),
      strip: step.orders.length > 0,
    },
    record,
    entries: record && last && step.child?.verdicts ? entriesOf([last], visits.slice(0, -1)) : [],
    sources:
      typeof known === 'string' ? known : known.map((id) => atlas.sources.get(id)?.short ?? id),
  };
}

/** The step's lanes that are at hand, from top to bottom. */
export const lanesOf = (step: StepView, atlas: Atlas): string[] =>
  step.lanes.filter((id) => atlas.reflexes.has(id));
