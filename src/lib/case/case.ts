/** A child's record, refined: everything in it exists and agrees. */
import type { CorrectionLimits } from '../age/clocks.ts';
import { agesOn, type Ages, type Birth } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import type { Family } from './family.ts';
import { testOf, type Finding } from './finding.ts';

export interface Child {
  label: string;
  birth: Birth;
  /** Which of the two the record gives; the other is computed, never stored. */
  datedBy: 'gestation' | 'due';
  /** Whether this child was made up, and must be shown as such. */
  invented: boolean;
}

/** A motor milestone looked for at a visit. */
export interface MilestoneSeen {
  milestone: string;
  seen: boolean;
  /** Whether the carer says that the child could do it and no longer can. Only where it was not seen. */
  lost?: true;
}

export interface Visit {
  /** A uuid: the same wherever the visit is, and no other's. */
  id: string;
  on: CivilDate;
  examiner: string;
  note: string;
  findings: readonly Finding[];
  milestones: readonly MilestoneSeen[];
}

/** What a team agreed on: what, who, and by when. */
export interface Decision {
  /** A uuid, as that of a visit. */
  id: string;
  on: CivilDate;
  text: string;
  who: string;
  by: CivilDate | null;
  done: boolean;
}

/** The sheet made for a visit to come: what to test, in the order it is to be tested. */
export interface VisitSheet {
  on: CivilDate;
  reflexes: readonly string[];
}

/**
 * What the examiners of one day agreed on where their answers differed: judged in place of both, which stay as
 * they were recorded. It has no tries: each examiner's was one.
 */
export type Agreed = { on: CivilDate } & Omit<Finding, 'tries'>;

/** What surrounds the visits: how a child is found again, and what a team asks and decides. */
export interface FollowUp {
  tags: readonly string[];
  /** Out of the way, and kept. */
  archived: boolean;
  /** What is put to the team. */
  question: string;
  decisions: readonly Decision[];
  /** One at most of a day, test and side. */
  agreed: readonly Agreed[];
  sheet: VisitSheet | null;
  /** What was settled for the family's page; null before anything was. */
  family: Family | null;
}

/** A child with the visits in the order of their dates. */
export interface Case extends FollowUp {
  child: Child;
  visits: readonly Visit[];
}

/** The date and the examiner of a visit: no two visits of a child share both. */
export const visitKey = (visit: Pick<Visit, 'on' | 'examiner'>): string =>
  `${visit.on} ${visit.examiner}`;

/**
 * A finding is named by its reflex and side: no two at a visit share both. Its variant is no part of the name, so
 * that a file, its parts that are merged and undone, and the addresses of its findings elsewhere stay as they were;
 * who tests two variants on a day records the second as a visit of its own.
 */
export const findingKey = (finding: { reflex: string; side: Side }): string =>
  `${finding.reflex} ${finding.side}`;

/** What an agreed answer is of: a day, a test and its side. */
export const agreedKey = ({
  on,
  side,
  ...of
}: Pick<Agreed, 'on' | 'reflex' | 'side' | 'variant'>): string => `${on} ${testOf(of)} ${side}`;

/** The child's ages at a visit. */
export const agesAt = (record: Case, on: CivilDate, limits: CorrectionLimits): Ages =>
  agesOn(record.child.birth, on, limits);
