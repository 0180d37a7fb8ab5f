/** `tidemark plan`: what is worth testing in a child on a date. */
import { parseCivil } from '../lib/age/civil.ts';
import { planFor, type Plan } from '../lib/judge/plan.ts';
import type { Case } from '../lib/case/case.ts';
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

const planJson = (record: Case, plan: Plan) => ({
  child: record.child.label,
  on: plan.on,
  ages: agesJson(plan.ages),
  lines: plan.lines.map(({ reflex, sides, tells, why }) => ({
    reflex: reflex.id,
    sides,
    position: reflex.position,
    upsetting: reflex.upsetting,
    tells,
    why,
    cautions: reflex.cautions,
  })),
  questions: plan.questions,
});

function planText(record: Case, plan: Plan): string {
  const { birth, label } = record.child;
  const rows = plan.lines.map(({ reflex, sides, why }) => [
    `  ${reflex.short}`,
    sides.map((side) => en.atlas.sides[side]).join(' / '),
    `${en.atlas.positions[reflex.position]}${reflex.upsetting ? ', late: it can upset' : ''}`,
    why.map((one) => en.sheet.whyWords(one, plan.on)).join('; '),
  ]);
  const questions = plan.questions.map(({ reflex, side, verdict, most, every }) => [
    `  ${reflex}`,
    en.atlas.sides[side],
    en.judge.verdicts[verdict as keyof typeof en.judge.verdicts],
    most ? `most sources from ${en.ages.dateWords(most)}` : 'no source dates it',
    every ? `every source from ${en.ages.dateWords(every)}` : '',
  ]);
  return (
    `${label}, ${en.ages.dateWords(plan.on)}, ${en.ages.countedWords(plan.ages, birth.born)}\n` +
    `Worth testing\n${columns(rows)}` +
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
      `--on "${values.on}" is no date that exists. Write year-month-day, such as 2026-05-18.`,
    );
  const record = readCase(path);
  const { born } = record.child.birth;
  if (on < born)
    throw new BadInput(`--on ${on} lies before the birth on ${born}. Check both dates.`);
  const plan = planFor(record, on, judgeOptions(chosenOf(values.source), limitsOf(values)));
  return values.json ? `${JSON.stringify(planJson(record, plan))}\n` : planText(record, plan);
};
