/**
 * What a person does to the visits, findings and decisions of a record, as data: which part, and what it
 * becomes. A command names its part by id, so that it means the same whatever else has changed meanwhile.
 */
import type { RawCase, RawDecision, RawFinding, RawVisit } from '../shape.ts';

type RawMilestone = RawVisit['milestones'][number];
export type RawPage = NonNullable<RawCase['family']>['pages'][number];

/** One reflex on one side: a visit says of it one thing at most. */
export type Spot = Pick<RawFinding, 'reflex' | 'side'>;

/**
 * What is set goes in place of what has its name there; else before what `before` names, and at
 * the end where that is not there.
 */
export type Command =
  | {
      kind: 'add-visit';
      visit: RawVisit;
      before?: string | undefined;
      /** What was settled for its page, and the visit whose page it goes before. */
      page?: RawPage | undefined;
      pageBefore?: string | undefined;
    }
  /** With what was settled for its page. */
  | { kind: 'remove-visit'; visit: string }
  | { kind: 'redate-visit'; visit: string; on: string; examiner: string }
  | { kind: 'set-visit-note'; visit: string; note: string }
  | { kind: 'set-finding'; visit: string; finding: RawFinding; before?: Spot | undefined }
  | { kind: 'remove-finding'; visit: string; spot: Spot }
  | { kind: 'set-milestone'; visit: string; milestone: RawMilestone; before?: string | undefined }
  | { kind: 'remove-milestone'; visit: string; milestone: string }
  | { kind: 'set-decision'; decision: RawDecision; before?: string | undefined }
  | { kind: 'remove-decision'; decision: string };
