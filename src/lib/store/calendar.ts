/**
 * Dates to come as a calendar file (RFC 5545), for any calendar program. ical-generator writes it: it
 * folds long lines by octets and escapes text as the standard asks.
 */
import ical, { ICalEventClass, ICalEventTransparency } from 'ical-generator';
import { partsOf, type CivilDate } from '../age/civil.ts';

/** One day to come. Nothing is added to the words: a child's label stands in them only if put there. */
export interface CalendarEntry {
  /** The same for the same entry at every saving (see `uidOf`), so that a program updates it. */
  uid: string;
  on: CivilDate;
  title: string;
  description: string;
}

/**
 * A name for an entry, made of what does not change: the record's id, what is to be looked at, and
 * the like. Unlike lists of parts never make the same name.
 */
export const uidOf = (...parts: readonly string[]): string =>
  `${parts.map((part) => encodeURIComponent(part).replaceAll('.', '%2E')).join('.')}@tidemark`;

/** Text as the standard allows it: line ends of one kind, no other control character but the tab. */
const plain = (text: string): string =>
  text
    .toWellFormed()
    .replaceAll(/\r\n?/g, '\n')
    // eslint-disable-next-line no-control-regex -- control characters are what is looked for
    .replaceAll(/[\u0000-\u0008\u000B-\u001F\u007F]/g, '');

/**
 * The text of a calendar file: each entry an event of a whole day that keeps nobody busy and is marked
 * private. `stamp` is the moment of saving, the only time of day in the file; `language` is two letters.
 */
export function calendarText(
  entries: readonly CalendarEntry[],
  stamp: Date,
  language = 'EN',
): string {
  const calendar = ical({ prodId: { company: 'Tidemark', product: 'Tidemark', language } });
  for (const { uid, on, title, description } of entries) {
    const { year, month, day } = partsOf(on);
    calendar.createEvent({
      id: uid,
      stamp,
      start: new Date(Date.UTC(year, month - 1, day)),
      timezone: 'UTC', // read as the day it is, in whatever zone the machine stands
      allDay: true,
      summary: plain(title),
      description: plain(description),
      transparency: ICalEventTransparency.TRANSPARENT,
      class: ICalEventClass.PRIVATE,
    });
  }
  return calendar.toString();
}
