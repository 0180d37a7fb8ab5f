/** What is to be done about each finding of a day: no row of the list is without it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { dayOf } from '../../src/lib/judge/day.ts';
import { AGAIN_DAYS } from '../../src/lib/judge/nextVisit.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { isAsking } from '../../src/lib/judge/rules/rule.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { differOn } from '../../src/lib/present/differ.ts';
import { entriesOf } from '../../src/lib/present/verdictEntries.ts';
import { countsOf, todoOf, todoOfMilestone } from '../../src/lib/present/todo.ts';
import { countedParts, todoSentence } from '../../src/lib/words/en/todo.ts';
import { anyCase } from '../support/anyCase.ts';
import { childCase, type ShortFinding } from '../support/kestrel.ts';
import { runs } from '../support/runs.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };
const ON = '2026-03-15' as CivilDate;

function read(findings: ShortFinding[], other: ShortFinding[] = []) {
  const visits = judgeCase(
    childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      { on: ON, examiner: 'Amy', findings },
      ...(other.length > 0 ? [{ on: ON, examiner: 'Zed', findings: other }] : []),
    ]),
    options,
  );
  return { visits, entries: entriesOf(dayOf(visits[0]!, visits).visits, []) };
}

function todo(...given: Parameters<typeof read>) {
  const { visits, entries } = read(...given);
  return todoOf(entries[0]!, ON, differOn(visits));
}

const codes = (...given: Parameters<typeof read>): string[] =>
  todo(...given).map(({ code }) => code);

describe('what to do', () => {
  test.each<[string, ShortFinding[], string[]]>([
    ['obligatory', [['atnr', 'left', 'obligatory']], ['confirm', 'film', 'team', 'look']],
    [
      'obligatory while crying',
      [['atnr', 'left', 'obligatory', 'crying']],
      ['calm', 'film', 'look'],
    ],
    ['missing, tried once', [['palmar-grasp', 'left', 'not-elicited']], ['again', 'look']],
    ['not elicited asleep', [['palmar-grasp', 'left', 'not-elicited', 'quiet-sleep']], ['alert']],
    ['not assessable', [['moro', 'left', 'not-assessable']], ['alert']],
    ['as expected', [['moro', 'left', 'elicited']], []],
  ])('%s', (_, findings, expected) => {
    expect(codes(findings)).toEqual(expected);
  });

  test('examiners who differ are to agree', () => {
    expect(codes([['atnr', 'left', 'weak']], [['atnr', 'left', 'elicited']])).toContain('agree');
  });

  test('the date is the one that pulls the next visit forward', () => {
    const said = todo([['atnr', 'left', 'obligatory']]);
    expect(said.at(-1)).toEqual({
      code: 'look',
      by: addDays(ON, AGAIN_DAYS.discuss),
    });
    expect(todoSentence(said)).toBe(
      'Confirm it when the infant is calm and alert; film it for the team; ask the team, and refer by your local pathway. Look again by 29 March 2026.',
    );
  });
});

test('on any record, nothing that asks is without something to do', () => {
  let asked = 0;
  fc.assert(
    fc.property(anyCase(), (record) => {
      const visits = judgeCase(record, options);
      for (const shown of visits) {
        const { on, visits: day, milestones } = dayOf(shown, visits);
        for (const entry of entriesOf(day, []))
          if (isAsking(entry.attention) || entry.attention === 'not-judged') {
            asked += 1;
            expect(todoSentence(todoOf(entry, on, differOn(day)))).not.toBe('');
          }
        for (const one of milestones)
          if (isAsking(one.attention)) expect(todoSentence(todoOfMilestone(one, on))).not.toBe('');
      }
    }),
    { seed: 29, numRuns: runs(150, 30) },
  );
  expect(asked).toBeGreaterThan(30);
});

test('the day in numbers', () => {
  const visits = judgeCase(demoCase(ATLAS), options);
  const { visits: day, milestones } = dayOf(visits.at(-1)!, visits);
  const all = entriesOf(day, visits.slice(0, -1));
  const parts = countedParts(countsOf(all, milestones)).map(({ text }) => text);
  expect(parts.join(', ')).toMatch(
    /^\d+ to discuss, \d+ to recheck, \d+ as expected, 1 not judged$/,
  );
  const sum = parts.reduce((n, text) => n + Number.parseInt(text, 10), 0);
  expect(sum).toBe(all.length + milestones.filter((one) => isAsking(one.attention)).length);
});
