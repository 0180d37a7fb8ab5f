/** What the commands share: options, case files and their refusals. */
import { readFileSync, statSync } from 'node:fs';
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { DEFAULT_LIMITS, type CorrectionLimits } from '../lib/age/clocks.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS, parseGestation } from '../lib/age/gestation.ts';
import { ATLAS } from '../lib/atlas/atlas.ts';
import type { Case } from '../lib/case/case.ts';
import { parseCaseText, sizeProblem } from '../lib/case/file.ts';
import { nearestName } from '../lib/case/nearest.ts';
import type { Parsed, Problem } from '../lib/case/problem.ts';
import { sheetOf, type Chosen, type JudgeOptions } from '../lib/judge/judge.ts';
import { en } from '../lib/words/en.ts';

/**
 * A command takes its arguments and gives what is printed, all at once or part by part as it is made. Bad
 * input is thrown; where the rest goes on without it, it is given in its place among the parts.
 */
export type Command = (args: readonly string[]) => string | Iterable<string | BadInput>;

/** Input that cannot be used, with the sentence that names it and the correction. */
export class BadInput extends Error {}

const LIMITS = {
  'preterm-below': { type: 'string' },
  'correct-until': { type: 'string' },
} as const;

/** What is wrong with the options, in our words; Node's own speak of its parser. */
function optionProblem(error: unknown): string {
  const { code, message } = error as { code?: string; message?: string };
  const option = /'(--?[a-z][\w-]*)/i.exec(message ?? '')?.[1] ?? 'An option';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION')
    return `${option} is not an option of this command; "tidemark help" lists them.`;
  return `${option} needs a value after it, such as ${option}=VALUE; "tidemark help" shows how.`;
}

function parsed<T extends ParseArgsConfig>(config: T) {
  try {
    return parseArgs(config);
  } catch (error) {
    throw new BadInput(optionProblem(error));
  }
}

/** Reads options; one that is unknown, without its value, or given twice is bad input. */
export function readOptions<T extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: T,
) {
  const shared = { args: [...args], allowPositionals: true as const, strict: true as const };
  const all = { ...LIMITS, json: { type: 'boolean' as const }, ...options };
  const { tokens } = parsed({ ...shared, options: all, tokens: true as const });
  const seen = new Set<string>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    if (seen.has(token.name)) throw new BadInput(`--${token.name} is given twice; give it once.`);
    seen.add(token.name);
  }
  return parsed({ ...shared, options: all });
}

const sentence = (problems: readonly Problem[], words = en.problems.problemWords): string => {
  const [first] = problems;
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  return (first ? words(first) : '') + more;
};

/** The refined value, or bad input with the first problem's sentence. */
export function taken<T>(parsed: Parsed<T>, of = '', words = en.problems.problemWords): T {
  if (parsed.ok) return parsed.value;
  const said = sentence(parsed.problems, words);
  throw new BadInput(of ? `${of}: ${said}` : said);
}

/** A case file from disk. Its size is looked at before it is read. */
export function readCase(path: string): Case {
  const name = path === '' ? 'a file without a name' : path.slice(0, 200);
  let bytes: number;
  try {
    const stat = statSync(path);
    if (!stat.isFile()) throw new Error('not a file');
    bytes = stat.size;
  } catch {
    throw new BadInput(`${name}: The file cannot be read; check the path, and that it is a file.`);
  }
  const tooLarge = sizeProblem(bytes);
  if (tooLarge) throw new BadInput(`${name}: ${sentence([tooLarge])}`);
  let content: Buffer;
  try {
    content = readFileSync(path);
  } catch {
    throw new BadInput(`${name}: The file cannot be read; check that you may open it.`);
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(content);
  } catch {
    throw new BadInput(`${name}: The file is not in UTF-8; save it again as plain UTF-8 text.`);
  }
  return taken(parseCaseText(text, ATLAS), name);
}

/** The correction limits of the options, or the defaults. */
export function limitsOf(values: {
  'preterm-below'?: string | undefined;
  'correct-until'?: string | undefined;
}): CorrectionLimits {
  const below = values['preterm-below'];
  const until = values['correct-until'];
  const pretermBelowDays =
    below === undefined ? DEFAULT_LIMITS.pretermBelowDays : parseGestation(below);
  if (
    pretermBelowDays === undefined ||
    pretermBelowDays < MIN_GESTATION_DAYS ||
    pretermBelowDays > MAX_GESTATION_DAYS
  )
    throw new BadInput(
      `--preterm-below "${(below ?? '').slice(0, 60)}" is not a gestation from 22w0d to 44w6d; write 37w0d.`,
    );
  if (until !== undefined && !/^\d{1,2}$/.test(until))
    throw new BadInput(
      `--correct-until "${until.slice(0, 60)}" is not a number of months from 0 to 99; write 24.`,
    );
  const untilMonths = until === undefined ? DEFAULT_LIMITS.untilMonths : Number(until);
  return { pretermBelowDays, untilMonths };
}

/** Those that judge by default, all, or the one named. One without a window could judge nothing. */
export function chosenOf(source: string | undefined): Chosen {
  if (source === undefined) return 'default';
  if (source === 'all') return 'all';
  const named = ATLAS.sources.get(source);
  if (named?.claims.some((claim) => claim.role === 'window')) return new Set([source]);
  if (named)
    throw new BadInput(
      `--source "${source}" gives no age that is used for judging; choose another ("tidemark atlas" lists them).`,
    );
  const nearest = nearestName(source, [...ATLAS.sources.keys()]);
  throw new BadInput(
    `--source "${source.slice(0, 60)}" is not a source of the atlas; ${nearest ? `did you mean "${nearest}"?` : 'choose one that "tidemark atlas" lists.'}`,
  );
}

export const judgeOptions = (chosen: Chosen, limits: CorrectionLimits): JudgeOptions => ({
  atlas: ATLAS,
  sheet: sheetOf(ATLAS, chosen),
  limits,
});

/** Rows of cells as columns that line up, for a person to read. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => (widths[i] = Math.max(widths[i] ?? 0, cell.length)));
  return rows
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .map((line) => `${line}\n`)
    .join('');
}
