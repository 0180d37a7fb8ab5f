/** A FHIR bundle from a file: bounded, read, and parsed like any case file. Nothing is taken from a bad one. */
import * as v from 'valibot';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Case } from '../../case/case.ts';
import { latest, OLDER_VERSION } from '../../case/older.ts';
import { parseRaw } from '../../case/parse.ts';
import type { Problem } from '../../case/problem.ts';
import { caseFields, decisionFields, visitFields } from '../../case/shape.ts';
import { shaped } from '../../case/shaped.ts';
import { weightOf } from '../../case/weight.ts';
import type { EntryProblem, LeftOut } from './entry.ts';
import { readEntries } from './read.ts';
import { at, fieldsOf, isDeeper, listAt, textAt } from './value.ts';

/** Limits that no honest bundle reaches. A finding takes about 1 kB. */
export const MAX_BUNDLE_BYTES = 20_000_000;
export const MAX_ENTRIES = 20_000;
const MAX_DEPTH = 40;
/** An observation of ours has some seventy parts in 1.35 kB: a bundle of nothing else comes to 1.05 million. */
const MAX_PARTS = 1_500_000;
const MAX_SAID = 20;

export type BundleProblem =
  | { code: 'too-large'; megabytes: number; limitMegabytes: number }
  | { code: 'not-json' }
  | { code: 'cut-short' }
  | { code: 'too-deep'; limit: number }
  | { code: 'no-bundle'; type: string | undefined }
  | { code: 'too-many-entries'; limit: number }
  | { code: 'no-patient' }
  | ({ code: 'entry' } & EntryProblem)
  | { code: 'record'; child: string; problem: Problem };

/** A child from a bundle, refined, with the addresses it is known by. */
export interface BundleChild {
  addresses: readonly string[];
  /** The name it is kept under elsewhere; its address is made of it. */
  id: string | undefined;
  record: Case;
}

export type OpenedBundle =
  | { ok: true; children: readonly BundleChild[]; leftOut: readonly LeftOut[] }
  | { ok: false; problems: readonly BundleProblem[] };

const refuse = (...problems: BundleProblem[]): OpenedBundle => ({
  ok: false,
  problems: problems.slice(0, MAX_SAID),
});

/** A bundle too large to be read, before it is. */
export const bundleTooLarge = (bytes: number): BundleProblem | undefined =>
  bytes > MAX_BUNDLE_BYTES
    ? {
        code: 'too-large',
        megabytes: Math.round(bytes / 1e6),
        limitMegabytes: MAX_BUNDLE_BYTES / 1e6,
      }
    : undefined;

/** Whether a text looks like a FHIR resource rather than a case file. */
export const looksLikeFhir = (text: string): boolean =>
  /^[\s\uFEFF]*\{/.test(text) && /"resourceType"\s*:/.test(text);

const id = v.optional(v.string());
const foundShape = v.object({
  ...caseFields,
  version: v.literal(OLDER_VERSION),
  visits: v.array(v.object({ id, ...visitFields })),
  decisions: v.optional(v.array(v.object({ id, ...decisionFields }))),
});

/** The record of one child, or what is wrong in it. @param of the id it is kept under, where that is known */
function recordOf(raw: unknown, of: string | undefined, atlas: Atlas): Case | BundleProblem[] {
  const label = textAt(at(raw, 'child'), 'label') ?? '';
  const child = label.slice(0, 60);
  const fits = shaped(foundShape, raw, MAX_BUNDLE_BYTES);
  if (!fits.success)
    return fits.issues.map((issue): BundleProblem => {
      const field = issue.path?.findLast((item) => typeof item.key === 'string')?.key;
      return {
        code: 'record',
        child,
        problem: {
          code: 'wrong-type',
          expected: issue.expected,
          at: { field: typeof field === 'string' ? field : 'file' },
        },
      };
    });
  const parsed = parseRaw(latest(fits.output, of), atlas);
  if (parsed.ok) return parsed.value;
  return parsed.problems.map((problem): BundleProblem => ({ code: 'record', child, problem }));
}

/** Reads a bundle that is already a value. */
export function openBundle(value: unknown, atlas: Atlas): OpenedBundle {
  if (isDeeper(value, MAX_DEPTH)) return refuse({ code: 'too-deep', limit: MAX_DEPTH });
  const bundle = fieldsOf(value);
  const type = textAt(bundle, 'resourceType');
  if (!bundle || type !== 'Bundle') return refuse({ code: 'no-bundle', type: type?.slice(0, 60) });
  if (listAt(bundle, 'entry').length > MAX_ENTRIES)
    return refuse({ code: 'too-many-entries', limit: MAX_ENTRIES });
  const { children, leftOut, problems } = readEntries(bundle);
  if (problems.length > 0)
    return refuse(...problems.map((one): BundleProblem => ({ code: 'entry', ...one })));
  if (children.length === 0) return refuse({ code: 'no-patient' });
  const read = children.map(({ addresses, id, raw }) => ({
    addresses,
    id,
    record: recordOf(raw, id, atlas),
  }));
  const wrong = read.flatMap(({ record }) => (Array.isArray(record) ? record : []));
  if (wrong.length > 0) return refuse(...wrong);
  return {
    ok: true,
    leftOut,
    children: read.flatMap(({ addresses, id, record }) =>
      Array.isArray(record) ? [] : [{ addresses, id, record }],
    ),
  };
}

/** Reads the text of a bundle. */
export function openBundleText(text: string, atlas: Atlas): OpenedBundle {
  const large = bundleTooLarge(text.length);
  if (large) return refuse(large);
  const { deepest, parts } = weightOf(text, MAX_DEPTH);
  if (deepest > MAX_DEPTH) return refuse({ code: 'too-deep', limit: MAX_DEPTH });
  if (parts > MAX_PARTS) return refuse({ code: 'too-many-entries', limit: MAX_ENTRIES });
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refuse({ code: /[}\]]$/.test(text.trim()) ? 'not-json' : 'cut-short' });
  }
  return openBundle(value, atlas);
}
