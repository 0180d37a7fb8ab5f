/** The talk file, version 1: JSON in, a talk or every problem out, and back. */
import * as v from 'valibot';
import { toAxisDay } from '../age/axis.ts';
import { kindOf } from '../case/kind.ts';
import type { ProblemCode } from '../case/problem.ts';
import { Reader } from '../case/reader.ts';
import { shaped } from '../case/shaped.ts';
import { isTooHeavy } from '../case/weight.ts';
import { clampRange, LIMITS } from '../chart/viewport.ts';
import type { Talk, TalkStep } from './talk.ts';

export const TALK_FORMAT = 'tidemark-talk';
export const TALK_VERSION = 1;

/** Limits that no honest talk reaches. */
export const MAX_TALK_BYTES = 2_000_000;
export const MAX_STEPS = 100;
export const MAX_CAPTION = 160;
export const MAX_TALK_NOTE = 4000;
export const MAX_NAMES = 200;
const MAX_DEPTH = 20;
/** A hundred steps, each of which may name as much as it can, come to less. */
const MAX_PARTS = 120_000;

type Code =
  | 'too-large'
  | 'blank'
  | 'not-json'
  | 'cut-short'
  | 'not-ours'
  | 'newer-version'
  | 'unknown-version'
  | 'missing'
  | 'wrong-type'
  | 'empty'
  | 'too-long'
  | 'too-many'
  | 'markup'
  | 'control';

type TalkCode =
  | Extract<ProblemCode, { code: Code }>
  | { code: 'bad-name'; text: string }
  | { code: 'out-of-range'; low: number; high: number };

/** What is wrong with a talk file, and in which field of which step (counted from 1). */
export type TalkProblem = TalkCode & { field: string; step?: number };

export type ParsedTalk = { ok: true; talk: Talk } | { ok: false; problems: readonly TalkProblem[] };

const names = v.array(v.string());

const stepShape = v.object({
  caption: v.string(),
  note: v.optional(v.string(), ''),
  lanes: names,
  ageDays: v.number(),
  fromDays: v.number(),
  toDays: v.number(),
  sources: v.optional(v.union([v.picklist(['all', 'default']), names]), 'all'),
  opened: v.optional(names, []),
  orders: v.optional(names, []),
  figure: v.optional(v.string()),
  lit: v.optional(v.string()),
  child: v.optional(v.object({ id: v.string(), visits: v.number(), verdicts: v.boolean() })),
});

const talkShape = v.object({
  format: v.literal(TALK_FORMAT),
  version: v.literal(TALK_VERSION),
  title: v.string(),
  about: v.optional(v.string(), ''),
  steps: v.array(stepShape),
});

type RawStep = v.InferOutput<typeof stepShape>;

const refuse = (...problems: TalkProblem[]): ParsedTalk => ({ ok: false, problems });

/** A file too large, before it is read into memory. */
export const talkTooLarge = (bytes: number): TalkProblem | undefined =>
  bytes > MAX_TALK_BYTES
    ? {
        code: 'too-large',
        megabytes: Math.round(bytes / 1e5) / 10,
        limitMegabytes: MAX_TALK_BYTES / 1e6,
        field: 'file',
      }
    : undefined;

function parseJson(text: string): { value: unknown } | TalkProblem {
  if (isTooHeavy(text, MAX_DEPTH, MAX_PARTS)) return { code: 'not-ours', field: 'file' };
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    const trimmed = text.trim();
    if (trimmed === '') return { code: 'blank', field: 'file' };
    const begun = /^[{[]/.test(trimmed);
    const ended = /[}\]]$/.test(trimmed);
    return { code: begun && !ended ? 'cut-short' : 'not-json', field: 'file' };
  }
}

/** Whose file it is and of which version, before its shape is looked at. */
function foreign(value: unknown): TalkProblem | undefined {
  const head = value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head === null || head.format !== TALK_FORMAT)
    return { code: 'not-ours', kind: kindOf(value), field: 'file' };
  const { version } = head;
  if (version === TALK_VERSION) return undefined;
  if (version === undefined) return { code: 'missing', field: 'version' };
  const said = typeof version === 'number' || typeof version === 'string' ? String(version) : '';
  const newer = typeof version === 'number' && Number.isInteger(version) && version > TALK_VERSION;
  return {
    code: newer ? 'newer-version' : 'unknown-version',
    version: said.slice(0, 20),
    field: 'file',
  };
}

function shapeProblem(issue: v.BaseIssue<unknown>): TalkProblem {
  const path = (issue.path ?? []).map((item) => item.key as string | number);
  const field = path.findLast((part) => typeof part === 'string') ?? 'file';
  const number = path[0] === 'steps' && typeof path[1] === 'number' ? path[1] + 1 : undefined;
  return {
    field,
    ...(number === undefined ? {} : { step: number }),
    ...(issue.received === 'undefined'
      ? { code: 'missing' as const }
      : { code: 'wrong-type' as const, expected: issue.expected ?? '' }),
  };
}

/** An id, known here or not. */
const ID = /^[\w-]{1,80}$/;

/** Gathers what is wrong with one step, or with the head of the talk. */
class TalkReader {
  readonly problems: TalkProblem[] = [];
  step: number | undefined;

  refuse(field: string, problem: TalkCode): void {
    const step = this.step === undefined ? {} : { step: this.step };
    this.problems.push({ ...problem, field, ...step });
  }

  /** Plain text: markup and characters that cannot be seen are refused, as in a case. */
  text(text: string, field: string, limit: number): string {
    const read = new Reader();
    read.text(text, { field }, limit);
    for (const problem of read.problems)
      if (problem.code === 'too-long') this.refuse(field, { code: 'too-long', limit });
      else if (problem.code === 'markup')
        this.refuse(field, { code: 'markup', text: problem.text });
      else this.refuse(field, { code: 'control' });
    return text;
  }

  line(text: string, field: string): string {
    const line = text.trim();
    if (/[\r\n\t]/.test(line)) this.refuse(field, { code: 'control' });
    return this.text(line, field, MAX_CAPTION);
  }

  ids(ids: readonly string[], field: string): readonly string[] {
    if (ids.length > MAX_NAMES) this.refuse(field, { code: 'too-many', limit: MAX_NAMES });
    const bad = ids.find((id) => !ID.test(id));
    if (bad !== undefined) this.refuse(field, { code: 'bad-name', text: bad.slice(0, 40) });
    return [...new Set(ids)];
  }

  id(id: string | undefined, field: string): string | undefined {
    return id === undefined ? undefined : this.ids([id], field)[0];
  }

  number(value: number, field: string, low: number, high: number): number {
    if (!Number.isFinite(value) || value < low || value > high)
      this.refuse(field, { code: 'out-of-range', low, high });
    return value;
  }
}

function readStep(raw: RawStep, read: TalkReader): TalkStep {
  const day = (value: number, field: string) =>
    toAxisDay(read.number(value, field, LIMITS.from, LIMITS.to));
  const child = raw.child && {
    id: read.ids([raw.child.id], 'child')[0] ?? '',
    visits: Math.trunc(read.number(raw.child.visits, 'child', 0, 400)),
    verdicts: raw.child.verdicts,
  };
  const from = day(raw.fromDays, 'fromDays');
  const to = day(raw.toDays, 'toDays');
  if (!(from < to)) read.refuse('toDays', { code: 'out-of-range', low: from, high: LIMITS.to });
  const figure = read.id(raw.figure, 'figure');
  const lit = read.id(raw.lit, 'lit');
  return {
    caption: read.line(raw.caption, 'caption'),
    note: read.text(raw.note, 'note', MAX_TALK_NOTE),
    lanes: read.ids(raw.lanes, 'lanes'),
    age: day(raw.ageDays, 'ageDays'),
    range: from < to ? clampRange({ from, to }) : { from, to },
    sources: typeof raw.sources === 'string' ? raw.sources : read.ids(raw.sources, 'sources'),
    opened: read.ids(raw.opened, 'opened'),
    orders: read.ids(raw.orders, 'orders'),
    ...(figure === undefined ? {} : { figure }),
    ...(lit === undefined ? {} : { lit }),
    ...(child === undefined ? {} : { child }),
  };
}

/** Reads a talk file's text. Names that are not at hand are no problem: see missingIn. */
export function parseTalkText(text: string): ParsedTalk {
  const tooLarge = talkTooLarge(text.length);
  if (tooLarge) return refuse(tooLarge);
  const json = parseJson(text.replace(/^\uFEFF/, ''));
  if ('code' in json) return refuse(json);
  const head = foreign(json.value);
  if (head) return refuse(head);
  const fits = shaped(talkShape, json.value, text.length);
  if (!fits.success) return refuse(...fits.issues.slice(0, 20).map(shapeProblem));
  const { title, about, steps } = fits.output;
  const read = new TalkReader();
  if (steps.length > MAX_STEPS) {
    read.refuse('steps', { code: 'too-many', limit: MAX_STEPS });
    return { ok: false, problems: read.problems };
  }
  const named = read.line(title, 'title');
  if (!named) read.refuse('title', { code: 'empty' });
  if (steps.length === 0) read.refuse('steps', { code: 'empty' });
  const said = read.text(about, 'about', MAX_TALK_NOTE);
  const taken = steps.map((raw, index) => {
    read.step = index + 1;
    return readStep(raw, read);
  });
  return read.problems.length > 0
    ? { ok: false, problems: read.problems.slice(0, 20) }
    : { ok: true, talk: { title: named, about: said, steps: taken } };
}

/** Always in the same order, so that two texts of one talk are the same. */
const rawStep = ({ caption, note, lanes, age, range, child, ...step }: TalkStep) => ({
  caption,
  note,
  lanes,
  ageDays: age,
  fromDays: range.from,
  toDays: range.to,
  sources: step.sources,
  opened: step.opened,
  orders: step.orders,
  figure: step.figure,
  lit: step.lit,
  child: child && { id: child.id, visits: child.visits, verdicts: child.verdicts },
});

/** What is wrong with words being typed, so that none is kept that could not be opened again. */
export function wordFaults(
  text: string,
  field: 'title' | 'about' | 'caption' | 'note',
): readonly TalkProblem[] {
  const read = new TalkReader();
  if (field === 'title' || field === 'caption') read.line(text, field);
  else read.text(text, field, MAX_TALK_NOTE);
  if (field === 'title' && text.trim() === '') read.refuse(field, { code: 'empty' });
  return read.problems;
}

/** A talk as the text of its file. */
export const talkText = ({ title, about, steps }: Talk): string =>
  `${JSON.stringify({ format: TALK_FORMAT, version: TALK_VERSION, title, about, steps: steps.map(rawStep) }, null, 2)}\n`;
