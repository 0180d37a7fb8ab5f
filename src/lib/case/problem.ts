/** What can be wrong with an input, as codes: words/ makes the sentences that name field and mend. */

import type { FileKind } from './kind.ts';

/** Where in a record: a field of the child, of a visit, or of a finding at a visit (counted from 1). */
export interface Place {
  field: string;
  visit?: { number: number; on?: string };
  finding?: { number: number; reflex?: string };
}

export type ProblemCode =
  | { code: 'too-large'; megabytes: number; limitMegabytes: number }
  | { code: 'read-only' }
  | { code: 'not-json' }
  | { code: 'cut-short' }
  | { code: 'blank' }
  /** `kind`: it is another of Tidemark's files. */
  | { code: 'not-ours'; kind?: FileKind | undefined }
  | { code: 'newer-version'; version: string }
  | { code: 'unknown-version'; version: string }
  | { code: 'missing' }
  | { code: 'wrong-type'; expected: string }
  | { code: 'empty' }
  | { code: 'too-long'; limit: number }
  | { code: 'too-many'; limit: number }
  | { code: 'markup'; text: string }
  | { code: 'control' }
  | { code: 'bad-date'; text: string }
  | { code: 'far-date'; text: string }
  | { code: 'no-dating' }
  | { code: 'gestation-form'; text: string }
  | { code: 'gestation-range'; gestationalDays: number }
  | { code: 'due-range'; gestationalDays: number; due: string; born: string }
  | { code: 'due-contradicts'; byDue: number; byGestation: number }
  | { code: 'unknown-dating'; text: string; known: readonly string[] }
  | { code: 'exam-before-birth'; on: string; born: string }
  | { code: 'unknown-reflex'; text: string; nearest: string | undefined }
  | { code: 'unknown-milestone'; text: string; known: readonly string[] }
  | { code: 'unknown-side'; text: string; known: readonly string[] }
  | { code: 'no-such-side'; side: string; reflex: string; has: readonly string[] }
  | { code: 'unknown-response'; text: string; known: readonly string[] }
  | { code: 'unknown-state'; text: string; known: readonly string[] }
  /** `known`: the variants there are; none where the reflex is not dated by them. */
  | { code: 'unknown-variant'; text: string; reflex: string; known: readonly string[] }
  | { code: 'tries-range'; tries: number; most: number }
  | { code: 'tries-answered'; response: string }
  | { code: 'lost-seen'; milestone: string }
  | { code: 'unknown-word'; text: string; known: readonly string[] }
  | { code: 'duplicate-finding'; reflex: string; side: string }
  | { code: 'duplicate-visit'; on: string; examiner: string }
  | { code: 'bad-id'; text: string }
  | { code: 'duplicate-id'; id: string }
  | { code: 'duplicate-milestone'; milestone: string };

export type Problem = ProblemCode & { at: Place };

/** Either a refined value, or every problem found. */
export type Parsed<T> = { ok: true; value: T } | { ok: false; problems: readonly Problem[] };

export const refused = (...problems: Problem[]): { ok: false; problems: Problem[] } => ({
  ok: false,
  problems,
});
