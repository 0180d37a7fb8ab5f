/** What the commands share: options, case files and their refusals. */
import { readFileSync, statSync } from 'node:fs';
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { DEFAULT_LIMITS, type CorrectionLimits } from '../lib/age/clocks.ts';
import { parseGestation } from '../lib/age/gestation.ts';
import { ATLAS } from '../lib/atlas/atlas.ts';
import type { Case } from '../lib/case/case.ts';
import { parseCaseText, sizeProblem } from '../lib/case/file.ts';
import { nearestName } from '../lib/case/nearest.ts';
import type { Parsed, Problem } from '../lib/case/problem.ts';
import { sheetOf, type Chosen, type JudgeOptions } from '../lib/judge/judge.ts';
import { en } from '../lib/words/en.ts';

/** A command takes its arguments and gives what is printed; bad input is thrown. */
export type Command = (args: readonly string[]) => string;

/** Input that cannot be used, with the sentence that names it and the mend. */
export class BadInput extends Error {}

const LIMITS = {
  'preterm-below': { type: 'string' },
  'correct-until': { type: 'string' },
} as const;

/** Reads options; an unknown or incomplete one is bad input. */
export function readOptions<T extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: T,
) {
  const config = {
    args: [...args],
    options: { ...LIMITS, json: { type: 'boolean' as const }, ...options },
    allowPositionals: true,
    strict: true,
  };
  try {
    return parseArgs(config);
  } catch (error) {
    const message = error instanceof Error ? error.message.split('\n')[0]! : String(error);
    throw new BadInput(message.endsWith('.') ? message : `${message}.`);
  }
}

const sentence = (problems: readonly Problem[]): string => {
  const [first] = problems;
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  return (first ? en.problems.problemWords(first) : '') + more;
};

/** The refined value, or bad input with the first problem's sentence. */
export function taken<T>(parsed: Parsed<T>, of = ''): T {
  if (parsed.ok) return parsed.value;
  throw new BadInput(of ? `${of}: ${sentence(parsed.problems)}` : sentence(parsed.problems));
}

/** A case file from disk. Its size is looked at before it is read. */
export function readCase(path: string): Case {
  let bytes: number;
  try {
    const stat = statSync(path);
    if (!stat.isFile()) throw new Error('not a file');
    bytes = stat.size;
  } catch {
    throw new BadInput(`${path}: The file cannot be read. Check the path and that it is a file.`);
  }
  const tooLarge = sizeProblem(bytes);
  if (tooLarge) throw new BadInput(`${path}: ${sentence([tooLarge])}`);
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw new BadInput(`${path}: The file cannot be read. Check that you may open it.`);
  }
  return taken(parseCaseText(text, ATLAS), path);
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
  if (pretermBelowDays === undefined)
    throw new BadInput(`--preterm-below "${below ?? ''}" is no gestation; write 37w0d.`);
  const untilMonths = until === undefined ? DEFAULT_LIMITS.untilMonths : Number(until);
  if (!Number.isInteger(untilMonths) || untilMonths < 0 || untilMonths > 120)
    throw new BadInput(`--correct-until "${until ?? ''}" is no number of months; write 24.`);
  return { pretermBelowDays, untilMonths };
}

/** The one source named, or all. */
export function chosenOf(source: string | undefined): Chosen {
  if (source === undefined) return 'all';
  if (ATLAS.sources.has(source)) return new Set([source]);
  const nearest = nearestName(source, [...ATLAS.sources.keys()]);
  throw new BadInput(
    `--source "${source}" is no source of the atlas.${nearest ? ` Did you mean "${nearest}"?` : ' "tidemark atlas" lists them.'}`,
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
