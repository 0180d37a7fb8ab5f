/** A clinic's own sheet read to the end as the page reads it, for the child Kestrel who is here. */
import { v4 } from 'uuid';
import { expect } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { reflexFinder } from '../../src/lib/exchange/reflexNames.ts';
import {
  guessAnswers,
  guessShape,
  guessVisitColumns,
  type SheetShape,
} from '../../src/lib/exchange/sheet/answers.ts';
import { guessColumns } from '../../src/lib/exchange/sheet/columns.ts';
import { ordersOf, sureOrder, type DateOrder } from '../../src/lib/exchange/sheet/dates.ts';
import type { Mapping } from '../../src/lib/exchange/sheet/lines.ts';
import { planSheet, type SheetPlan } from '../../src/lib/exchange/sheet/plan.ts';
import { readSheet, type Sheet } from '../../src/lib/exchange/sheet/read.ts';
import type { Values } from '../../src/lib/exchange/sheet/values.ts';
import { guessValues } from '../../src/lib/exchange/sheet/words.ts';
import { cellSentence, sheetSentence } from '../../src/lib/words/en/sheets.ts';
import { childCase } from './kestrel.ts';
import { reading } from './slowest.ts';

export const find = reflexFinder(ATLAS);
export const KESTREL = childCase({ born: '2026-01-05', gestation: '33w1d' }, [
  { on: '2026-05-18', examiner: 'PT 1', findings: [['moro', 'left', 'weak']] },
]);
export const SHELF = [{ id: 'k1', record: KESTREL }];

export const sheetOf = (text: string): Sheet => {
  const read = readSheet(text);
  if (!read.ok) throw new Error(sheetSentence(read.problem));
  return read.sheet;
};

/** What is guessed of where things stand in a sheet. */
export function placesOf(
  { header }: Sheet,
  shape: SheetShape = guessShape(header, find),
): Pick<Mapping, 'columns' | 'answers'> {
  if (shape === 'finding') return { columns: guessColumns(header), answers: undefined };
  const answers = guessAnswers(header, find);
  return { columns: guessVisitColumns(header, answers), answers };
}

/** A plan with its faults in sentences. */
export interface Planned extends SheetPlan {
  said: string[];
}

export interface Known {
  values?: Partial<Values>;
  order?: DateOrder | undefined;
  shape?: SheetShape;
  shelf?: typeof SHELF;
  today?: string;
}

export function plan(
  text: string,
  { values, order, shape, shelf = SHELF, today = '2026-07-01' }: Known = {},
): Planned {
  const sheet = sheetOf(text);
  const places = placesOf(sheet, shape);
  const dates = sheet.rows.map(({ cells }) => cells[places.columns.date ?? 0] ?? '');
  const mapping: Mapping = {
    ...places,
    values: { ...guessValues(sheet, places, find), ...values },
    order: order ?? sureOrder(dates) ?? ordersOf(dates)[0] ?? 'year-month-day',
  };
  const planned = planSheet(sheet, mapping, {
    atlas: ATLAS,
    shelf,
    open: shelf[0],
    today: today as CivilDate,
    newId: v4,
  });
  return { ...planned, said: planned.problems.map((one) => cellSentence(one, sheet.header)) };
}

/** A record as text but for its ids, which are by chance for new visits. */
export const textWithoutIds = (record: Case): string =>
  caseText(record).replaceAll(/"id": "[^"]+"/g, '"id": ""');

/**
 * Read to the end: a sentence, or a plan whose every record has passed the parser; nothing here changes.
 * Says whether it was read.
 */
export function holds(text: string, format: string, shape?: SheetShape): boolean {
  const before = caseText(KESTREL);
  const read = reading(format, () => readSheet(text));
  if (!read.ok) {
    expect(sheetSentence(read.problem)).toMatch(/^[^\n]+\.$/);
    return false;
  }
  for (const order of ['day-month-year', 'year-month-day'] as const) {
    const result = reading(`${format}, planned`, () =>
      plan(text, shape ? { order, shape } : { order }),
    );
    for (const sentence of result.said) {
      expect(sentence).toMatch(/^Row \d+, /);
      expect(sentence).not.toMatch(/undefined|NaN|\[object|function/);
    }
    for (const { visits } of result.children)
      for (const { added } of visits)
        for (const { reflex } of added) expect(ATLAS.reflexes.has(reflex)).toBe(true);
  }
  expect(caseText(KESTREL)).toBe(before);
  expect(Object.keys(Object.prototype)).toEqual([]);
  return true;
}
