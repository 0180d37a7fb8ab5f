/** A record moved in time: every date by as many days, so that every age stays what it was. */
import { addDays, parseCivil, type CivilDate } from '../age/civil.ts';
import type { RawCase } from '../case/shape.ts';

/** The day on which the invented children were written: the last visits lie a little before it. */
export const WRITTEN_FOR = '2026-06-08' as CivilDate;

/** A date of a record as text, moved; what is no date stays, for the parser to name. */
function moved(text: string, days: number): string {
  const date = parseCivil(text);
  return date ? addDays(date, days) : text;
}

export function shifted(raw: RawCase, days: number): RawCase {
  const on = (text: string): string => moved(text, days);
  const { child, visits, decisions, agreed, sheet, ...rest } = raw;
  return {
    ...rest,
    child: { ...child, born: on(child.born), ...(child.due ? { due: on(child.due) } : {}) },
    visits: visits.map((visit) => ({ ...visit, on: on(visit.on) })),
    ...(decisions
      ? { decisions: decisions.map((one) => ({ ...one, on: on(one.on), by: on(one.by) })) }
      : {}),
    ...(agreed ? { agreed: agreed.map((one) => ({ ...one, on: on(one.on) })) } : {}),
    ...(sheet ? { sheet: { ...sheet, on: on(sheet.on) } } : {}),
  };
}
