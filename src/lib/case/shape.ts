/** The shape of a case file, version 1, before anything in it is believed. */
import * as v from 'valibot';

export const FORMAT = 'tidemark-case';
export const VERSION = 1;

/** Limits that no honest record reaches. */
export const MAX_FILE_BYTES = 5_000_000;
export const MAX_VISITS = 400;
export const MAX_FINDINGS = 400;
export const MAX_LABEL = 80;
export const MAX_NOTE = 4000;

const text = v.optional(v.string(), '');

export const findingShape = v.object({
  reflex: v.string(),
  side: v.string(),
  response: v.string(),
  state: v.optional(v.string(), 'not-recorded'),
  note: text,
});

export const visitShape = v.object({
  on: v.string(),
  examiner: text,
  note: text,
  findings: v.array(findingShape),
  milestones: v.optional(v.array(v.object({ milestone: v.string(), seen: v.boolean() })), []),
});

export const childShape = v.object({
  label: v.string(),
  born: v.string(),
  gestation: v.optional(v.string()),
  due: v.optional(v.string()),
  dating: v.optional(v.string(), 'unknown'),
  invented: v.optional(v.boolean(), false),
});

export const caseShape = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  child: childShape,
  visits: v.array(visitShape),
});

export type RawChild = v.InferOutput<typeof childShape>;
export type RawVisit = v.InferOutput<typeof visitShape>;
export type RawFinding = v.InferOutput<typeof findingShape>;
export type RawCase = v.InferOutput<typeof caseShape>;
