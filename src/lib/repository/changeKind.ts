/** What was done to the children here, and what is said of it. */

/** What a change was, for the sentence beside "Undo". */
export type Did =
  | 'child-added'
  | 'child-changed'
  | 'child-removed'
  | 'file-opened'
  | 'records-taken'
  | 'visit-added'
  | 'visit-changed'
  | 'visit-removed'
  | 'archived'
  | 'taken-back'
  | 'tagged'
  | 'sheet-changed'
  | 'question-changed'
  | 'decision-changed'
  | 'agreed-changed'
  | 'family-changed'
  | 'duplicated'
  | 'examples-added'
  | 'examples-cleared'
  | 'brought-back'
  | 'backup-taken'
  | 'clash-decided';

/** What has just happened and can be taken back; `count` tells two alike apart. */
export interface Told {
  what: 'did' | 'undid' | 'redid';
  did: Did;
  count: number;
  /** Whether part of what was to be undone or redone was changed in another window since, and stays. */
  stays: boolean;
}
