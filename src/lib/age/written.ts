/** A date written out in a language. The one door to luxon, which knows how each language writes dates. */
import { DateTime } from 'luxon';
import type { CivilDate } from './civil.ts';

/** `18 May 2026`, `18 de mayo de 2026`. @param tag as in BCP 47 */
export const writtenDate = (date: CivilDate, tag: string): string =>
  DateTime.fromISO(date, { zone: 'utc' }).setLocale(tag).toLocaleString(DateTime.DATE_FULL);
