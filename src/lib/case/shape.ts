/** The shape of a case file, version 2, before anything in it is believed. Version 1 is in `older.ts`. */
import * as v from 'valibot';

export const FORMAT = 'tidemark-case';
export const VERSION = 2;

/** Limits that no honest record reaches. */
export const MAX_FILE_BYTES = 5_000_000;
export const MAX_VISITS = 400;
export const MAX_FINDINGS = 400;
export const MAX_LABEL = 80;
export const MAX_NOTE = 4000;
export const MAX_TAGS = 20;
export const MAX_DECISIONS = 400;
export const MAX_AGREED = 4000;
export const MAX_PAGES = 401;
export const MAX_EDITS = 400;
/** A family's page tells of this many reflexes at most: more than six are not taken in. */
export const MAX_TOLD = 6;

const text = v.optional(v.string(), '');

export const findingShape = v.object({
  reflex: v.string(),
  side: v.string(),
  response: v.string(),
  state: v.optional(v.string(), 'not-recorded'),
  note: text,
  /** Which variant of the response was tested. */
  variant: v.optional(v.string()),
  /** How often it was tried at the visit, 1 to 5; 1 where it is left out. */
  tries: v.optional(v.number()),
});

/** An answer that the examiners of a day agreed on. */
const agreedShape = v.object({
  on: v.string(),
  reflex: v.string(),
  side: v.string(),
  response: v.string(),
  state: v.optional(v.string(), 'not-recorded'),
  note: text,
  variant: v.optional(v.string()),
});

/** A milestone looked for. `lost`: the carer says that the child could do it and no longer can. */
const milestoneShape = v.object({
  milestone: v.string(),
  seen: v.boolean(),
  lost: v.optional(v.boolean()),
});

/** A visit but for its id. */
export const visitFields = {
  on: v.string(),
  examiner: text,
  note: text,
  findings: v.array(findingShape),
  milestones: v.optional(v.array(milestoneShape), []),
};

export const visitShape = v.object({ id: v.string(), ...visitFields });

export const childShape = v.object({
  label: v.string(),
  born: v.string(),
  gestation: v.optional(v.string()),
  due: v.optional(v.string()),
  dating: v.optional(v.string(), 'unknown'),
  invented: v.optional(v.boolean(), false),
});

/** A decision but for its id. */
export const decisionFields = {
  on: v.string(),
  text: v.string(),
  who: text,
  by: text,
  done: v.optional(v.boolean(), false),
};

const decisionShape = v.object({ id: v.string(), ...decisionFields });

const sheetShape = v.object({ on: v.string(), reflexes: v.array(v.string()) });

const editShape = v.object({
  key: v.string(),
  language: v.string(),
  text: v.string(),
  over: text,
});

/** What was settled for the page of one visit. */
export const pageShape = v.object({
  visit: text,
  chosen: v.optional(v.array(v.string())),
  edits: v.optional(v.array(editShape), []),
});

/** What was settled for the family's page. */
const familyShape = v.object({
  language: v.optional(v.string(), 'en'),
  pronoun: v.optional(v.string(), 'name'),
  calledName: text,
  clinic: v.optional(v.object({ name: text, phone: text })),
  pages: v.optional(v.array(pageShape), []),
});

/** What surrounds the visits came later: every part may be left out. */
const followUpShape = {
  tags: v.optional(v.array(v.string())),
  archived: v.optional(v.boolean()),
  question: v.optional(v.string()),
  sheet: v.optional(sheetShape),
  family: v.optional(familyShape),
};

/** The parts of a case file that do not depend on its version. */
export const caseFields = { format: v.literal(FORMAT), child: childShape, ...followUpShape };

export const caseShape = v.object({
  ...caseFields,
  version: v.literal(VERSION),
  visits: v.array(visitShape),
  decisions: v.optional(v.array(decisionShape)),
  agreed: v.optional(v.array(agreedShape)),
});

export type RawAgreed = v.InferOutput<typeof agreedShape>;
export type RawChild = v.InferOutput<typeof childShape>;
export type RawVisit = v.InferOutput<typeof visitShape>;
export type RawFinding = v.InferOutput<typeof findingShape>;
export type RawDecision = v.InferOutput<typeof decisionShape>;
export type RawCase = v.InferOutput<typeof caseShape>;

/** Any part of what surrounds the visits, to be changed; a sheet of null is taken away. */
export type RawFollowUp = Partial<
  Pick<RawCase, 'tags' | 'archived' | 'question' | 'decisions' | 'agreed' | 'family'> & {
    sheet: RawCase['sheet'] | null;
  }
>;
