/** `tidemark plan`: what is worth testing in a child on a date. */
import { parseCivil } from '../lib/age/civil.ts';
import { partOf, PARTS, planFor, type Plan, type PlanLine } from '../lib/judge/plan.ts';
import { TEN_MINUTES } from '../lib/judge/reading/constants.ts';
import { minutesFor, withinTen, type TenMinutes } from '../lib/judge/tenMinutes.ts';
import type { Case } from '../lib/case/case.ts';
import { testOf } from '../lib/case/finding.ts';
import { en } from '../lib/words/en.ts';
import { agesJson } from './ages.ts';
import {
  BadInput,
  chosenOf,
  columns,
  judgeOptions,
  limitsOf,
  readCase,
  readOptions,
  type Command,
} from './input.ts';

const tenOf = ({ lines, reading, on }: Plan): TenMinutes =>
  withinTen(lines, { reading, day: reading.clock.dayOn(on) });

function planJson(record: Case, plan: Plan) {
  const { lines, minutes, bits } = tenOf(plan);
  return {
    child: record.child.label,
    on: plan.on,
    ages: agesJson(plan.ages),
    lines: plan.lines.map(({ coreVoices, reflex, variant, sides, tells, why }) => ({
      reflex: reflex.id,
      ...(variant === undefined ? {} : { variant }),
      sides,
      position: reflex.position,
      upsetting: reflex.upsetting,
      coreVoices,
      minutes: minutesFor(reflex),
      tells,
      why,
      cautions: reflex.cautions,
    })),
    withinTen: { reflexes: lines.map(({ reflex }) => reflex.id), minutes, bits },
    questions: plan.questions,
  };
}

function planText(record: Case, plan: Plan): string {
  const { birth, label } = record.child;
  const row = ({ reflex, sides, why, coreVoices }: PlanLine): string[] => [
    `  ${reflex.short}`,
    sides.map((side) => en.atlas.sides[side]).join(' / '),
    en.atlas.positions[reflex.position],
    [
      ...(reflex.upsetting && coreVoices > 0 ? [en.sheet.parts.inCore] : []),
      ...why.map((one) => en.sheet.whyWords(one, plan.on)),
    ].join('; '),
  ];
  const parts = PARTS.map((part) => {
    const rows = plan.lines.filter((line) => partOf(line) === part).map(row);
    return rows.length > 0 ? `${en.sheet.parts[part]}\n${columns(rows)}` : '';
  });
  const ten = tenOf(plan);
  const within =
    ten.lines.length > 0
      ? `${en.sheet.ten.title(TEN_MINUTES)}\n  ${ten.lines.map(({ reflex }) => reflex.short).join(', ')} (${en.sheet.ten.minutes(ten.minutes)})\n`
      : '';
  const questions = plan.questions.map(({ side, verdict, most, every, ...of }) => [
    `  ${testOf(of)}`,
    en.atlas.sides[side],
    en.judge.verdicts[verdict as keyof typeof en.judge.verdicts],
    most ? `most sources by ${en.ages.dateWords(most)}` : 'no source gives an age',
    every ? `all sources by ${en.ages.dateWords(every)}` : '',
  ]);
  return (
    `${label}, ${en.ages.dateWords(plan.on)}, ${en.ages.countedWords(plan.ages, birth.born)}\n` +
    parts.join('') +
    within +
    (questions.length > 0 ? `Open questions\n${columns(questions)}` : '') +
    `${en.judge.CAUTION}\n`
  );
}

export const planCommand: Command = (args) => {
  const { values, positionals } = readOptions(args, {
    source: { type: 'string' },
    on: { type: 'string' },
  });
  const [path, extra] = positionals;
  if (path === undefined || extra !== undefined)
    throw new BadInput('Name one case file: tidemark plan CASE.json --on DATE.');
  if (values.on === undefined)
    throw new BadInput('--on is missing; give the date of the visit, such as 2026-05-18.');
  const on = parseCivil(values.on);
  if (!on)
    throw new BadInput(
      `--on "${values.on}" is not a date that exists. Write year-month-day, such as 2026-05-18.`,
    );
  const record = readCase(path);
  const { born } = record.child.birth;
  if (on < born) throw new BadInput(`--on ${on} is before the birth on ${born}. Check both dates.`);
  const plan = planFor(record, on, judgeOptions(chosenOf(values.source), limitsOf(values)));
  return values.json ? `${JSON.stringify(planJson(record, plan))}\n` : planText(record, plan);
};
