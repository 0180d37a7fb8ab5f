/** The one place where the pages ask the clock. */
import { addDays, parseCivil, type CivilDate } from '../age/civil.ts';

/** Today by the machine's own calendar. */
export function today(now = new Date()): CivilDate {
  const two = (n: number): string => String(n).padStart(2, '0');
  const text = `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return parseCivil(text) ?? addDays('2000-01-01' as CivilDate, 0);
}
