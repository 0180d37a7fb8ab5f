/** The case file, versions 1 and 2: JSON in, a refined case out. Documented in the README. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from './case.ts';
import { kindOf } from './kind.ts';
import { latest, OLDER_VERSION, olderShape } from './older.ts';
import { parseRaw } from './parse.ts';
import { refused, type Parsed, type Place, type Problem } from './problem.ts';
import { textOf } from './raw.ts';
import { shaped } from './shaped.ts';
import { caseShape, FORMAT, MAX_FILE_BYTES, VERSION, type RawCase } from './shape.ts';
import { isTooHeavy } from './weight.ts';

/** A finding stands seven deep, and has four parts in fifty letters where nothing is left out but blanks. */
const MAX_DEPTH = 20;
const MAX_PARTS = 450_000;
const WHOLE: Place = { field: 'file' };

/** A file that is too large, before it is even read into memory. */
export function sizeProblem(bytes: number): Problem | undefined {
  if (bytes <= MAX_FILE_BYTES) return undefined;
  const megabytes = Math.round(bytes / 1e6);
  return { code: 'too-large', megabytes, limitMegabytes: MAX_FILE_BYTES / 1e6, at: WHOLE };
}

function parseJson(text: string): { value: unknown } | Problem {
  if (isTooHeavy(text, MAX_DEPTH, MAX_PARTS)) return { code: 'not-ours', at: WHOLE };
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    const trimmed = text.trim();
    if (trimmed === '') return { code: 'blank', at: WHOLE };
    const begun = /^[{[]/.test(trimmed);
    const ended = /[}\]]$/.test(trimmed);
    return { code: begun && !ended ? 'cut-short' : 'not-json', at: WHOLE };
  }
}

/** Whose file it is and of which version, before its shape is looked at. */
function foreign(value: unknown): Problem | undefined {
  const head = value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head === null || head.format !== FORMAT)
    return { code: 'not-ours', kind: kindOf(value), at: WHOLE };
  const { version } = head;
  if (version === VERSION || version === OLDER_VERSION) return undefined;
  const said = typeof version === 'number' || typeof version === 'string' ? String(version) : '';
  const newer = typeof version === 'number' && Number.isInteger(version) && version > VERSION;
  if (version !== undefined)
    return {
      code: newer ? 'newer-version' : 'unknown-version',
      version: said.slice(0, 20),
      at: WHOLE,
    };
  return undefined;
}

/** A path of the shape, such as visits, 1, findings, 0, side, as a place a person finds. */
function placeOf(path: readonly (string | number)[]): Place {
  const field = path.findLast((part) => typeof part === 'string') ?? 'file';
  const numberAfter = (name: string): number | undefined => {
    const next = path[path.indexOf(name) + 1];
    return path.includes(name) && typeof next === 'number' ? next + 1 : undefined;
  };
  const visit = numberAfter('visits');
  const finding = numberAfter('findings');
  return {
    field,
    ...(visit ? { visit: { number: visit } } : {}),
    ...(finding ? { finding: { number: finding } } : {}),
  };
}

function shapeProblems(
  value: unknown,
  length: number,
  of: string | undefined,
): { raw: RawCase } | Problem[] {
  const isOlder = (value as { version?: unknown }).version === OLDER_VERSION;
  const result = isOlder ? shaped(olderShape, value, length) : shaped(caseShape, value, length);
  if (result.success) return { raw: latest(result.output, of) };
  return result.issues.slice(0, 20).map((issue): Problem => {
    const path = (issue.path ?? []).map((item) => item.key as string | number);
    const at = placeOf(path);
    return issue.received === 'undefined'
      ? { code: 'missing', at }
      : { code: 'wrong-type', expected: issue.expected, at };
  });
}

/**
 * Reads a case file's text. Nothing is taken from a file with a problem.
 * @param of the id under which the case is kept, where it is known: ids that an older file lacks come of it
 */
export function parseCaseText(text: string, atlas: Atlas, of?: string): Parsed<Case> {
  const tooLarge = sizeProblem(text.length);
  if (tooLarge) return refused(tooLarge);
  const json = parseJson(text.replace(/^\uFEFF/, ''));
  if ('code' in json) return refused(json);
  const head = foreign(json.value);
  if (head) return refused(head);
  const fits = shapeProblems(json.value, text.length, of);
  if (Array.isArray(fits)) return refused(...fits);
  return parseRaw(fits.raw, atlas);
}

/**
 * The text of a file of version 1 as version 2 has it; undefined where it is none. What it says is not looked at.
 * @param of the id under which the case is kept
 */
export function latestText(text: string, of: string): string | undefined {
  const json = parseJson(text);
  if ('code' in json) return undefined;
  const { success, output } = shaped(olderShape, json.value, text.length);
  return success ? textOf(latest(output, of)) : undefined;
}
