/** `tidemark ages`: the four ages on a date. */
import { NIL } from 'uuid';
import { agesOn, type Ages } from '../lib/age/clocks.ts';
import { formatGestation } from '../lib/age/gestation.ts';
import { ATLAS } from '../lib/atlas/atlas.ts';
import { parseRaw } from '../lib/case/parse.ts';
import { FORMAT, VERSION } from '../lib/case/shape.ts';
import { en } from '../lib/words/en.ts';
import { BadInput, columns, limitsOf, readOptions, taken, type Command } from './input.ts';

/** The ages as plain numbers, for a machine. */
export const agesJson = (ages: Ages) => ({
  on: ages.on,
  due: ages.due,
  gestationalDays: ages.gestationalDays,
  chronologicalDays: ages.chronologicalDays,
  postmenstrualDays: ages.postmenstrualDays,
  correctedDays: ages.correctedDays,
  counts: ages.counts,
  why: ages.why,
  axisDay: ages.axisDay,
  sdDays: ages.sdDays,
});

/** The option behind a field of the record. */
const OPTION: Readonly<Record<string, string>> = {
  born: '--born',
  gestation: '--gestation',
  due: '--due',
  dating: '--dating',
  on: '--on',
};

export const agesCommand: Command = (args) => {
  const { values, positionals } = readOptions(args, {
    born: { type: 'string' },
    gestation: { type: 'string' },
    due: { type: 'string' },
    on: { type: 'string' },
    dating: { type: 'string' },
  });
  if (positionals[0] !== undefined)
    throw new BadInput(
      `"${positionals[0].slice(0, 60)}" is not understood; ages takes only options.`,
    );
  const { born, gestation, due, on, dating } = values;
  if (born === undefined)
    throw new BadInput('--born is missing; give the birth date, such as 2026-03-04.');
  if (on === undefined)
    throw new BadInput('--on is missing; give the date of the visit, such as 2026-05-18.');
  const limits = limitsOf(values);
  const record = taken(
    parseRaw(
      {
        format: FORMAT,
        version: VERSION,
        child: {
          label: 'infant',
          born,
          ...(gestation === undefined ? {} : { gestation }),
          ...(due === undefined ? {} : { due }),
          dating: dating ?? 'unknown',
          invented: false,
        },
        visits: [{ id: NIL, on, examiner: '', note: '', findings: [], milestones: [] }],
      },
      ATLAS,
    ),
    '',
    (problem) =>
      en.problems.problemWords({
        ...problem,
        at: { field: OPTION[problem.at.field] ?? problem.at.field },
      }),
  );
  const { birth } = record.child;
  const ages = agesOn(birth, record.visits[0]!.on, limits);
  if (values.json) return `${JSON.stringify(agesJson(ages))}\n`;
  const say = en.ages;
  return (
    columns([
      ['gestation at birth', formatGestation(ages.gestationalDays)],
      ['due date', say.dateWords(ages.due)],
      ['chronological', say.chronologicalWords(ages, birth.born)],
      ['postmenstrual', formatGestation(ages.postmenstrualDays)],
      ['corrected', say.correctedWords(ages)],
      ['on the axis', `day ${ages.axisDay}`],
    ]) +
    `${say.whyCounts(ages, limits.pretermBelowDays, limits.untilMonths)} ${say.doubtWords(ages.sdDays)}\n`
  );
};
